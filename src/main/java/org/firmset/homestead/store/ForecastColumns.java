package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.firmset.homestead.ForecastDay;
import org.firmset.measure.Speed;
import org.firmset.measure.Temperature;
import org.jspecify.annotations.Nullable;

@Embeddable
record ForecastColumns(
        @Column(name = "forecast_on") LocalDate date,
        @Column(name = "high_degc") Temperature high,
        @Column(name = "low_degc") Temperature low,
        @Column(name = "wet_percent") int wetPercent,
        @Column(name = "sun_hours") @Nullable BigDecimal sunHours,
        @Column(name = "wind_m_s") @Nullable Speed wind) {

    static ForecastColumns of(ForecastDay day) {
        return new ForecastColumns(day.date(), day.high(), day.low(), day.wetPercent(), day.sunHours(), day.wind());
    }

    ForecastDay toRecord() {
        return new ForecastDay(date, high, low, wetPercent, sunHours, wind);
    }
}
