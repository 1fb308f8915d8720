package org.firmset.trade.power;

/**
 * The size of a lead-acid bank for days without sun, by the usual sheet (check EN-07): ampere-hours a day through the inverter,
 * times days, times the temperature's factor, over the depth that may be used; then whole batteries.
 *
 * @param ampereHoursADay taken from the bank
 * @param ampereHours of the bank
 * @param inParallel strings side by side, rounded up
 * @param inSeries batteries in a string
 */
public record BatteryBank(double ampereHoursADay, double ampereHours, int inParallel, int inSeries) {

    /**
     * What the bank must do.
     *
     * @param wattHoursADay drawn by tools, 0 to 1 million
     * @param inverterPercent 1 to 100
     * @param volts of the bank, 1 to 1000
     * @param days without sun, over 0 to 30
     * @param temperatureFactor 1 to 3, such as 1.11 at 16 °C
     * @param depthPercent that may be used, 1 to 100
     */
    public record Need(
            double wattHoursADay,
            double inverterPercent,
            double volts,
            double days,
            double temperatureFactor,
            double depthPercent) {
        public Need {
            Must.lieWithin("wattHoursADay", wattHoursADay, 0, 1e6);
            Must.lieWithin("inverterPercent", inverterPercent, 1, 100);
            Must.lieWithin("volts", volts, 1, 1000);
            Must.lieWithin("days", days, 0.01, 30);
            Must.lieWithin("temperatureFactor", temperatureFactor, 1, 3);
            Must.lieWithin("depthPercent", depthPercent, 1, 100);
        }
    }

    /** @param unitAmpereHours of one battery, over 0 @param unitVolts of one battery, at most the bank's */
    public static BatteryBank of(Need need, double unitAmpereHours, double unitVolts) {
        Must.lieWithin("unitAmpereHours", unitAmpereHours, 0.1, 1e5);
        Must.lieWithin("unitVolts", unitVolts, 0.1, need.volts());
        double day = need.wattHoursADay() * 100 / need.inverterPercent() / need.volts();
        double all = day * need.days() * need.temperatureFactor() * 100 / need.depthPercent();
        return new BatteryBank(day, all, (int) Math.ceil(all / unitAmpereHours - 1e-9), (int)
                Math.ceil(need.volts() / unitVolts - 1e-9));
    }

    /** Batteries in all. */
    public int count() {
        return inParallel * inSeries;
    }
}
