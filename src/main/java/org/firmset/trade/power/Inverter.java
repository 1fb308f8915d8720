package org.firmset.trade.power;

/**
 * What makes battery power into mains power.
 *
 * @param continuousWatts what it gives for as long as it likes, 0 to 1 million
 * @param surgeWatts what it gives for a second or two while a motor starts, not under continuous
 * @param efficiencyPercent of what it takes from the battery, 1 to 100
 */
public record Inverter(double continuousWatts, double surgeWatts, double efficiencyPercent) {
    public Inverter {
        Must.lieWithin("continuousWatts", continuousWatts, 0, 1e6);
        Must.lieWithin("surgeWatts", surgeWatts, continuousWatts, 1e7);
        Must.lieWithin("efficiencyPercent", efficiencyPercent, 1, 100);
    }

    /** What the battery side must give, in W or Wh, for what the tools take. */
    public double fromBattery(double taken) {
        return taken * 100 / efficiencyPercent;
    }
}
