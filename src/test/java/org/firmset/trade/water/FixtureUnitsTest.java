package org.firmset.trade.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FixtureUnitsTest {
    @ParameterizedTest(name = "{0} units: {1} gpm")
    @CsvSource(textBlock = """
             3,    3
             4,    3.75
             5,    4.5
             6.5,  5.75
             8,    7
             9,    7.5
            10,    8
            11.5,  9
            13,   10
            """)
    void straight_lines_between_the_points(double units, double gallonsPerMinute) {
        assertThat(FixtureUnits.litresPerMinute(units) / 3.785411784).isCloseTo(gallonsPerMinute, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {2.99, 13.01, Double.NaN})
    void nothing_is_made_up_outside_of_them(double units) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FixtureUnits.litresPerMinute(units))
                .withMessage("units [" + units + "] must be from 3.0 to 13.0");
    }

    @Test
    void what_fixtures_need_while_they_run() {
        assertThat(FixtureGroup.FLUSH_TANK.leastPressure()).isCloseTo(55_158, within(0.1));
        assertThat(FixtureGroup.FLUSH_VALVE.leastPressure()).isCloseTo(103_421.4, within(0.1));
    }

    @Test
    void how_long_a_tank_lasts() {
        assertThat(TankLife.minutes(6, 20)).isCloseTo(300, within(1e-9));
        assertThat(TankLife.flushes(6)).isCloseTo(6000 / Fixture.LITRES_PER_FLUSH, within(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TankLife.minutes(6, 0))
                .withMessage("litresPerMinute [0.0] must be over 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TankLife.minutes(-1, 1))
                .withMessage("volume [-1.0] must be 0 or more");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TankLife.flushes(Double.NaN))
                .withMessage("volume [NaN] must be 0 or more");
    }
}
