package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import org.firmset.homestead.MonthNormal;
import org.firmset.measure.Temperature;

@Embeddable
record MonthColumns(
        @Column(name = "mean_high_degc") Temperature meanHigh,
        @Column(name = "mean_low_degc") Temperature meanLow,
        @Column(name = "wet_days") BigDecimal wetDays,
        @Column(name = "sun_hours_per_day") BigDecimal sunHours) {

    static MonthColumns of(MonthNormal month) {
        return new MonthColumns(month.meanHigh(), month.meanLow(), month.wetDays(), month.sunHours());
    }

    MonthNormal toRecord() {
        return new MonthNormal(meanHigh, meanLow, wetDays, sunHours);
    }
}
