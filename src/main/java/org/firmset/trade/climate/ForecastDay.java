package org.firmset.trade.climate;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What a forecast says of one day.
 *
 * @param highCelsius -60 to 60, not under the low
 * @param lowCelsius -60 to 60
 * @param rainPercent chance of rain or snow, 0 to 100
 * @param windMetresPerSecond 0 to 60; null when the forecast does not say
 * @param sunHours hours of full sun, 0 to 14; null when the forecast does not say
 */
public record ForecastDay(
        LocalDate date,
        double highCelsius,
        double lowCelsius,
        int rainPercent,
        @Nullable Double windMetresPerSecond,
        @Nullable Double sunHours) {
    public ForecastDay {
        Demand.within("highCelsius", highCelsius, -60, 60);
        Demand.within("lowCelsius", lowCelsius, -60, highCelsius);
        Demand.within("rainPercent", rainPercent, 0, 100);
        if (windMetresPerSecond != null) {
            Demand.within("windMetresPerSecond", windMetresPerSecond, 0, 60);
        }
        if (sunHours != null) {
            Demand.within("sunHours", sunHours, 0, 14);
        }
    }
}
