package org.firmset.trade.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WaterTest {
    @ParameterizedTest(name = "{0} °C: {1} kg/m3")
    @CsvSource(textBlock = """
             0,        999.84283
             3.983035, 999.97495
            10,        999.70270
            20,        998.20675
            40,        992.21521
            """)
    void density_by_the_formula_of_tanaka_2001(double celsius, double density) {
        assertThat(Water.density(celsius)).isCloseTo(density, within(1e-5));
    }

    @ParameterizedTest(name = "{0} °C: {1} mPa s")
    @CsvSource(textBlock = """
             0, 1.79178
            20, 1.00157
            40, 0.65273
            """)
    void viscosity_by_the_formula_of_iapws_sr6_08(double celsius, double viscosity) {
        assertThat(Water.viscosity(celsius) * 1000).isCloseTo(viscosity, within(1e-5));
    }

    @Test
    void kinematic_viscosity_is_viscosity_over_density() {
        assertThat(Water.kinematicViscosity(20) * 1e6).isCloseTo(1.003367, within(1e-6));
    }

    @Test
    void head_and_pressure_undo_each_other() {
        assertThat(Water.pressure(10, 1000)).isCloseTo(98_066.5, within(1e-6));
        assertThat(Water.head(98_066.5, 1000)).isCloseTo(10, within(1e-12));
        assertThat(Water.head(Water.pressure(-3.5, 998.2), 998.2)).isCloseTo(-3.5, within(1e-12));
    }

    @Test
    void compressibility_is_one_over_the_bulk_modulus() {
        assertThat(Water.COMPRESSIBILITY * 2.18e9).isCloseTo(1, within(1e-12));
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @ValueSource(doubles = {-0.001, 40.001, Double.NaN})
        void a_temperature_beyond_the_formulas(double celsius) {
            String message = "celsius [" + celsius + "] must be from 0.0 to 40.0";
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Water.density(celsius))
                    .withMessage(message);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Water.viscosity(celsius))
                    .withMessage(message);
        }

        @ParameterizedTest
        @ValueSource(doubles = {0, -1, Double.NaN})
        void a_density_that_is_not_over_zero(double density) {
            String message = "density [" + density + "] must be over 0";
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Water.pressure(1, density))
                    .withMessage(message);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Water.head(1, density))
                    .withMessage(message);
        }

        @Test
        void a_head_or_pressure_that_is_no_number() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Water.pressure(Double.NaN, 1000))
                    .withMessageStartingWith("head [NaN] must be from");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Water.head(Double.NaN, 1000))
                    .withMessageStartingWith("pascals [NaN] must be from");
        }
    }
}
