package org.firmset.trade.cure;

/**
 * How fast water evaporates from a fresh surface: the chart of ACI 305R and NRMCA as a formula, in its US form and
 * in the SI form of Uno (ACI Materials Journal 95-M34). Made for air and concrete of about 4 to 38 °C and wind up to
 * 40 km/h;
 * {@link #inChart} says whether values lie in it. Under 0 water would condense.
 */
public final class Evaporation {
    /** Above it fresh surfaces need protection, in kilograms a square metre and hour (ACI 305R: 0.2 lb/ft2 an hour). */
    public static final double LIMIT = 1.0;

    /** The same as it is published in the US, in pounds a square foot and hour. */
    public static final double US_LIMIT = 0.2;

    /** Colder air is beyond any use of the formula, in degrees Celsius and Fahrenheit. */
    private static final double COLDEST = -17;

    private static final double COLDEST_FAHRENHEIT = 0;
    private static final double HOTTEST = 60;
    private static final double HOTTEST_FAHRENHEIT = 140;
    private static final double FASTEST = 200;

    private static final double CHART_LEAST_CELSIUS = 4;
    private static final double CHART_MOST_CELSIUS = 38;
    private static final double CHART_MOST_WIND = 40;

    private Evaporation() {}

    /**
     * Kilograms a square metre and hour: 5 ((Tc + 18)^2.5 - r (Ta + 18)^2.5) (V + 4) 10^-6.
     *
     * @param concreteCelsius Tc, from -17 to 60
     * @param airCelsius Ta, from -17 to 60
     * @param humidity relative humidity r, from 0 to 1
     * @param windKmh V, wind in kilometres an hour, from 0 to 200
     */
    public static double rate(double concreteCelsius, double airCelsius, double humidity, double windKmh) {
        return perWind(concreteCelsius, airCelsius, humidity) * (Demand.within("windKmh", windKmh, 0, FASTEST) + 4);
    }

    private static double perWind(double concreteCelsius, double airCelsius, double humidity) {
        double concrete = Demand.within("concreteCelsius", concreteCelsius, COLDEST, HOTTEST);
        double air = Demand.within("airCelsius", airCelsius, COLDEST, HOTTEST);
        double share = Demand.within("humidity", humidity, 0, 1);
        return 5e-6 * (Math.pow(concrete + 18, 2.5) - share * Math.pow(air + 18, 2.5));
    }

    /**
     * The wind in kilometres an hour at which the rate reaches a limit: {@link #rate} solved for V, 0 when it is
     * reached in still air, infinite when no wind reaches it.
     *
     * @param limit in kilograms a square metre and hour, over 0
     */
    public static double windKmhAt(double limit, double concreteCelsius, double airCelsius, double humidity) {
        double perWind = perWind(concreteCelsius, airCelsius, humidity);
        double wind = Demand.overZero("limit", limit) / perWind - 4;
        return perWind > 0 ? Math.max(0, wind) : Double.POSITIVE_INFINITY;
    }

    /**
     * Pounds a square foot and hour: (Tc^2.5 - r Ta^2.5) (1 + 0.4 V) 10^-6.
     *
     * @param concreteFahrenheit Tc, from 0 to 140
     * @param airFahrenheit Ta, from 0 to 140
     * @param humidity relative humidity r, from 0 to 1
     * @param windMph V, wind in miles an hour, from 0 to 200
     */
    public static double usRate(double concreteFahrenheit, double airFahrenheit, double humidity, double windMph) {
        double wind = Demand.within("windMph", windMph, 0, FASTEST);
        return usStill(concreteFahrenheit, airFahrenheit, humidity) * (1 + 0.4 * wind);
    }

    private static double usStill(double concreteFahrenheit, double airFahrenheit, double humidity) {
        double concrete =
                Demand.within("concreteFahrenheit", concreteFahrenheit, COLDEST_FAHRENHEIT, HOTTEST_FAHRENHEIT);
        double air = Demand.within("airFahrenheit", airFahrenheit, COLDEST_FAHRENHEIT, HOTTEST_FAHRENHEIT);
        double share = Demand.within("humidity", humidity, 0, 1);
        return 1e-6 * (Math.pow(concrete, 2.5) - share * Math.pow(air, 2.5));
    }

    /**
     * The wind in miles an hour at which the US form reaches a limit, 0 when it is reached in still air, infinite
     * when no wind reaches it.
     *
     * @param limit in pounds a square foot and hour, over 0
     */
    public static double windMphAt(double limit, double concreteFahrenheit, double airFahrenheit, double humidity) {
        double still = usStill(concreteFahrenheit, airFahrenheit, humidity);
        double wind = (Demand.overZero("limit", limit) / still - 1) / 0.4;
        return still > 0 ? Math.max(0, wind) : Double.POSITIVE_INFINITY;
    }

    /** Whether the formula was made for these values; beyond them it is stretched. */
    public static boolean inChart(double concreteCelsius, double airCelsius, double windKmh) {
        return inChart(concreteCelsius) && inChart(airCelsius) && windKmh <= CHART_MOST_WIND;
    }

    private static boolean inChart(double celsius) {
        return celsius >= CHART_LEAST_CELSIUS && celsius <= CHART_MOST_CELSIUS;
    }
}
