package org.firmset.trade.cure;

/**
 * A stretch of time at one temperature, from a record of concrete's temperature.
 *
 * @param hours 0 or more
 * @param celsius in degrees Celsius
 */
public record TemperatureStep(double hours, double celsius) {
    /** Hotter or colder concrete is a broken probe; in degrees Celsius. */
    private static final double FARTHEST = 150;

    public TemperatureStep {
        Demand.within("hours", hours, 0, Double.MAX_VALUE);
        Demand.within("celsius", celsius, -FARTHEST, FARTHEST);
    }
}
