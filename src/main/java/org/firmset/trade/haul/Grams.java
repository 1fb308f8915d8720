package org.firmset.trade.haul;

/** Rounding of reckoned masses. */
final class Grams {
    /** A thousandth of a gram forgives binary fractions. */
    private static final double HAIR = 1e-3;

    private Grams() {}

    static long up(double grams) {
        return (long) Math.ceil(grams - HAIR);
    }
}
