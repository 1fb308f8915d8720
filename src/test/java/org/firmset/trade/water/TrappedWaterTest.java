package org.firmset.trade.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TrappedWaterTest {
    private static final TrappedWater COPPER = new TrappedWater(PipeMaterial.COPPER, 0.026, 0.0013, 0);

    @Test
    void the_pipe_gives_as_well_as_the_water() {
        assertThat(COPPER.compliance(5e5)).isCloseTo(1 / 2.18e9 + 1.25 * 20 / 117e9, within(1e-16));
    }

    @Test
    void air_gives_by_the_law_of_boyle() {
        TrappedWater airy = new TrappedWater(PipeMaterial.COPPER, 0.026, 0.0013, 0.01);
        double absolute = 101_325 + 5e5;
        assertThat(airy.compliance(5e5) - COPPER.compliance(5e5))
                .isCloseTo(0.01 * 101_325 / (absolute * absolute), within(1e-16));
        assertThat(airy.shareToPump(101_325) - COPPER.shareToPump(101_325)).isCloseTo(0.005, within(1e-12));
    }

    @Test
    void what_is_pumped_in_fills_what_gives() {
        assertThat(COPPER.shareToPump(5e5)).isCloseTo(5e5 * COPPER.compliance(5e5), within(1e-15));
        assertThat(COPPER.shareToPump(0)).isZero();
    }

    @Test
    void warmer_water_in_copper_presses_more() {
        double water = Math.log(Water.density(20) / Water.density(25));
        double pipe = 3 * 1.7e-5 * 5;
        assertThat(COPPER.pressureChange(20, 25, 5e5))
                .isCloseTo((water - pipe) / (1 / 2.18e9 + 25 / 117e9), within(1e-6))
                .isPositive();
        assertThat(COPPER.pressureChange(25, 20, 5e5)).isCloseTo(-COPPER.pressureChange(20, 25, 5e5), within(1e-6));
        assertThat(COPPER.pressureChange(20, 20, 5e5)).isZero();
    }

    @Test
    void polyethylene_grows_more_than_cold_water() {
        TrappedWater plastic = new TrappedWater(PipeMaterial.POLYETHYLENE, 0.026, 0.003, 0);
        assertThat(plastic.pressureChange(10, 11, 5e5)).isNegative();
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @ValueSource(doubles = {0, -1, Double.NaN})
        void a_bore_or_wall_that_is_none(double value) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new TrappedWater(PipeMaterial.PVC, value, 1, 0))
                    .withMessage("bore [" + value + "] must be over 0");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new TrappedWater(PipeMaterial.PVC, 1, value, 0))
                    .withMessage("wall [" + value + "] must be over 0");
        }

        @ParameterizedTest
        @ValueSource(doubles = {-0.001, 0.101, Double.NaN})
        void a_share_of_air_that_is_none(double air) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new TrappedWater(PipeMaterial.PVC, 1, 1, air))
                    .withMessage("air [" + air + "] must be from 0.0 to 0.1");
        }

        @ParameterizedTest
        @ValueSource(doubles = {-1, Double.NaN})
        void a_pressure_under_0(double pascals) {
            String message = "pascals [" + pascals + "] must be 0 or more";
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> COPPER.compliance(pascals))
                    .withMessage(message);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> COPPER.shareToPump(pascals))
                    .withMessage(message);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> COPPER.pressureChange(1, 2, pascals))
                    .withMessage(message);
        }

        @Test
        void a_temperature_that_is_none() {
            assertThatIllegalArgumentException().isThrownBy(() -> COPPER.pressureChange(-1, 2, 1));
            assertThatIllegalArgumentException().isThrownBy(() -> COPPER.pressureChange(1, Double.NaN, 1));
        }
    }
}
