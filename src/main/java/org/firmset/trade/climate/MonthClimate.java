package org.firmset.trade.climate;

import org.jspecify.annotations.Nullable;

/**
 * What one month is usually like, as climate tables print it.
 *
 * @param meanHighCelsius mean of the daily highest temperatures, -60 to 60
 * @param meanLowCelsius mean of the daily lowest, -60 to 60, not over the high
 * @param wetDays days with rain or snow, 0 to 31
 * @param sunHours sun energy in hours of full sun (1000 W/m2) a day, 0 to 14
 * @param rainMillimetres rain and melted snow of the month, 0 to 3000; null when not known
 * @param windMetresPerSecond mean wind, 0 to 40; null when not known
 */
public record MonthClimate(
        double meanHighCelsius,
        double meanLowCelsius,
        double wetDays,
        double sunHours,
        @Nullable Double rainMillimetres,
        @Nullable Double windMetresPerSecond) {
    public MonthClimate {
        for (ClimateColumn column : ClimateColumn.values()) {
            Double value = switch (column) {
                case HIGH -> (Double) meanHighCelsius;
                case LOW -> (Double) meanLowCelsius;
                case WET_DAYS -> (Double) wetDays;
                case SUN -> (Double) sunHours;
                case RAIN -> rainMillimetres;
                case WIND -> windMetresPerSecond;
            };
            if (value != null) {
                Demand.within(column.key(), value, column.least(), column.most());
            }
        }
        if (meanHighCelsius < meanLowCelsius) {
            throw new IllegalArgumentException("meanHighCelsius [" + meanHighCelsius
                    + "] must not be under meanLowCelsius [" + meanLowCelsius + "]");
        }
    }
}
