package org.firmset.trade.power;

/** What numbers must be before they are reckoned with; a programmer's mistake throws at once. */
final class Must {
    private Must() {}

    /** @throws IllegalArgumentException when the value is outside, or no number */
    static void lieWithin(String name, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(name + " [" + value + "] must be from " + least + " to " + most);
        }
    }
}
