package org.firmset.trade.climate;

import java.time.LocalDate;

/** The temperature of a date in degrees Celsius, as a daily mean. */
@FunctionalInterface
public interface DailyTemperature {
    double celsiusOn(LocalDate date);
}
