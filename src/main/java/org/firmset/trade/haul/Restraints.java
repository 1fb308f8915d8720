package org.firmset.trade.haul;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How loads are held, after the rules for trucks; a homestead's pickup is held no worse. */
final class Restraints {
    /** Tie-downs together rated at least half the mass tied: 49 CFR 393.106(d), from memory. */
    private static final long PARTS_TIED = 2;

    /** One tie up to 5 ft and 1,100 lb, two beyond: 49 CFR 393.110(b), from memory. */
    private static final long SHORT_MILLIMETRES = 1524;

    private static final long LIGHT_GRAMS = 498_952;

    /** Beyond 10 ft one more for each 10 ft begun: 49 CFR 393.110(b)(3), from memory. */
    private static final long LONG_MILLIMETRES = 3048;

    static final List<String> CAUTIONS = List.of(
            "People and wet sand count: stay under sticker, axle and tyre limits; make another run instead.",
            "Nothing may move in a hard stop: block it, tie it, cover loose material, and look at the ties again after a"
                    + " few miles.",
            "Heavy things low, near the axle and level across; nothing on top of what stands upright.",
            "Weigh the first loads axle by axle: these are sums; sticker, maker, scale and the law come first.");

    private Restraints() {}

    static List<Restraint> of(List<Stowed> all) {
        Map<Cargo, List<Stowed>> byCargo = new LinkedHashMap<>();
        all.forEach(
                s -> byCargo.computeIfAbsent(s.cargo(), c -> new ArrayList<>()).add(s));
        return byCargo.entrySet().stream()
                .map(e -> restraint(e.getKey(), e.getValue()))
                .toList();
    }

    private static Restraint restraint(Cargo cargo, List<Stowed> stacks) {
        Packs packs = cargo.packs();
        long grams = stacks.stream().mapToLong(Stowed::grams).sum();
        int ties = stacks.stream()
                .mapToInt(s -> ties(packs.longestMillimetres(), s.grams()))
                .sum();
        return new Restraint(
                cargo,
                Math.ceilDiv(grams, PARTS_TIED),
                ties,
                packs.loose() || packs.dry(),
                packs.upright(),
                stacks.stream().mapToLong(Stowed::overFront).max().orElse(0),
                stacks.stream().mapToLong(Stowed::overRear).max().orElse(0));
    }

    /** The least number of tie-downs of one article, or of packs bundled to one. */
    static int ties(long longestMillimetres, long grams) {
        if (longestMillimetres > LONG_MILLIMETRES) {
            return 2 + Math.toIntExact(Math.ceilDiv(longestMillimetres - LONG_MILLIMETRES, LONG_MILLIMETRES));
        }
        return longestMillimetres > SHORT_MILLIMETRES || grams > LIGHT_GRAMS ? 2 : 1;
    }
}
