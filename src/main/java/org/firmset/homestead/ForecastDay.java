package org.firmset.homestead;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.firmset.measure.Described;
import org.firmset.measure.Measured;
import org.firmset.measure.Speed;
import org.firmset.measure.Temperature;
import org.jspecify.annotations.Nullable;

@Described("What a forecast says of one day.")
public record ForecastDay(
        @Described("The date.") LocalDate date,

        @Described(value = "Highest temperature of the day.", least = "-60 degC", most = "60 degC")
        Temperature high,

        @Described(value = "Lowest temperature of the day.", least = "-60 degC", most = "60 degC")
        Temperature low,

        @Described(value = "Chance of rain or snow in percent.", least = "0", most = "100")
        int wetPercent,

        @Described(
                value = "Sun energy on the panels in hours of full sun; left out when the forecast does not say.",
                least = "0",
                most = "14")
        @Nullable
        BigDecimal sunHours,

        @Described(value = "Wind; left out when the forecast does not say.", least = "0 m/s", most = "60 m/s") @Nullable
        Speed wind) {
    public ForecastDay {
        sunHours = sunHours == null ? null : Measured.normal(sunHours);
    }
}
