package org.firmset.trade.cure;

import org.firmset.measure.Worded;

/**
 * The bands of cold that ask for measures in masonry, during the work by the air and afterwards by the daily mean (TMS
 * 602 Art. 1.8 C; the measures from memory and in short).
 */
public enum MasonryCold implements Worded {
    /** 40 °F or more. */
    NONE(Imperial.fahrenheit(40), "none: 4.4 °C (40 °F) or more", "no measures", "no measures"),
    /** Over 32 °F to under 40 °F. */
    COOL(
            Imperial.fahrenheit(32),
            "0 to 4.4 °C (32 to 40 °F)",
            "lay no icy units; warm sand or mixing water so that mortar is 5 to 49 °C (40 to 120 °F)",
            "cover the work so that it stays dry"),
    /** Over 25 °F to 32 °F. */
    COLD(
            Imperial.fahrenheit(25),
            "-3.9 to 0 °C (25 to 32 °F)",
            "warm sand and water, keep mortar from freezing until it is used, and make grout 21 to 49 °C (70 to"
                    + " 120 °F)",
            "cover the work so that it stays dry"),
    /** Over 20 °F to 25 °F. */
    BITTER(
            Imperial.fahrenheit(20),
            "-6.7 to -3.9 °C (20 to 25 °F)",
            "besides, warm masonry to 5 °C (40 °F) before grouting, and put up windbreaks in wind over 24 km/h"
                    + " (15 mph)",
            "wrap the work in insulating blankets"),
    /** 20 °F and under. */
    SEVERE(
            Double.NEGATIVE_INFINITY,
            "-6.7 °C (20 °F) or less",
            "besides, work only in an enclosure that is heated above 0 °C (32 °F)",
            "keep the work above 0 °C (32 °F) by an enclosure, heaters or heated blankets");

    /** Grout may not be colder when it freezes outside, in degrees Celsius (70 °F). */
    public static final double LEAST_GROUT_CELSIUS = Imperial.fahrenheit(70);

    /** Nor hotter, in degrees Celsius (120 °F). */
    public static final double GREATEST_GROUT_CELSIUS = Imperial.fahrenheit(120);

    /** Masonry is warmed to it before grouting from the bitter band on, in degrees Celsius (40 °F). */
    public static final double LEAST_MASONRY_CELSIUS = Imperial.fahrenheit(40);

    private static final double WINDBREAK_WIND = Imperial.milesPerHour(15);

    private final double fromCelsius;
    private final String words;
    private final String duringWork;
    private final String afterwards;

    MasonryCold(double fromCelsius, String words, String duringWork, String afterwards) {
        this.fromCelsius = fromCelsius;
        this.words = words;
        this.duringWork = duringWork;
        this.afterwards = afterwards;
    }

    /** The band of a temperature in degrees Celsius; where two meet, the colder one. */
    public static MasonryCold of(double celsius) {
        Demand.within("celsius", celsius, -100, 100);
        if (celsius >= NONE.fromCelsius) {
            return NONE;
        }
        if (celsius > COOL.fromCelsius) {
            return COOL;
        }
        if (celsius > COLD.fromCelsius) {
            return COLD;
        }
        return celsius > BITTER.fromCelsius ? BITTER : SEVERE;
    }

    /** The lower end of the band in degrees Celsius; minus infinity for the last one. */
    public double fromCelsius() {
        return fromCelsius;
    }

    /** The band in words: "0 to 4.4 °C (32 to 40 °F)". */
    @Override
    public String words() {
        return words;
    }

    /** What is done while the work goes on. */
    public String duringWork() {
        return duringWork;
    }

    /** What is done afterwards, for 24 hours, and for 48 with grout. */
    public String afterwards() {
        return afterwards;
    }

    /** Whether grout has to be warm: it freezes outside. */
    public boolean asksForWarmGrout() {
        return fromCelsius <= COLD.fromCelsius;
    }

    /** Whether the masonry itself is warmed before grouting. */
    public boolean asksForWarmMasonry() {
        return fromCelsius <= BITTER.fromCelsius;
    }

    /** Whether windbreaks are put up: in the bitter band in wind over 24 km/h (15 mph). */
    public boolean asksForWindbreak(double windMetresPerSecond) {
        return this == BITTER && windMetresPerSecond > WINDBREAK_WIND;
    }

    /** Whether the work needs a heated enclosure. */
    public boolean asksForEnclosure() {
        return this == SEVERE;
    }
}
