package org.firmset.plan;

import java.util.List;

/**
 * What the place itself limits.
 *
 * @param dryStorageMillilitres room that stays dry overnight
 * @param power battery and generator
 * @param stock what is on site at the status date
 */
public record Site(long dryStorageMillilitres, PowerSupply power, List<StockLot> stock) {
    public Site {
        stock = List.copyOf(stock);
        Require.notNegative(dryStorageMillilitres, "dryStorageMillilitres", "the", "site");
    }

    /** The most a generator may give on one day, in Wh; 0 for no generator. */
    public long generatorWattHoursPerDay() {
        return power.generator().wattHoursPerDay();
    }

    /** Fuel for one kWh of a generator. */
    public long generatorCentsPerKilowattHour() {
        return power.generator().centsPerKilowattHour();
    }

    /** The same with other room that stays dry. */
    public Site withDryStorage(long millilitres) {
        return new Site(millilitres, power, stock);
    }

    /** The same with other power. */
    public Site withPower(PowerSupply changed) {
        return new Site(dryStorageMillilitres, changed, stock);
    }

    /** The same with other stock. */
    public Site withStock(List<StockLot> changed) {
        return new Site(dryStorageMillilitres, power, changed);
    }
}
