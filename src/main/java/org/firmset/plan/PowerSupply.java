package org.firmset.plan;

/**
 * Battery and generator. What the panels bring differs from day to day: {@link DayPower}.
 *
 * @param capacityWattHours what the battery holds when full
 * @param chargePercent of the energy sent to the battery that it stores, 1 to 100
 * @param dischargePercent of the stored energy that comes out again, 1 to 100
 * @param generator {@link Generator#NONE} for none
 */
public record PowerSupply(long capacityWattHours, int chargePercent, int dischargePercent, Generator generator) {
    /** No power at all. */
    public static final PowerSupply NONE = new PowerSupply(0, 100, 100, Generator.NONE);

    /** More than any site has, and little enough that sums over a year of hours stay exact. */
    public static final long MOST = 1_000_000_000_000L;

    public PowerSupply {
        requireSane(capacityWattHours, "capacityWattHours");
        requirePercent(chargePercent, "chargePercent");
        requirePercent(dischargePercent, "dischargePercent");
    }

    /**
     * A generator. It runs at its rating from an hour on until it has given what is asked of it for the day.
     *
     * @param watts its rating; 0 for none
     * @param wattHoursPerDay the most it may give on one day; no more than it gives from its hour to midnight
     * @param fromHour the full hour from which it may run, 0 to 23
     * @param centsPerKilowattHour fuel for one kWh
     */
    public record Generator(long watts, long wattHoursPerDay, int fromHour, long centsPerKilowattHour) {
        public static final Generator NONE = new Generator(0, 0, 0, 0);

        public Generator {
            requireSane(watts, "watts");
            Require.notNegative(wattHoursPerDay, "wattHoursPerDay", "the", "generator");
            Require.notNegative(centsPerKilowattHour, "centsPerKilowattHour", "the", "generator");
            Require.that(fromHour >= 0 && fromHour < DayPower.HOURS, "fromHour [%d] must be from 0 to 23", fromHour);
            Require.that(
                    wattHoursPerDay <= watts * (DayPower.HOURS - fromHour),
                    "wattHoursPerDay [%d] of a generator of [%d] W are more than it gives from hour [%d] to midnight",
                    wattHoursPerDay,
                    watts,
                    fromHour);
        }
    }

    static void requireSane(long amount, String field) {
        Require.that(amount >= 0 && amount <= MOST, "%s [%d] must be from 0 to %d", field, amount, MOST);
    }

    private static void requirePercent(int percent, String field) {
        Require.that(percent >= 1 && percent <= 100, "%s [%d] must be from 1 to 100", field, percent);
    }
}
