package org.firmset.trade.takeoff;

/** What a bag of dry mix makes. */
public final class BagYield {
    /** 0.0075 ft3 a pound, the rate behind the labels of common bags. */
    private static final double CUBIC_METRES_PER_KILOGRAM = 0.0075 * 0.3048 * 0.3048 * 0.3048 / 0.45359237;

    private BagYield() {}

    /** Fresh concrete in cubic metres from a bag of this mass in kilograms; the bag's own label comes first. */
    public static double ofMass(double kilograms) {
        if (!(kilograms > 0)) {
            throw new IllegalArgumentException("kilograms [" + kilograms + "] must be over 0");
        }
        return kilograms * CUBIC_METRES_PER_KILOGRAM;
    }
}
