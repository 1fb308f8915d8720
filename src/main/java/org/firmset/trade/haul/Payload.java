package org.firmset.trade.haul;

import java.util.List;
import java.util.Map;

/** The most a rig carries, however its load is shared over its bays. Exact to a gram for one or two bays, an upper bound else. */
public final class Payload {
    private Payload() {}

    /**
     * Grams, over all sharings between two bays, or the sum of what each bay takes alone where there are more; rounded up.
     */
    public static long mostGrams(Rig rig) {
        if (rig.bays().size() == 2) {
            return mostOfTwo(rig, rig.bays().get(0).id(), rig.bays().get(1).id());
        }
        return rig.bays().stream().mapToLong(b -> alone(rig.limits(), b.id())).sum();
    }

    private static long alone(List<MassLimit> limits, String bay) {
        return limits.stream()
                .filter(l -> l.shareOf(bay) > 0)
                .mapToLong(l -> Math.ceilDiv(l.grams() * 1000, l.shareOf(bay)))
                .min()
                .orElse(Long.MAX_VALUE / 1_000_000);
    }

    /** The most lies where a limit crosses another or an axis; each such point bounds it from above when rounded up. */
    private static long mostOfTwo(Rig rig, String one, String other) {
        long best = Math.min(alone(rig.limits(), one), Long.MAX_VALUE / 1_000_000);
        best = Math.max(best, alone(rig.limits(), other));
        for (MassLimit a : rig.limits()) {
            for (MassLimit b : rig.limits()) {
                long determinant = (long) a.shareOf(one) * b.shareOf(other) - (long) a.shareOf(other) * b.shareOf(one);
                if (determinant > 0) {
                    double x = 1000.0
                            * (a.grams() * (double) b.shareOf(other) - b.grams() * (double) a.shareOf(other))
                            / determinant;
                    double y = 1000.0
                            * (b.grams() * (double) a.shareOf(one) - a.grams() * (double) b.shareOf(one))
                            / determinant;
                    if (x >= 0 && y >= 0 && holds(rig, Map.of(one, x, other, y))) {
                        best = Math.max(best, (long) Math.ceil(x + y));
                    }
                }
            }
        }
        return best;
    }

    private static boolean holds(Rig rig, Map<String, Double> grams) {
        for (MassLimit limit : rig.limits()) {
            double sum = 0;
            for (Map.Entry<String, Double> bay : grams.entrySet()) {
                sum += bay.getValue() * limit.shareOf(bay.getKey()) / 1000;
            }
            if (sum > limit.grams() + 1) {
                return false;
            }
        }
        return true;
    }
}
