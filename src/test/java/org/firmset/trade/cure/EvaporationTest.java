package org.firmset.trade.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EvaporationTest {
    @Test
    void the_two_forms_agree_within_a_tenth() {
        double si = Evaporation.rate(30, 25, 0.4, 16.09344);
        double us = Evaporation.usRate(86, 77, 0.4, 10);
        assertThat(us * 4.882428).isCloseTo(si, within(si / 10));
    }

    @Test
    void the_wind_at_a_limit_undoes_the_rate() {
        double wind = Evaporation.windKmhAt(1, 30, 25, 0.4);
        assertThat(Evaporation.rate(30, 25, 0.4, wind)).isCloseTo(1, within(1e-12));
        double mph = Evaporation.windMphAt(0.2, 85, 90, 0.4);
        assertThat(Evaporation.usRate(85, 90, 0.4, mph)).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void still_air_may_be_enough() {
        assertThat(Evaporation.windKmhAt(0.05, 35, 25, 0.2)).isZero();
        assertThat(Evaporation.windMphAt(0.01, 95, 77, 0.2)).isZero();
    }

    @Test
    void no_wind_dries_what_condenses() {
        assertThat(Evaporation.rate(10, 30, 1, 10)).isNegative();
        assertThat(Evaporation.windKmhAt(1, 10, 30, 1)).isInfinite();
        assertThat(Evaporation.windKmhAt(1, 20, 20, 1)).isInfinite();
        assertThat(Evaporation.windMphAt(0.2, 50, 86, 1)).isInfinite();
        assertThat(Evaporation.windMphAt(0.2, 68, 68, 1)).isInfinite();
    }

    @ParameterizedTest(name = "concrete {0}, air {1}, wind {2}: {3}")
    @CsvSource(textBlock = """
             4,  4, 40,   true
            38, 38,  0,   true
             3.9, 20, 10, false
            38.1, 20, 10, false
            20,  3.9, 10, false
            20, 38.1, 10, false
            20, 20, 40.1, false
            """)
    void what_the_chart_was_made_for(double concrete, double air, double wind, boolean inside) {
        assertThat(Evaporation.inChart(concrete, air, wind)).isEqualTo(inside);
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @ValueSource(doubles = {-17.1, 60.1, Double.NaN})
        void temperatures_beyond_use(double celsius) {
            assertRefused(
                    () -> Evaporation.rate(celsius, 20, 0.5, 10),
                    "concreteCelsius [" + celsius + "] must be from -17.0 to 60.0");
            assertRefused(
                    () -> Evaporation.rate(20, celsius, 0.5, 10),
                    "airCelsius [" + celsius + "] must be from -17.0 to 60.0");
        }

        @ParameterizedTest
        @ValueSource(doubles = {-0.1, 140.1, Double.NaN})
        void temperatures_beyond_use_in_fahrenheit(double fahrenheit) {
            assertRefused(
                    () -> Evaporation.usRate(fahrenheit, 70, 0.5, 10),
                    "concreteFahrenheit [" + fahrenheit + "] must be from 0.0 to 140.0");
            assertRefused(
                    () -> Evaporation.usRate(70, fahrenheit, 0.5, 10),
                    "airFahrenheit [" + fahrenheit + "] must be from 0.0 to 140.0");
        }

        @ParameterizedTest
        @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
        void humidity_that_is_none(double share) {
            assertRefused(
                    () -> Evaporation.rate(20, 20, share, 10), "humidity [" + share + "] must be from 0.0 to 1.0");
            assertRefused(
                    () -> Evaporation.usRate(70, 70, share, 10), "humidity [" + share + "] must be from 0.0 to 1.0");
        }

        @ParameterizedTest
        @ValueSource(doubles = {-0.1, 200.1, Double.NaN})
        void wind_that_is_none(double wind) {
            assertRefused(
                    () -> Evaporation.rate(20, 20, 0.5, wind), "windKmh [" + wind + "] must be from 0.0 to 200.0");
            assertRefused(
                    () -> Evaporation.usRate(70, 70, 0.5, wind), "windMph [" + wind + "] must be from 0.0 to 200.0");
        }

        @ParameterizedTest
        @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
        void a_limit_that_is_none(double limit) {
            assertRefused(() -> Evaporation.windKmhAt(limit, 20, 20, 0.5), "limit [" + limit + "] must be over 0");
            assertRefused(() -> Evaporation.windMphAt(limit, 70, 70, 0.5), "limit [" + limit + "] must be over 0");
        }

        private void assertRefused(ThrowingCallable call, String message) {
            assertThatIllegalArgumentException().isThrownBy(call).withMessage(message);
        }
    }
}
