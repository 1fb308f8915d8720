package org.firmset.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Collections;
import org.junit.jupiter.api.Test;

class DailyTemperatureTest {
    private static final LocalDate DATE = LocalDate.of(2027, 5, 1);

    @Test
    void the_mean_lies_half_way_between_high_and_low() {
        DailyTemperature mean = DailyTemperature.meanOf(constant(20), constant(5));
        assertThat(mean.celsiusOn(DATE)).isEqualTo(12.5);
    }

    @Test
    void insulation_holds_what_would_fall_under_it() {
        assertThat(((DailyTemperature) d -> 3).notUnder(10).celsiusOn(DATE)).isEqualTo(10);
        assertThat(((DailyTemperature) d -> 12).notUnder(10).celsiusOn(DATE)).isEqualTo(12);
    }

    private static MonthlyValues constant(double value) {
        return new MonthlyValues(Collections.nCopies(12, value));
    }
}
