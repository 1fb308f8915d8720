package org.firmset.trade.water;

/** How much chlorine a volume of water takes. */
public final class Chlorine {
    private static final double MILLION = 1e6;

    private Chlorine() {}

    /**
     * Liquid in m3: V x dose / (1,000,000 x strength).
     *
     * @param volume of water in m3, 0 or more
     * @param dose in mg/L, 0 or more
     * @param strength share of available chlorine by weight in volume, over 0, at most 1
     */
    public static double liquid(double volume, double dose, double strength) {
        return Must.be0OrMore("volume", volume) * Must.be0OrMore("dose", dose) / (MILLION * share(strength));
    }

    /**
     * Dry product in kilograms.
     *
     * @param volume of water in m3, 0 or more
     * @param dose in mg/L, 0 or more
     * @param strength share of available chlorine by weight, over 0, at most 1
     */
    public static double dry(double volume, double dose, double strength) {
        return liquid(volume, dose, strength) * Water.HEAVIEST;
    }

    private static double share(double strength) {
        Must.beOver0("strength", strength);
        return Must.lie("strength", strength, 0, 1);
    }
}
