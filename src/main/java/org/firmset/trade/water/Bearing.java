package org.firmset.trade.water;

import org.firmset.trade.trace.Whole;

/** Loads on the ground. */
public final class Bearing {
    private Bearing() {}

    /**
     * Pressure in pascals under a mass that is spread evenly.
     *
     * @param kilograms 0 or more
     * @param area in m2, over 0
     */
    public static double pressure(double kilograms, double area) {
        return Must.be0OrMore("kilograms", kilograms) * Water.GRAVITY / Must.beOver0("area", area);
    }

    /**
     * Area in m2 of a pad that keeps a load within what the ground may carry; the pad's own mass belongs to the load.
     *
     * @param kilograms 0 or more
     * @param allowed in pascals, over 0
     */
    public static double padArea(double kilograms, double allowed) {
        return Must.be0OrMore("kilograms", kilograms) * Water.GRAVITY / Must.beOver0("allowed", allowed);
    }

    /**
     * Side of such a pad in metres when it is square.
     *
     * @param kilograms 0 or more
     * @param allowed in pascals, over 0
     */
    public static double padSide(double kilograms, double allowed) {
        return Math.sqrt(padArea(kilograms, allowed));
    }

    /**
     * The side rounded up to what is measured off, such as 6 in.
     *
     * @param kilograms 0 or more
     * @param allowed in pascals, over 0
     * @param step in metres, over 0
     */
    public static double padSide(double kilograms, double allowed, double step) {
        return Whole.up(padSide(kilograms, allowed) / Must.beOver0("step", step)) * step;
    }
}
