package org.firmset.trade.climate;

import java.time.Month;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Twelve months as they usually are, January first. {@link ClimateTable} reads and writes them.
 *
 * @param months no more wet days in any than it has days
 */
public record YearClimate(List<MonthClimate> months) {
    public YearClimate {
        months = List.copyOf(months);
        if (months.size() != Month.values().length) {
            throw new IllegalArgumentException("months [" + months.size() + "] must be twelve");
        }
        for (Month month : Month.values()) {
            double wetDays = months.get(month.getValue() - 1).wetDays();
            Demand.within("wetDays of " + month, wetDays, 0, WetDays.daysIn(month));
        }
    }

    /** One value of every month. */
    public MonthlyValues values(ToDoubleFunction<MonthClimate> value) {
        return new MonthlyValues(
                months.stream().map(m -> value.applyAsDouble(m)).toList());
    }
}
