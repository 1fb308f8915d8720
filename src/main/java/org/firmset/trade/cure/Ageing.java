package org.firmset.trade.cure;

import java.util.List;
import org.firmset.measure.Worded;
import org.firmset.trade.trace.Source;

/**
 * How much age a time at some temperature counts for. All are published and differ; a result must say which one it
 * used. They are meant for 0 to 80 °C: hotter counts like 80 °C, and under 0 °C nothing is counted, because water
 * that is ice does not hydrate cement. Only the Nurse-Saul law with datum -10 °C counts down to there, which is its
 * published form.
 */
public enum Ageing implements Worded {
    /** exp(13.65 - 4000 / (273 + T)), age at 20 °C: EN 1992-1-1 Eq. B.10. */
    EN_1992("EN 1992-1-1 B.10", 20, 13.65, 4000),
    /** exp(-5000 (1 / (273 + T) - 1 / 296)), age at 23 °C: ASTM C1074 with the 5000 K suggested for Type I cement. */
    EQUIVALENT_AGE("equivalent age, 5000 K and 23 °C", 23, 5000.0 / 296, 5000),
    /** (T - 0) / (20 - 0): the temperature-time factor with a datum of 0 °C, as age at 20 °C. */
    NURSE_SAUL_ZERO("Nurse-Saul, datum 0 °C", 20, 0),
    /** (T + 10) / (20 + 10): the temperature-time factor with a datum of -10 °C, as age at 20 °C. */
    NURSE_SAUL_MINUS_TEN("Nurse-Saul, datum -10 °C", 20, -10);

    private static final double HOTTEST_CELSIUS = 80;
    private static final double KELVIN = 273;

    private final String words;
    private final double referenceCelsius;
    private final boolean linear;
    private final double datumCelsius;
    private final double exponent;
    private final double activationKelvin;

    Ageing(String words, double referenceCelsius, double exponent, double activationKelvin) {
        this.words = words;
        this.referenceCelsius = referenceCelsius;
        this.linear = false;
        this.datumCelsius = 0;
        this.exponent = exponent;
        this.activationKelvin = activationKelvin;
    }

    Ageing(String words, double referenceCelsius, double datumCelsius) {
        this.words = words;
        this.referenceCelsius = referenceCelsius;
        this.linear = true;
        this.datumCelsius = datumCelsius;
        this.exponent = 0;
        this.activationKelvin = 0;
    }

    @Override
    public String words() {
        return words;
    }

    /** The temperature in degrees Celsius at which a day counts as one day (EN 1992-1-1: as 0.998). */
    public double referenceCelsius() {
        return referenceCelsius;
    }

    /** The temperature in degrees Celsius under which nothing is counted. */
    public double datumCelsius() {
        return datumCelsius;
    }

    /**
     * How many days at the reference temperature a day at this temperature counts for.
     *
     * @param celsius of the concrete; over 80 °C as 80 °C, under the datum 0
     */
    public double factor(double celsius) {
        if (Double.isNaN(celsius)) {
            throw new IllegalArgumentException("celsius [" + celsius + "] must be a temperature");
        }
        if (celsius < datumCelsius) {
            return 0;
        }
        double counted = Math.min(celsius, HOTTEST_CELSIUS);
        return linear
                ? (counted - datumCelsius) / (referenceCelsius - datumCelsius)
                : Math.exp(exponent - activationKelvin / (KELVIN + counted));
    }

    /** Hours at the reference temperature that a record of temperatures counts for. */
    public double equivalentHours(List<TemperatureStep> steps) {
        return steps.stream()
                .mapToDouble(step -> step.hours() * factor(step.celsius()))
                .sum();
    }

    /**
     * The temperature-time factor of ASTM C1074 Eq. 1 (Nurse and Saul) in degree-hours: hours times degrees over the
     * datum, 0 under it. Unlike {@link #factor} it has no upper end.
     *
     * @param datumCelsius usually 0 or -10 °C
     */
    public static double degreeHours(List<TemperatureStep> steps, double datumCelsius) {
        Demand.within("datumCelsius", datumCelsius, -20, 20);
        return steps.stream()
                .mapToDouble(step -> step.hours() * Math.max(0, step.celsius() - datumCelsius))
                .sum();
    }

    Source source() {
        return switch (this) {
            case EN_1992 -> Sources.EN_AGE;
            case EQUIVALENT_AGE -> Sources.ASTM_AGE;
            case NURSE_SAUL_ZERO, NURSE_SAUL_MINUS_TEN -> Sources.ASTM_FACTOR;
        };
    }

    String formula() {
        return switch (this) {
            case EN_1992 -> "f = exp(13.65 - 4000 / (273 + T))";
            case EQUIVALENT_AGE -> "f = exp(-5000 (1 / (273 + T) - 1 / 296))";
            case NURSE_SAUL_ZERO -> "f = T / 20";
            case NURSE_SAUL_MINUS_TEN -> "f = (T + 10) / 30";
        };
    }
}
