package org.firmset.trade.water;

/** What the formulas refuse to take. */
final class Must {
    private Must() {}

    /** @return the value */
    static double beOver0(String name, double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(name + " [" + value + "] must be over 0");
        }
        return value;
    }

    /** @return the value */
    static double be0OrMore(String name, double value) {
        if (!(value >= 0)) {
            throw new IllegalArgumentException(name + " [" + value + "] must be 0 or more");
        }
        return value;
    }

    /** @return the value */
    static double lie(String name, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(name + " [" + value + "] must be from " + least + " to " + most);
        }
        return value;
    }
}
