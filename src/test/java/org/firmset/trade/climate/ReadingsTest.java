package org.firmset.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.firmset.measure.UnitsFault;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingsTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 5, 1);

    @Test
    void readings_stand_on_their_dates_and_the_usual_on_all_others() {
        DailyTemperature daily =
                Readings.parse("2027-05-01: 12 degC; 2027-05-02: 54 degF").over(date -> 3);
        assertThat(daily.celsiusOn(FIRST.minusDays(1))).isEqualTo(3);
        assertThat(daily.celsiusOn(FIRST)).isEqualTo(12);
        assertThat(daily.celsiusOn(FIRST.plusDays(1))).isCloseTo(12.2222, within(0.0001));
        assertThat(daily.celsiusOn(FIRST.plusDays(2))).isEqualTo(3);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            2027-05-01:12C                          | 2027-05-01: 12 degC
            ' 2027-05-01 : -3.50 °F ; '             | 2027-05-01: -3.5 degF
            2027-05-02: 1 degC; 2027-05-01: 2 degC  | 2027-05-01: 2 degC; 2027-05-02: 1 degC
            2027-05-01: 12.345 degC                 | 2027-05-01: 12.34 degC
            1990-01-01: 60 degC; 2199-12-31: -60 degC | 1990-01-01: 60 degC; 2199-12-31: -60 degC
            """)
    void are_written_as_they_are_read_again(String text, String written) {
        assertThat(Readings.parse(text)).hasToString(written).isEqualTo(Readings.parse(written));
    }

    @Test
    void line_breaks_part_them_too() {
        assertThat(Readings.parse("2027-05-01: 12 degC\n\n2027-05-02: 13 degC").days())
                .hasSize(2);
    }

    @Test
    void any_readings_come_back_from_their_text() {
        long seed = Long.getLong("firmset.seed", 2027);
        SplittableRandom random = new SplittableRandom(seed);
        for (int run = 0; run < 200; run++) {
            List<Reading> days = IntStream.range(0, 1 + random.nextInt(80))
                    .mapToObj(day -> new Reading(
                            FIRST.plusDays(day),
                            BigDecimal.valueOf(random.nextInt(-6000, 6001), 2),
                            List.of(Scale.values()).get(random.nextInt(2))))
                    .toList();
            Readings readings = new Readings(days);
            assertThat(Readings.parse(readings.toString()))
                    .as("seed %d, run %d: %s", seed, run, readings)
                    .isEqualTo(readings);
        }
    }

    @Test
    void the_longest_ones_still_fit_a_text() {
        assertThat(Readings.parse(many(80)).toString()).hasSize(1998);
        assertThat(Readings.parse(Readings.parse(many(80)).toString()).days()).hasSize(80);
    }

    private static String many(int days) {
        return IntStream.range(0, days)
                .mapToObj(day -> FIRST.plusDays(day) + ":-12.25C")
                .collect(Collectors.joining(";"));
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @ValueSource(
                strings = {
                    "12 degC",
                    "2027-05-01 12 degC",
                    "2027-05-01: 12",
                    "2027-05-01: 12 K",
                    "2027-05-01: 12 degC, 2027-05-02: 12 degC",
                    "1.5.2027: 12 degC"
                })
        void what_is_no_date_with_a_temperature(String text) {
            assertRefused(text, "'" + text + "' is not a date with a temperature");
        }

        @Test
        void a_day_the_calendar_does_not_have() {
            assertRefused(
                    "2027-05-01: 12 degC; 2027-02-30: 12 degC",
                    "'2027-02-30: 12 degC' is not a date of the calendar with a temperature");
        }

        @ParameterizedTest
        @ValueSource(strings = {"1989-12-31: 12 degC", "2200-01-01: 12 degC", "2027-05-01: 60.01 degC"})
        void what_lies_beyond_the_limits(String text) {
            assertRefused(text, "'" + text + "' is not from 1990 to 2199 and from -60 to 60 °C");
        }

        @Test
        void a_date_that_comes_twice() {
            assertRefused(
                    "2027-05-01: 12 degC; 2027-05-01: 13 degC",
                    "'2027-05-01: 13 degC' is not the only reading of its date");
        }

        @ParameterizedTest
        @ValueSource(strings = {"", ";", " \n "})
        void none_at_all(String text) {
            assertRefused(text, "'" + text + "' is not 1 to 80 readings");
        }

        @Test
        void too_many() {
            assertRefused(
                    many(81),
                    "'2027-05-01:-12.25C;2027-05-02:-12.25C;2027-05-03:-12.25C;202...' is not 1 to 80 readings");
        }

        @Test
        void a_text_that_is_too_long() {
            String text = "2027-05-01: 12 degC" + " ".repeat(1982);
            assertRefused(
                    text,
                    "'2027-05-01: 12 degC" + " ".repeat(41) + "...' is not short enough: at most 2,000 characters");
            assertThat(Readings.parse(text.substring(0, 2000)).days()).hasSize(1);
        }

        private void assertRefused(String text, String message) {
            assertThatThrownBy(() -> Readings.parse(text))
                    .isInstanceOf(UnitsFault.class)
                    .hasMessage(message + "; write it such as '2027-05-01: 12 degC; 2027-05-02: 54 degF'");
        }

        @Test
        void a_list_that_text_could_not_hold() {
            Reading reading = new Reading(FIRST, BigDecimal.ONE, Scale.CELSIUS);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new Readings(List.of()))
                    .withMessage("days [0] of readings must be 1 to 80");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new Readings(List.of(reading, reading)))
                    .withMessage(
                            "days [2027-05-01: 1 degC, 2027-05-01: 1 degC] of readings must each be of another date");
        }

        @Test
        void a_reading_beyond_the_limits() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new Reading(LocalDate.of(1989, 12, 31), BigDecimal.ONE, Scale.CELSIUS))
                    .withMessage("date [1989-12-31] of a reading must be from 1990 to 2199");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new Reading(FIRST, BigDecimal.valueOf(-61), Scale.CELSIUS))
                    .withMessage("number [-61] of a reading must be from -60 to 60 °C");
        }
    }
}
