package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import org.firmset.homestead.MonthNormal;
import org.firmset.measure.Length;
import org.firmset.measure.Speed;
import org.firmset.measure.Temperature;
import org.jspecify.annotations.Nullable;

@Embeddable
record MonthColumns(
        @Column(name = "mean_high_degc") Temperature meanHigh,
        @Column(name = "mean_low_degc") Temperature meanLow,
        @Column(name = "wet_days") BigDecimal wetDays,
        @Column(name = "sun_hours_per_day") BigDecimal sunHours,
        @Column(name = "rain_m") @Nullable Length rain,
        @Column(name = "wind_m_s") @Nullable Speed wind) {

    static MonthColumns of(MonthNormal month) {
        return new MonthColumns(
                month.meanHigh(), month.meanLow(), month.wetDays(), month.sunHours(), month.rain(), month.wind());
    }

    MonthNormal toRecord() {
        return new MonthNormal(meanHigh, meanLow, wetDays, sunHours, rain, wind);
    }
}
