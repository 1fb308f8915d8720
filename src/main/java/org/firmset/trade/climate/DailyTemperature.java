package org.firmset.trade.climate;

import java.time.LocalDate;

/** The temperature of a date in degrees Celsius, as a daily mean. */
@FunctionalInterface
public interface DailyTemperature {
    double celsiusOn(LocalDate date);

    /** Half-way between the usual high and the usual low of the date, both in degrees Celsius. */
    static DailyTemperature meanOf(MonthlyValues high, MonthlyValues low) {
        return date -> (high.on(date) + low.on(date)) / 2;
    }

    /** The same, never under a temperature in degrees Celsius: what insulation holds. */
    default DailyTemperature notUnder(double celsius) {
        return date -> Math.max(celsius, celsiusOn(date));
    }
}
