package org.firmset.trade.cure;

/** What numbers must be before they are reckoned with; a programmer's mistake throws at once. */
final class Demand {
    private Demand() {}

    /** @throws IllegalArgumentException when the value is outside, or no number */
    static double within(String name, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(name + " [" + value + "] must be from " + least + " to " + most);
        }
        return value;
    }

    /** @throws IllegalArgumentException when the value is 0 or less, endless, or no number */
    static double overZero(String name, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " [" + value + "] must be over 0");
        }
        return value;
    }

    /** @throws IllegalArgumentException when the value is 0 or less, over 1, or no number */
    static void share(double share) {
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("share [" + share + "] must be over 0 and at most 1");
        }
    }
}
