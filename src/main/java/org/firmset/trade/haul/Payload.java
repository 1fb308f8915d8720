package org.firmset.trade.haul;

import java.util.List;

/**
 * The most a rig carries, however its load is shared over its bays, bounded from above. Two limits added with weights of
 * 0 or more are a limit as well; where together they put a whole gram on for every gram in any bay, what they allow is a
 * bound. The best two give the exact most of one or two bays (duality); of more bays it may be somewhat over.
 */
public final class Payload {
    private static final double WHOLE = 1000;
    private static final double HAIR = 1e-3;
    private static final double NO_LIMIT = Long.MAX_VALUE / 1_000_000.0;

    private final List<MassLimit> limits;
    private final List<String> bays;

    private Payload(Rig rig) {
        limits = rig.limits();
        bays = rig.bays().stream().map(b -> b.id()).toList();
    }

    /** Grams, rounded up; next to endless where no limits hold every bay. */
    public static long mostGrams(Rig rig) {
        return new Payload(rig).most();
    }

    private long most() {
        double best = bays.isEmpty() ? 0 : NO_LIMIT;
        for (MassLimit one : limits) {
            best = Math.min(best, bound(one, 1, one, 0));
            for (MassLimit other : limits) {
                best = Math.min(best, bestOf(one, other));
            }
        }
        // packs are whole grams: a hair over one is a binary fraction
        return (long) Math.ceil(Math.min(best, aloneInAll()) - HAIR);
    }

    /** The best weights lie where two bays, or a bay and a limit's own end, are both just held. */
    private double bestOf(MassLimit one, MassLimit other) {
        double best = NO_LIMIT;
        for (String bay : bays) {
            for (String second : bays) {
                double a = one.shareOf(bay);
                double b = other.shareOf(bay);
                double c = one.shareOf(second);
                double d = other.shareOf(second);
                double determinant = a * d - b * c;
                if (determinant != 0) {
                    best = Math.min(best, bound(one, (d - b) / determinant, other, (a - c) / determinant));
                }
            }
        }
        return best;
    }

    /** Any weights give a bound, once scaled so that the bay that is held least is held whole. */
    private double bound(MassLimit one, double weight, MassLimit other, double otherWeight) {
        if (weight < 0 || otherWeight < 0) {
            return NO_LIMIT;
        }
        double held = Double.POSITIVE_INFINITY;
        for (String bay : bays) {
            held = Math.min(held, weight * one.shareOf(bay) + otherWeight * other.shareOf(bay));
        }
        double allowed = weight * one.grams() + otherWeight * other.grams();
        return held > 0 ? Math.min(NO_LIMIT, allowed * WHOLE / held) : NO_LIMIT;
    }

    /** What each bay takes alone, added up: good where each bay has a limit of its own. */
    private double aloneInAll() {
        double sum = 0;
        for (String bay : bays) {
            sum += limits.stream()
                    .filter(l -> l.shareOf(bay) > 0)
                    .mapToDouble(l -> l.grams() * WHOLE / l.shareOf(bay))
                    .min()
                    .orElse(NO_LIMIT);
        }
        return Math.min(sum, NO_LIMIT);
    }
}
