package org.firmset.trade.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bearing and wind. */
class LoadsTest {
    @Test
    void pressure_and_pads() {
        assertThat(Bearing.pressure(1000, 2)).isCloseTo(4903.325, within(1e-9));
        assertThat(Bearing.padArea(1000, 4903.325)).isCloseTo(2, within(1e-12));
        assertThat(Bearing.padSide(1000, 9806.65 / 4)).isCloseTo(2, within(1e-12));
        assertThat(Bearing.padSide(1000, 9806.65 / 4, 0.3)).isCloseTo(2.1, within(1e-12));
        assertThat(Bearing.padSide(1000, 9806.65 / 4, 0.5)).isCloseTo(2, within(1e-12));
    }

    @ParameterizedTest(name = "{0}: {1} lb/ft2")
    @CsvSource(textBlock = """
            BEDROCK,          12000
            SEDIMENTARY_ROCK, 4000
            GRAVEL,           3000
            SAND,             2000
            CLAY,             1500
            UNKNOWN,          1500
            PEAT,             0
            ORGANIC_CLAY,     0
            UNCOMPACTED_FILL, 0
            """)
    void ground_as_in_ibc_2012_table_1806_2_and_24_cfr_3285_202(Soil soil, double poundsPerSquareFoot) {
        assertThat(soil.poundsPerSquareFoot()).isEqualTo(poundsPerSquareFoot);
        assertThat(soil.presumptive()).isCloseTo(poundsPerSquareFoot * 47.88025898, within(1e-3));
    }

    @Test
    void force_of_the_wind() {
        assertThat(TankWind.force(40, 0.8, 2)).isCloseTo(0.6125 * 1600 * 1.6, within(1e-9));
        assertThat(TankWind.force(0, 0.8, 2)).isZero();
    }

    @Test
    void safety_against_sliding_and_tipping() {
        assertThat(TankWind.slidingSafety(200, 0.3, 1000)).isCloseTo(0.588399, within(1e-9));
        assertThat(TankWind.tippingSafety(200, 2, 1000, 0.5)).isCloseTo(3.92266, within(1e-9));
    }

    @Test
    void the_mass_that_holds_gives_the_safety_asked() {
        double sliding = TankWind.massAgainstSliding(1000, 0.3, 1.5);
        assertThat(TankWind.slidingSafety(sliding, 0.3, 1000)).isCloseTo(1.5, within(1e-12));
        double tipping = TankWind.massAgainstTipping(1000, 2, 0.5, 1.5);
        assertThat(TankWind.tippingSafety(tipping, 2, 1000, 0.5)).isCloseTo(1.5, within(1e-12));
        assertThat(TankWind.massAgainstSliding(0, 0.3, 1.5)).isZero();
        assertThat(TankWind.massAgainstTipping(0, 2, 0.5, 1.5)).isZero();
    }

    @Test
    void shapes_have_the_factor_of_the_table_of_tanks() {
        assertThat(TankShape.BOX.drag()).isEqualTo(1.4);
        assertThat(TankShape.UPRIGHT_CYLINDER.drag()).isEqualTo(0.8);
        assertThat(TankShape.LYING_CYLINDER.drag()).isEqualTo(0.8);
        assertThat(TankShape.CONE_BOTTOM.drag()).isEqualTo(0.8);
        assertThat(TankShape.NOMINAL.drag()).isEqualTo(0.8);
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @ValueSource(doubles = {0, -1, Double.NaN})
        void what_must_be_over_0(double value) {
            String end = " [" + value + "] must be over 0";
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Bearing.pressure(1, value))
                    .withMessage("area" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Bearing.padArea(1, value))
                    .withMessage("allowed" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Bearing.padSide(1, 1, value))
                    .withMessage("step" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankWind.force(1, value, 1))
                    .withMessage("drag" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankWind.force(1, 1, value))
                    .withMessage("area" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankWind.slidingSafety(1, value, 1))
                    .withMessage("friction" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankWind.slidingSafety(1, 1, value))
                    .withMessage("force" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankWind.tippingSafety(1, value, 1, 1))
                    .withMessage("width" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankWind.tippingSafety(1, 1, value, 1))
                    .withMessage("force" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankWind.tippingSafety(1, 1, 1, value))
                    .withMessage("arm" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankWind.massAgainstSliding(1, value, 1))
                    .withMessage("friction" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankWind.massAgainstSliding(1, 1, value))
                    .withMessage("safety" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankWind.massAgainstTipping(1, value, 1, 1))
                    .withMessage("width" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankWind.massAgainstTipping(1, 1, value, 1))
                    .withMessage("arm" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankWind.massAgainstTipping(1, 1, 1, value))
                    .withMessage("safety" + end);
        }

        @ParameterizedTest
        @ValueSource(doubles = {-1, Double.NaN})
        void what_must_not_be_negative(double value) {
            String end = " [" + value + "] must be 0 or more";
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Bearing.pressure(value, 1))
                    .withMessage("kilograms" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Bearing.padArea(value, 1))
                    .withMessage("kilograms" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankWind.force(value, 1, 1))
                    .withMessage("speed" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankWind.slidingSafety(value, 1, 1))
                    .withMessage("kilograms" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankWind.tippingSafety(value, 1, 1, 1))
                    .withMessage("kilograms" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankWind.massAgainstSliding(value, 1, 1))
                    .withMessage("force" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankWind.massAgainstTipping(value, 1, 1, 1))
                    .withMessage("force" + end);
        }
    }
}
