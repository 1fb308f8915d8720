package org.firmset.plan;

import java.util.List;

/**
 * What the place itself limits.
 *
 * @param dryStorageMillilitres room that stays dry overnight
 * @param usableWattHours energy between the battery's floor and full
 * @param generatorWattHoursPerDay the most a generator may give on one day; 0 for no generator
 * @param generatorCentsPerKilowattHour fuel for one kWh
 * @param stock what is on site at the status date
 */
public record Site(
        long dryStorageMillilitres,
        long usableWattHours,
        long generatorWattHoursPerDay,
        long generatorCentsPerKilowattHour,
        List<StockLot> stock) {
    public Site {
        stock = List.copyOf(stock);
        Require.notNegative(dryStorageMillilitres, "dryStorageMillilitres", "the", "site");
        Require.notNegative(usableWattHours, "usableWattHours", "the", "site");
        Require.notNegative(generatorWattHoursPerDay, "generatorWattHoursPerDay", "the", "site");
        Require.notNegative(generatorCentsPerKilowattHour, "generatorCentsPerKilowattHour", "the", "site");
    }
}
