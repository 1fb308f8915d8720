package org.firmset.trade.cure;

/** From when heat and wind ask for measures. */
public final class HotWeather {
    /** Fresh concrete may not be hotter when it leaves the mixer, in degrees Celsius (ACI 305.1-14, 3.3). */
    public static final double GREATEST_CONCRETE_CELSIUS = Imperial.fahrenheit(95);

    private static final double HOT_AIR = Imperial.fahrenheit(80);
    private static final double MASONRY_HOT = Imperial.fahrenheit(100);
    private static final double MASONRY_HOT_IN_WIND = Imperial.fahrenheit(90);
    private static final double MASONRY_WIND = Imperial.milesPerHour(8);

    private HotWeather() {}

    /**
     * Hot weather for concrete: air of 27 °C (80 °F) or more and evaporation over 1 kg/m2 an hour (ACI 305.1-14, 1.3).
     *
     * @param evaporation in kilograms a square metre and hour
     */
    public static boolean isHot(double airCelsius, double evaporation) {
        return airCelsius >= HOT_AIR && evaporation > Evaporation.LIMIT;
    }

    /**
     * Hot weather for masonry: over 38 °C (100 °F), or over 32 °C (90 °F) with wind over 13 km/h (8 mph); TMS 602
     * Art. 1.8 D.
     *
     * @param windMetresPerSecond 0 or more
     */
    public static boolean isHotForMasonry(double airCelsius, double windMetresPerSecond) {
        return airCelsius > MASONRY_HOT || (airCelsius > MASONRY_HOT_IN_WIND && windMetresPerSecond > MASONRY_WIND);
    }
}
