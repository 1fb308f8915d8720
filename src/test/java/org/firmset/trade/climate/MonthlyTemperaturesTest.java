package org.firmset.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.firmset.measure.Temperature;
import org.firmset.measure.UnitsFault;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MonthlyTemperaturesTest {
    private static final String TWELVE = "2.8 5.2 9.1 13.4 18.6 22.8 29.2 28.8 23.9 15.8 7.2 2.6";

    @Test
    void twelve_numbers_and_a_unit() {
        assertThat(MonthlyTemperatures.parse(TWELVE + " degC").celsius().values())
                .containsExactly(2.8, 5.2, 9.1, 13.4, 18.6, 22.8, 29.2, 28.8, 23.9, 15.8, 7.2, 2.6);
    }

    @Test
    void one_number_is_meant_for_all_months() {
        MonthlyTemperatures all = MonthlyTemperatures.parse("68 degF");
        assertThat(all.celsius().values()).isEqualTo(Collections.nCopies(12, 20.0));
        assertThat(all.constant()).isTrue();
        assertThat(MonthlyTemperatures.parse(TWELVE + " degC").constant()).isFalse();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            ' 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, -12 °C ' | 1 2 3 4 5 6 7 8 9 10 11 -12 degC
            '1 2 3 4 5 6 7 8 9 10 11 12.50F'              | 1 2 3 4 5 6 7 8 9 10 11 12.5 degF
            20 C                                          | 20 degC
            5 5 5 5 5 5 5 5 5 5 5 5 degF                  | 5 degF
            """)
    void is_written_as_it_is_read_again(String text, String written) {
        MonthlyTemperatures read = MonthlyTemperatures.parse(text);
        assertThat(read).hasToString(written).isEqualTo(MonthlyTemperatures.parse(written));
    }

    @Test
    void temperatures_make_one() {
        List<Temperature> months = IntStream.rangeClosed(1, 12)
                .mapToObj(m -> Temperature.ofCelsius(m))
                .toList();
        assertThat(MonthlyTemperatures.of(months)).hasToString("1 2 3 4 5 6 7 8 9 10 11 12 degC");
    }

    @ParameterizedTest
    @ValueSource(strings = {"60 degC", "-60 degC", "140 degF", "-76 degF"})
    void the_extremes_are_allowed(String text) {
        assertThat(MonthlyTemperatures.parse(text)).hasToString(text);
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @ValueSource(
                strings = {
                    "",
                    "20",
                    "degC",
                    "20 K",
                    "warm degC",
                    "1000 degC",
                    "1,2 degC",
                    "1 2 3 4 5 6 7 8 9 10 11 12 13 degC",
                    "20 degC degC"
                })
        void what_is_no_list(String text) {
            assertThatThrownBy(() -> MonthlyTemperatures.parse(text))
                    .isInstanceOf(UnitsFault.class)
                    .hasMessage(
                            "'" + text + "' is not twelve temperatures of months with their unit; write it such as '"
                                    + TWELVE + " degC'");
        }

        @Test
        void eleven_months() {
            assertThatThrownBy(() -> MonthlyTemperatures.parse("1 2 3 4 5 6 7 8 9 10 11 degC"))
                    .isInstanceOf(UnitsFault.class)
                    .hasMessageStartingWith(
                            "'1 2 3 4 5 6 7 8 9 10 11 degC' is not twelve temperatures of months but 11;");
        }

        @ParameterizedTest
        @ValueSource(strings = {"60.1 degC", "-60.1 degC", "140.2 degF"})
        void what_is_not_on_earth(String text) {
            assertThatThrownBy(() -> MonthlyTemperatures.parse(text))
                    .isInstanceOf(UnitsFault.class)
                    .hasMessageStartingWith("'" + text + "' is not all from -60 to 60 °C; write it such as");
        }

        @Test
        void a_text_beyond_all_length_and_shows_its_beginning() {
            String text = "20" + " ".repeat(1995) + "degC";
            assertThatThrownBy(() -> MonthlyTemperatures.parse(text))
                    .isInstanceOf(UnitsFault.class)
                    .hasMessageStartingWith("'20" + " ".repeat(58) + "...' is not");
            assertThat(MonthlyTemperatures.parse(text.replaceFirst(" ", ""))).hasToString("20 degC");
        }

        @Test
        void numbers_that_are_not_twelve_or_beyond_the_limits() {
            List<BigDecimal> two = List.of(BigDecimal.ONE, BigDecimal.TWO);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new MonthlyTemperatures(two, Scale.CELSIUS))
                    .withMessage("numbers [1, 2] must be twelve from -60 to 60 °C");
            assertThatIllegalArgumentException()
                    .isThrownBy(() ->
                            new MonthlyTemperatures(Collections.nCopies(12, BigDecimal.valueOf(61)), Scale.CELSIUS))
                    .withMessageEndingWith("must be twelve from -60 to 60 °C");
        }
    }
}
