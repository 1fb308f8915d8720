package org.firmset.trade.power;

/**
 * What a lead-acid battery of 12 V that has rested for some hours tells by its voltage, at 27 °C (BCI-style table, check EN-06).
 * It says nothing while charging or under load, and nothing of lithium.
 */
public final class RestVoltage {
    private static final BrokenLine PERCENT = BrokenLine.of(11.89, 0, 12.06, 25, 12.24, 50, 12.45, 75, 12.65, 100);

    private RestVoltage() {}

    /** Charge in percent, 0 to 100. @param volts 0 to 20 */
    public static double percent(double volts) {
        Must.lieWithin("volts", volts, 0, 20);
        return PERCENT.at(volts);
    }
}
