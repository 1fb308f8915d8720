package org.firmset.trade.haul;

/** Refuses what no caller may hand in. */
final class Must {
    private Must() {}

    static void notBeNegative(long value, String name) {
        if (value < 0) {
            throw new IllegalArgumentException("%s [%d] must not be negative".formatted(name, value));
        }
    }

    static void beOverZero(long value, String name) {
        if (value <= 0) {
            throw new IllegalArgumentException("%s [%d] must be over 0".formatted(name, value));
        }
    }
}
