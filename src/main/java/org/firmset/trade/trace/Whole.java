package org.firmset.trade.trace;

/** Whole things out of exact sums: bags, bars and layers are not divided. */
public final class Whole {
    /**
     * Part of the value that unit conversions and binary fractions may add or take: nine decimals of a cubic metre are some
     * 1e-7 of a small bag. Far less than anybody can measure.
     */
    private static final double FORGIVEN_PART = 1e-6;

    private static final double MOST_FORGIVEN = 1e-3;

    private Whole() {}

    /** The least whole number that holds the value; a millionth part over a whole one still counts as that. */
    public static long up(double value) {
        return (long) Math.ceil(finite(value) - forgiven(value));
    }

    /** The greatest whole number in the value; a millionth part under a whole one still counts as that. */
    public static long down(double value) {
        return (long) Math.floor(finite(value) + forgiven(value));
    }

    private static double forgiven(double value) {
        return Math.min(MOST_FORGIVEN, FORGIVEN_PART * Math.max(1, Math.abs(value)));
    }

    private static double finite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value [" + value + "] must be a finite number");
        }
        return value;
    }
}
