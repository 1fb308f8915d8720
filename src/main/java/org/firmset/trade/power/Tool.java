package org.firmset.trade.power;

/**
 * What a tool draws.
 *
 * @param watts while it runs, as on its plate (volts x amperes), 0 to 100,000
 * @param dutyPercent of the working time that it runs, 0 to 100
 * @param surgeFactor how many times its watts it draws while starting, 1 to 10: about 1 for lamps and chargers, 2 to 3 for saws
 *     and mixers, more for pumps and compressors (common practice, no source)
 */
public record Tool(String name, double watts, int dutyPercent, double surgeFactor) {
    public Tool {
        Must.lieWithin("watts", watts, 0, 1e5);
        Must.lieWithin("dutyPercent", dutyPercent, 0, 100);
        Must.lieWithin("surgeFactor", surgeFactor, 1, 10);
    }

    /** Watts in mean over the working time. */
    public double averageWatts() {
        return watts * dutyPercent / 100;
    }

    /** Watts for a moment while it starts. */
    public double peakWatts() {
        return watts * surgeFactor;
    }
}
