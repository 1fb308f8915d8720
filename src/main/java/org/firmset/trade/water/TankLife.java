package org.firmset.trade.water;

/** How long the water of a tank lasts. */
public final class TankLife {
    private static final double LITRES = 1000;

    private TankLife() {}

    /**
     * Minutes until it is empty.
     *
     * @param volume in m3, 0 or more
     * @param litresPerMinute over 0
     */
    public static double minutes(double volume, double litresPerMinute) {
        return Must.be0OrMore("volume", volume) * LITRES / Must.beOver0("litresPerMinute", litresPerMinute);
    }

    /**
     * Flushes of a toilet with the most water that new ones may take, 1.6 gal.
     *
     * @param volume in m3, 0 or more
     */
    public static double flushes(double volume) {
        return Must.be0OrMore("volume", volume) * LITRES / Fixture.LITRES_PER_FLUSH;
    }
}
