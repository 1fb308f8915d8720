package org.firmset.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HoursTest {
    @ParameterizedTest(name = "{0}: {1} quarters, {2}")
    @CsvSource(textBlock = """
            6.25 h,      25, 6.25 h
            6 h 15 min,  25, 6.25 h
            6h15min,     25, 6.25 h
            ' 6.5 h ',   26, 6.5 h
            90 min,       6, 1.5 h
            0 h,          0, 0 h
            0 min,        0, 0 h
            100 h,      400, 100 h
            """)
    void reads_and_writes_quarter_hours(String text, int quarters, String written) {
        assertThat(Hours.parse(text).quarters()).isEqualTo(quarters);
        assertThat(Hours.parse(text)).hasToString(written);
    }

    @Test
    void what_is_written_reads_back_the_same() {
        for (int quarters = 0; quarters <= 8000; quarters++) {
            assertThat(Hours.parse(new Hours(quarters).toString()).quarters()).isEqualTo(quarters);
        }
    }

    @Test
    void none_is_none() {
        assertThat(Hours.NONE.isNone()).isTrue();
        assertThat(new Hours(1).isNone()).isFalse();
        assertThat(Hours.ofWhole(2)).isEqualTo(new Hours(8));
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @ValueSource(strings = {"", " ", "6", "h", "min", "-1 h", "6.5", "6,5 h", "15 min 6 h", "1e3 h", "six h"})
        void what_is_no_time(String text) {
            assertThatExceptionOfType(UnitsFault.class)
                    .isThrownBy(() -> Hours.parse(text))
                    .withMessage("'" + text + "' is not a time; write hours such as '6.5 h' or '6 h 30 min'");
        }

        @ParameterizedTest
        @ValueSource(strings = {"0.1 h", "20 min", "1 min", "6.33 h"})
        void what_is_no_quarter(String text) {
            assertThatExceptionOfType(UnitsFault.class)
                    .isThrownBy(() -> Hours.parse(text))
                    .withMessage(
                            "'" + text + "' is not a whole number of quarter-hours; write '6.25 h' or '6 h 15 min'");
        }

        @Test
        void a_text_without_end_is_shortened() {
            assertThatExceptionOfType(UnitsFault.class)
                    .isThrownBy(() -> Hours.parse("9".repeat(100_000)))
                    .satisfies(e -> assertThat(e.getMessage()).hasSizeLessThan(150));
        }

        @Test
        void less_than_none() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new Hours(-1))
                    .withMessage("quarters [-1] of hours must not be negative");
        }
    }
}
