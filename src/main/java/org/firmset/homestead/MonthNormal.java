package org.firmset.homestead;

import java.math.BigDecimal;
import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.measure.Measured;
import org.firmset.measure.Speed;
import org.firmset.measure.Temperature;
import org.jspecify.annotations.Nullable;

@Described("What one month is usually like at the place.")
public record MonthNormal(
        @Described(value = "Mean of the daily highest temperatures.", least = "-60 degC", most = "60 degC")
        Temperature meanHigh,

        @Described(value = "Mean of the daily lowest temperatures.", least = "-60 degC", most = "60 degC")
        Temperature meanLow,

        @Described(value = "Days with rain or snow.", least = "0", most = "31")
        BigDecimal wetDays,

        @Described(value = "Sun energy on the panels in hours of full sun a day.", least = "0", most = "14")
        BigDecimal sunHours,

        @Described(
                value = "Rain and melted snow of the month; left out when not known.",
                least = "0 mm",
                most = "3000 mm")
        @Nullable
        Length rain,

        @Described(value = "Mean wind; left out when not known.", least = "0 m/s", most = "40 m/s") @Nullable
        Speed wind) {
    public MonthNormal {
        wetDays = Measured.normal(wetDays);
        sunHours = Measured.normal(sunHours);
    }
}
