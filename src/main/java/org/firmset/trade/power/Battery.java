package org.firmset.trade.power;

/**
 * A battery bank. Planning aid: maker's sheet and local rules come first; fuse it, cover its poles, give it air, never charge
 * it frozen.
 *
 * @param capacityWattHours what it holds when full, 0 to 10 million
 * @param floorPercent of its charge that must stay in it, 0 to 99
 * @param chargePercent of the energy sent to it that it stores, 1 to 100
 * @param dischargePercent of the stored energy that comes out again, 1 to 100
 * @param cold what it still gives in the cold
 * @param leastChargeCelsius colder than this nothing is charged, sun or generator or not; -60 to 60
 */
public record Battery(
        double capacityWattHours,
        int floorPercent,
        double chargePercent,
        double dischargePercent,
        ColdShare cold,
        double leastChargeCelsius) {
    static final double MOST_WATT_HOURS = 1e7;
    private static final double LEAST_PERCENT = 1;

    public Battery {
        Must.lieWithin("capacityWattHours", capacityWattHours, 0, MOST_WATT_HOURS);
        Must.lieWithin("floorPercent", floorPercent, 0, 99);
        Must.lieWithin("chargePercent", chargePercent, LEAST_PERCENT, 100);
        Must.lieWithin("dischargePercent", dischargePercent, LEAST_PERCENT, 100);
        Must.lieWithin("leastChargeCelsius", leastChargeCelsius, -60, 60);
    }

    /**
     * The charge that must not be gone under, in Wh: the floor is a percent of what the battery gives at its temperature, and
     * what the cold locks in cannot be had either.
     */
    public double limitWattHours(double celsius) {
        return capacityWattHours * (1 - cold.at(celsius) * (1 - floorPercent / 100.0));
    }

    public boolean charges(double celsius) {
        return celsius >= leastChargeCelsius;
    }

    Battery withCapacity(double wattHours) {
        return new Battery(wattHours, floorPercent, chargePercent, dischargePercent, cold, leastChargeCelsius);
    }
}
