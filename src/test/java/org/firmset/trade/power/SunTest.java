package org.firmset.trade.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SunTest {
    @ParameterizedTest(name = "{0} W, {1} h of full sun, {2} %: {3} Wh")
    @CsvSource(textBlock = """
            400, 5.0,  75, 1500
            400, 5.5, 100, 2200
              0, 5.0,  75,    0
            400, 0.0,  75,    0
            400, 5.0,   0,    0
            """)
    void energy_is_power_times_hours_times_yield(double watts, double hours, int percent, double wattHours) {
        assertThat(Sun.wattHours(watts, hours, percent)).isCloseTo(wattHours, within(1e-9));
    }

    @ParameterizedTest(name = "{0} W, {1} h, {2} %")
    @DisplayName("refuses what is out of range")
    @CsvSource(textBlock = """
             -1,  5,  75
            400, -1,  75
            400, 25,  75
            400,  5,  -1
            400,  5, 101
            NaN,  5,  75
            400, NaN, 75
            """)
    void refuses_what_is_out_of_range(double watts, double hours, int percent) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Sun.wattHours(watts, hours, percent))
                .withMessageContainingAll("[" + watts + "]", "[" + hours + "]", "[" + percent + "]", "out of range");
    }
}
