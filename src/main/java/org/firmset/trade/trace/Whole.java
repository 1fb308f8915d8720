package org.firmset.trade.trace;

/** Whole things out of exact sums: bags, bars and layers are not divided. */
public final class Whole {
    /** What unit conversions and binary fractions may add or take; far less than anybody can measure. */
    private static final double FORGIVEN = 1e-6;

    private Whole() {}

    /** The least whole number that holds the value; a millionth over a whole one still counts as that. */
    public static long up(double value) {
        return (long) Math.ceil(value - FORGIVEN);
    }

    /** The greatest whole number in the value; a millionth under a whole one still counts as that. */
    public static long down(double value) {
        return (long) Math.floor(value + FORGIVEN);
    }
}
