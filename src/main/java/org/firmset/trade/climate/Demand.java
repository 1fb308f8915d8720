package org.firmset.trade.climate;

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
}
