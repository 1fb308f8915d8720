package org.firmset.trade.cure;

/** What cold asks of fresh concrete (ACI 306R, mostly from memory). */
public final class ColdWeather {
    /** Air under it is cold, in degrees Celsius (40 °F). */
    public static final double COLD_CELSIUS = Imperial.fahrenheit(40);

    /** Air over it for more than half a day ends a cold spell, in degrees Celsius (50 °F). */
    public static final double MILD_CELSIUS = Imperial.fahrenheit(50);

    /** Concrete of this strength in pascals survives to freeze once (500 psi). */
    public static final double FREEZING_SURVIVED_PASCALS = 3_500_000;

    private static final double THIN_METRES = Imperial.inches(12);
    private static final double MIDDLING_METRES = Imperial.inches(36);
    private static final double THICK_METRES = Imperial.inches(72);
    private static final double THIN_CELSIUS = Imperial.fahrenheit(55);
    private static final double MIDDLING_CELSIUS = Imperial.fahrenheit(50);
    private static final double THICK_CELSIUS = Imperial.fahrenheit(45);
    private static final double MASSIVE_CELSIUS = Imperial.fahrenheit(40);

    private static final int DAYS_OF_NO_SPELL = 3;
    private static final double HALF_A_DAY = 12;

    private ColdWeather() {}

    /**
     * Whether so many days in a row with a mean under {@link #COLD_CELSIUS} are cold weather by its older
     * definition: more than three.
     */
    public static boolean isSpell(int coldDaysInARow) {
        return coldDaysInARow > DAYS_OF_NO_SPELL;
    }

    /**
     * Whether a day ends a cold spell.
     *
     * @param hoursOverMild hours of any 24 with air over {@link #MILD_CELSIUS}
     */
    public static boolean endsSpell(double hoursOverMild) {
        return Demand.within("hoursOverMild", hoursOverMild, 0, 24) > HALF_A_DAY;
    }

    /**
     * How warm concrete must be at least as it is placed and held in cold weather, in degrees Celsius: 55 °F under
     * 12 in, 50 °F to 36 in, 45 °F to 72 in, 40 °F beyond (ACI 306R Table 3.1, from memory).
     *
     * @param leastDimensionMetres the least measure of the part, over 0
     */
    public static double leastConcreteCelsius(double leastDimensionMetres) {
        double least = Demand.overZero("leastDimensionMetres", leastDimensionMetres);
        if (least < THIN_METRES) {
            return THIN_CELSIUS;
        }
        if (least <= MIDDLING_METRES) {
            return MIDDLING_CELSIUS;
        }
        return least <= THICK_METRES ? THICK_CELSIUS : MASSIVE_CELSIUS;
    }

    /**
     * Hours until concrete survives to freeze once, by EN 1992-1-1 Eq. 3.2 and B.10; infinite under 0 °C. Ages under 3
     * days are stretched far, so twice as long is not too careful.
     *
     * @param strengthPascals 28-day strength of the mix, at least that of {@link #FREEZING_SURVIVED_PASCALS}
     * @param celsius what the concrete is held at
     */
    public static double hoursToSurviveFreezing(double strengthPascals, Cement cement, double celsius) {
        Demand.within("strengthPascals", strengthPascals, FREEZING_SURVIVED_PASCALS, 200_000_000);
        double days = Strength.daysTo(FREEZING_SURVIVED_PASCALS / strengthPascals, cement);
        return days * 24 / Strength.ageFactor(celsius);
    }
}
