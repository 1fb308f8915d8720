package org.firmset.trade.haul.splitting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.firmset.trade.haul.Payload;
import org.firmset.trade.haul.Rig;
import org.firmset.trade.takeoff.cutting.CutPlan;
import org.firmset.trade.takeoff.cutting.CuttingStock;
import org.firmset.trade.takeoff.cutting.Demand;
import org.firmset.trade.takeoff.cutting.Stock;

/**
 * One measure by itself: every pack weighs at least so much, and a run takes at most so much. What needs so many runs on a
 * scale needs as many on the rig.
 *
 * @param weights by kind, 0 or more
 */
record Scale(long[] weights, long room) {
    private static final int MOST_THRESHOLDS = 500;
    private static final int MOST_CUT = 5_000;

    /** One for each rule, one for all volume and one for all mass. */
    static List<Scale> of(Rig rig, Pieces pieces) {
        List<Scale> scales = new ArrayList<>();
        for (int r = 0; r < pieces.rules(); r++) {
            long[] least = new long[pieces.kinds()];
            boolean usable = pieces.rooms[r] > 0;
            for (int k = 0; k < least.length; k++) {
                least[k] = pieces.leastWeight(r, k);
                usable &= least[k] >= 0;
            }
            if (usable) {
                scales.add(new Scale(least, pieces.rooms[r]));
            }
        }
        if (pieces.bays() > 1) {
            add(scales, volumes(pieces), volume(pieces));
            boolean lifts = rig.limits().stream()
                    .anyMatch(l -> l.sharePermille().values().stream().anyMatch(s -> s < 0));
            if (!lifts || pieces.bays() == 2) {
                add(scales, pieces.grams, Payload.mostGrams(rig));
            }
        }
        return scales;
    }

    private static void add(List<Scale> scales, long[] weights, long room) {
        if (room > 0) {
            scales.add(new Scale(weights, room));
        }
    }

    private static long[] volumes(Pieces pieces) {
        long[] volumes = new long[pieces.kinds()];
        int first = pieces.rules() - pieces.bays();
        for (int k = 0; k < volumes.length; k++) {
            for (int b = 0; b < pieces.bays(); b++) {
                volumes[k] = Math.max(volumes[k], pieces.weights[first + b][k][b]);
            }
        }
        return volumes;
    }

    private static long volume(Pieces pieces) {
        long sum = 0;
        for (int r = pieces.rules() - pieces.bays(); r < pieces.rules(); r++) {
            sum += pieces.rooms[r];
        }
        return sum;
    }

    /** The bound by large, middling and small packs (Martello and Toth 1990, bound L2), over the thresholds that matter. */
    int simpleBound(int[] wanted) {
        long best = bound(wanted, 0);
        long[] thresholds = Arrays.stream(weights)
                .distinct()
                .filter(weight -> 2 * weight <= room)
                .limit(MOST_THRESHOLDS)
                .toArray();
        for (long threshold : thresholds) {
            best = Math.max(best, bound(wanted, threshold));
        }
        return Math.toIntExact(best);
    }

    private long bound(int[] wanted, long threshold) {
        long large = 0;
        long middling = 0;
        long middlingWeight = 0;
        long small = 0;
        for (int k = 0; k < wanted.length; k++) {
            long weight = weights[k];
            if (weight > room - threshold) {
                large += wanted[k];
            } else if (2 * weight > room) {
                middling += wanted[k];
                middlingWeight += weight * wanted[k];
            } else if (weight >= threshold) {
                small += weight * wanted[k];
            }
        }
        long over = small - (middling * room - middlingWeight);
        return large + middling + Math.max(0, Math.ceilDiv(over, room));
    }

    /**
     * The packs cut from bars as long as the room, one bar for each run; empty when nothing weighs anything here, or when
     * there are more than can be cut in a moment.
     */
    Optional<CutPlan> cut(int[] wanted) {
        List<Demand> demands = demands(wanted);
        return demands.isEmpty() || demands.stream().mapToInt(Demand::count).sum() > MOST_CUT
                ? Optional.empty()
                : CuttingStock.plan(List.of(new Stock(room, 1, Stock.UNLIMITED)), demands, 0);
    }

    /** The weights of what is cut, as the patterns of the cut name them. */
    long[] lengths(int[] wanted) {
        return demands(wanted).stream().mapToLong(Demand::length).toArray();
    }

    /** Packs by weight, ascending. */
    private List<Demand> demands(int[] wanted) {
        Map<Long, Integer> counts = new TreeMap<>();
        for (int k = 0; k < wanted.length; k++) {
            if (weights[k] > 0 && wanted[k] > 0) {
                counts.merge(weights[k], wanted[k], Integer::sum);
            }
        }
        return counts.entrySet().stream()
                .map(c -> new Demand(c.getKey(), c.getValue()))
                .toList();
    }
}
