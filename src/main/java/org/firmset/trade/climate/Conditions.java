package org.firmset.trade.climate;

/**
 * What the weather of a day must be for its work. Begin with {@link #ANY} and narrow it.
 *
 * @param dry whether no rain or snow may fall
 * @param highOverCelsius the day's high must be over it; minus infinity for any
 * @param highUnderCelsius the day's high must be under it; infinity for any
 * @param lowOverCelsius the day's low must be over it; minus infinity for any
 * @param windUnderMetresPerSecond the wind must be under it; infinity for any
 */
public record Conditions(
        boolean dry,
        double highOverCelsius,
        double highUnderCelsius,
        double lowOverCelsius,
        double windUnderMetresPerSecond) {
    private static final double ALL = Double.POSITIVE_INFINITY;

    public static final Conditions ANY = new Conditions(false, -ALL, ALL, -ALL, ALL);

    public Conditions {
        Demand.within("highOverCelsius", highOverCelsius, -ALL, highUnderCelsius);
        Demand.within("lowOverCelsius", lowOverCelsius, -ALL, ALL);
        Demand.within("windUnderMetresPerSecond", windUnderMetresPerSecond, 0, ALL);
    }

    public Conditions onlyDry() {
        return new Conditions(true, highOverCelsius, highUnderCelsius, lowOverCelsius, windUnderMetresPerSecond);
    }

    /** It must get warmer than this. */
    public Conditions highOver(double celsius) {
        return new Conditions(dry, celsius, highUnderCelsius, lowOverCelsius, windUnderMetresPerSecond);
    }

    /** It must not get warmer than this. */
    public Conditions highUnder(double celsius) {
        return new Conditions(dry, highOverCelsius, celsius, lowOverCelsius, windUnderMetresPerSecond);
    }

    /** It must stay warmer than this, the night included. */
    public Conditions lowOver(double celsius) {
        return new Conditions(dry, highOverCelsius, highUnderCelsius, celsius, windUnderMetresPerSecond);
    }

    /** The low must stay over 0 °C. */
    public Conditions notFrozen() {
        return lowOver(Math.max(0, lowOverCelsius));
    }

    public Conditions windUnder(double metresPerSecond) {
        return new Conditions(dry, highOverCelsius, highUnderCelsius, lowOverCelsius, metresPerSecond);
    }
}
