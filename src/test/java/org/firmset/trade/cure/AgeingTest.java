package org.firmset.trade.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class AgeingTest {
    @ParameterizedTest(name = "{0}, {1} °C: {2}")
    @DisplayName("how a day counts; EN 1992-1-1 B.10 and ASTM C1074 partly from memory, numbers by arithmetic")
    @CsvSource(textBlock = """
            EN_1992,              20, 0.9981
            EN_1992,               0, 0.3671
            EQUIVALENT_AGE,       23, 1
            EQUIVALENT_AGE,       20, 0.8411
            EQUIVALENT_AGE,        0, 0.2410
            NURSE_SAUL_ZERO,      20, 1
            NURSE_SAUL_ZERO,       5, 0.25
            NURSE_SAUL_ZERO,      50, 2.5
            NURSE_SAUL_ZERO,       0, 0
            NURSE_SAUL_MINUS_TEN, 20, 1
            NURSE_SAUL_MINUS_TEN,  5, 0.5
            NURSE_SAUL_MINUS_TEN, -4, 0.2
            NURSE_SAUL_MINUS_TEN, -10, 0
            NURSE_SAUL_MINUS_TEN, -11, 0
            """)
    void how_a_day_counts(Ageing ageing, double celsius, double factor) {
        assertThat(ageing.factor(celsius)).isCloseTo(factor, within(0.0001));
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "NURSE_SAUL_MINUS_TEN")
    void frost_counts_nothing(Ageing ageing) {
        assertThat(ageing.factor(-0.01)).isZero();
        assertThat(ageing.factor(-50)).isZero();
    }

    @ParameterizedTest
    @EnumSource
    void what_is_hotter_than_eighty_degrees_counts_like_that(Ageing ageing) {
        assertThat(ageing.factor(81)).isEqualTo(ageing.factor(80)).isGreaterThan(ageing.factor(79));
    }

    @ParameterizedTest
    @EnumSource
    void a_warmer_day_never_counts_for_less(Ageing ageing) {
        for (int tenths = -300; tenths < 900; tenths++) {
            assertThat(ageing.factor((tenths + 1) / 10.0))
                    .as("%s at %d tenths of a degree", ageing, tenths + 1)
                    .isGreaterThanOrEqualTo(ageing.factor(tenths / 10.0));
        }
    }

    @Test
    void a_record_counts_stretch_by_stretch() {
        List<TemperatureStep> record = List.of(new TemperatureStep(12, 20), new TemperatureStep(6, 10));
        assertThat(Ageing.NURSE_SAUL_ZERO.equivalentHours(record)).isEqualTo(15);
        assertThat(Ageing.EN_1992.equivalentHours(record))
                .isEqualTo(12 * Ageing.EN_1992.factor(20) + 6 * Ageing.EN_1992.factor(10));
        assertThat(Ageing.EN_1992.equivalentHours(List.of())).isZero();
    }

    @Test
    void degree_hours_are_not_taken_off_for_time_under_the_datum() {
        List<TemperatureStep> record = List.of(new TemperatureStep(10, -5), new TemperatureStep(4, 30));
        assertThat(Ageing.degreeHours(record, 0)).isEqualTo(120);
        assertThat(Ageing.degreeHours(record, -10)).isEqualTo(50 + 160);
    }

    @ParameterizedTest(name = "{0}: {1} °C, datum {2} °C")
    @CsvSource(textBlock = """
            EN_1992,              20,   0
            EQUIVALENT_AGE,       23,   0
            NURSE_SAUL_ZERO,      20,   0
            NURSE_SAUL_MINUS_TEN, 20, -10
            """)
    void reference_and_datum(Ageing ageing, double reference, double datum) {
        assertThat(ageing.referenceCelsius()).isEqualTo(reference);
        assertThat(ageing.datumCelsius()).isEqualTo(datum);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            EN_1992              | EN 1992-1-1 B.10                 | f = exp(13.65 - 4000 / (273 + T))
            EQUIVALENT_AGE       | equivalent age, 5000 K and 23 °C | f = exp(-5000 (1 / (273 + T) - 1 / 296))
            NURSE_SAUL_ZERO      | Nurse-Saul, datum 0 °C           | f = T / 20
            NURSE_SAUL_MINUS_TEN | Nurse-Saul, datum -10 °C         | f = (T + 10) / 30
            """)
    void words_and_formulas(Ageing ageing, String words, String formula) {
        assertThat(ageing.words()).isEqualTo(words);
        assertThat(ageing.formula()).isEqualTo(formula);
    }

    @Test
    void sources() {
        assertThat(Ageing.EN_1992.source()).isSameAs(Sources.EN_AGE);
        assertThat(Ageing.EQUIVALENT_AGE.source()).isSameAs(Sources.ASTM_AGE);
        assertThat(Ageing.NURSE_SAUL_ZERO.source()).isSameAs(Sources.ASTM_FACTOR);
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @EnumSource
        void a_temperature_that_is_none(Ageing ageing) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> ageing.factor(Double.NaN))
                    .withMessage("celsius [NaN] must be a temperature");
        }

        @ParameterizedTest
        @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
        void hours_that_are_none(double hours) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new TemperatureStep(hours, 20))
                    .withMessageStartingWith("hours [" + hours + "] must be from 0.0 to");
        }

        @ParameterizedTest
        @ValueSource(doubles = {-150.1, 150.1, Double.NaN})
        void what_only_a_broken_probe_reads(double celsius) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new TemperatureStep(0, celsius))
                    .withMessage("celsius [" + celsius + "] must be from -150.0 to 150.0");
        }

        @ParameterizedTest
        @ValueSource(doubles = {-20.1, 20.1, Double.NaN})
        void a_datum_that_is_none(double datum) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Ageing.degreeHours(List.of(), datum))
                    .withMessage("datumCelsius [" + datum + "] must be from -20.0 to 20.0");
        }
    }
}
