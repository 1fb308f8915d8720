package org.firmset.trade.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.firmset.measure.Dimension;
import org.firmset.measure.Units;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ColdWeatherTest {
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            11.999 in, 55 degF
            12 in,     50 degF
            36 in,     50 degF
            36.001 in, 45 degF
            72 in,     45 degF
            72.001 in, 40 degF
            """)
    void thinner_concrete_is_placed_warmer(String dimension, String least) {
        assertThat(ColdWeather.leastConcreteCelsius(
                        Units.parse(Dimension.LENGTH, dimension).amount()))
                .isEqualTo(Units.parse(Dimension.TEMPERATURE, least).amount());
    }

    @Test
    void hours_until_concrete_survives_frost() {
        // 3.5 of 20 MPa: exp(0.25 (1 - sqrt(28 / t))) = 0.175 gives 0.441 d at 20 °C
        assertThat(ColdWeather.hoursToSurviveFreezing(20e6, Cement.NORMAL, 10)).isCloseTo(17.1619, within(0.0001));
        assertThat(ColdWeather.hoursToSurviveFreezing(20e6, Cement.NORMAL, -1)).isInfinite();
        assertThat(ColdWeather.hoursToSurviveFreezing(3.5e6, Cement.NORMAL, 20))
                .isCloseTo(28 * 24 / 0.99812, within(0.01));
    }

    @ParameterizedTest(name = "{0} in wind of {1}: {2}")
    @CsvSource(textBlock = """
            100 degF,   0 mph,   false
            100.1 degF, 0 mph,   true
            90 degF,    20 mph,  false
            90.1 degF,  8 mph,   false
            90.1 degF,  8.1 mph, true
            """)
    void heat_for_masonry(String air, String wind, boolean hot) {
        assertThat(HotWeather.isHotForMasonry(
                        Units.parse(Dimension.TEMPERATURE, air).amount(),
                        Units.parse(Dimension.SPEED, wind).amount()))
                .isEqualTo(hot);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            40 degF,   NONE
            39.9 degF, COOL
            32.1 degF, COOL
            32 degF,   COLD
            25.1 degF, COLD
            25 degF,   BITTER
            20.1 degF, BITTER
            20 degF,   SEVERE
            -40 degF,  SEVERE
            """)
    void bands_of_cold_for_masonry(String air, MasonryCold band) {
        assertThat(MasonryCold.of(Units.parse(Dimension.TEMPERATURE, air).amount()))
                .isEqualTo(band);
    }

    @ParameterizedTest(name = "{0}: grout {1}, masonry {2}, enclosure {3}")
    @CsvSource(textBlock = """
            NONE,   false, false, false
            COOL,   false, false, false
            COLD,   true,  false, false
            BITTER, true,  true,  false
            SEVERE, true,  true,  true
            """)
    void what_a_band_asks_for(MasonryCold band, boolean grout, boolean masonry, boolean enclosure) {
        assertThat(band.asksForWarmGrout()).isEqualTo(grout);
        assertThat(band.asksForWarmMasonry()).isEqualTo(masonry);
        assertThat(band.asksForEnclosure()).isEqualTo(enclosure);
    }

    @ParameterizedTest(name = "{0} in wind of {1}: {2}")
    @CsvSource(textBlock = """
            BITTER, 15 mph,   false
            BITTER, 15.1 mph, true
            COLD,   40 mph,   false
            SEVERE, 40 mph,   false
            """)
    void windbreaks(MasonryCold band, String wind, boolean asked) {
        assertThat(band.asksForWindbreak(Units.parse(Dimension.SPEED, wind).amount()))
                .isEqualTo(asked);
    }

    @ParameterizedTest(name = "{0}: {1}; {2}; {3}")
    @CsvSource(delimiter = '|', textBlock = """
            NONE   | none: 4.4 °C (40 °F) or more  | no measures           | no measures
            COOL   | 0 to 4.4 °C (32 to 40 °F)     | lay no icy units      | cover the work
            COLD   | -3.9 to 0 °C (25 to 32 °F)    | warm sand and water   | cover the work
            BITTER | -6.7 to -3.9 °C (20 to 25 °F) | besides, warm masonry | wrap the work
            SEVERE | -6.7 °C (20 °F) or less       | besides, work only    | keep the work above 0 °C
            """)
    void words_of_a_band(MasonryCold band, String words, String during, String after) {
        assertThat(band.words()).isEqualTo(words);
        assertThat(band.duringWork()).startsWith(during);
        assertThat(band.afterwards()).startsWith(after);
    }

    @Test
    void a_cold_spell_begins_with_its_fourth_day_and_ends_with_half_a_mild_one() {
        assertThat(ColdWeather.isSpell(3)).isFalse();
        assertThat(ColdWeather.isSpell(4)).isTrue();
        assertThat(ColdWeather.endsSpell(12)).isFalse();
        assertThat(ColdWeather.endsSpell(12.1)).isTrue();
    }

    @Test
    void limits_in_us_units_are_what_readers_of_quantities_get() {
        assertThat(Imperial.fahrenheit(50)).isEqualTo(10);
        assertThat(Imperial.inches(12)).isEqualTo(0.3048);
        assertThat(Imperial.milesPerHour(10)).isEqualTo(4.4704);
        assertThat(MasonryCold.COOL.fromCelsius()).isZero();
        assertThat(MasonryCold.SEVERE.fromCelsius()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(MasonryCold.NONE.fromCelsius()).isEqualTo(ColdWeather.COLD_CELSIUS);
    }

    @Test
    void heat_for_concrete_needs_both_hot_air_and_evaporation() {
        double eighty = Units.parse(Dimension.TEMPERATURE, "80 degF").amount();
        assertThat(HotWeather.isHot(eighty, 1.001)).isTrue();
        assertThat(HotWeather.isHot(eighty, 1)).isFalse();
        assertThat(HotWeather.isHot(eighty - 0.1, 1.001)).isFalse();
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
        void a_dimension_that_is_none(double metres) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> ColdWeather.leastConcreteCelsius(metres))
                    .withMessage("leastDimensionMetres [" + metres + "] must be over 0");
        }

        @ParameterizedTest
        @ValueSource(doubles = {-0.1, 24.1, Double.NaN})
        void hours_that_no_day_has(double hours) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> ColdWeather.endsSpell(hours))
                    .withMessage("hoursOverMild [" + hours + "] must be from 0.0 to 24.0");
        }

        @ParameterizedTest
        @ValueSource(doubles = {3_499_999, 200_000_001, Double.NaN})
        void a_mix_that_never_survives_frost(double pascals) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> ColdWeather.hoursToSurviveFreezing(pascals, Cement.NORMAL, 20))
                    .withMessage("strengthPascals [" + pascals + "] must be from 3500000.0 to 2.0E8");
        }

        @ParameterizedTest
        @ValueSource(doubles = {-100.1, 100.1, Double.NaN})
        void air_that_is_none(double celsius) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> MasonryCold.of(celsius))
                    .withMessage("celsius [" + celsius + "] must be from -100.0 to 100.0");
        }
    }
}
