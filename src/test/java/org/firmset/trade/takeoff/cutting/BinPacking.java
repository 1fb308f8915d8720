package org.firmset.trade.takeoff.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Problem u120_00 of OR-Library (Beasley), by Falkenauer, Journal of Heuristics 2 (1996) 5-30: 120 items, bins of 150. The
 * least number of bins is 48; longest first gives 49.
 */
public final class BinPacking {
    public static final long BIN = 150;

    private static final String SIZES = """
            42 69 67 57 93 90 38 36 45 42 33 79 27 57 44 84 86 92 46 38 85 33 82 73 49 70 59 23 57 72 74 69 33
            42 28 46 30 64 29 74 41 49 55 98 80 32 25 38 82 30 35 39 57 84 62 50 55 27 30 36 20 78 47 26 45 41
            58 98 91 96 73 84 37 93 91 43 73 85 81 79 71 80 76 83 41 78 70 23 42 87 43 84 60 55 49 78 73 62 36
            44 94 69 32 96 70 84 58 78 25 80 58 66 83 24 98 60 42 43 43 39""";

    private BinPacking() {}

    /** The items as pieces to cut. */
    public static List<Demand> demands() {
        Map<Long, Integer> counts = Arrays.stream(SIZES.strip().split("\\s+"))
                .map(Long::valueOf)
                .collect(Collectors.toMap(size -> size, size -> 1, Integer::sum, TreeMap::new));
        List<Demand> demands = new ArrayList<>();
        counts.forEach((size, count) -> demands.add(new Demand(size, count)));
        return demands;
    }
}
