package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.firmset.measure.Length;
import org.firmset.measure.UnitsFault;
import org.firmset.trade.takeoff.Pieces.Piece;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PiecesTest {
    private static Piece piece(int count, double metres) {
        return new Piece(count, Length.ofMetres(metres));
    }

    private static String fault(String text) {
        return String.valueOf(assertThatExceptionOfType(UnitsFault.class)
                .isThrownBy(() -> Pieces.parse(text))
                .actual()
                .getMessage());
    }

    private static String times(int lengths, String piece) {
        return IntStream.range(0, lengths).mapToObj(i -> piece).collect(Collectors.joining(","));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"8 x 2 m, 0.5 m", "8x2m,0.5m", "8 X 2 m; 1 x 0.5 m", "8 × 2 m , 500 mm", "  8 x 2 m,0.5 m  "})
    void numbers_and_lengths(String text) {
        assertThat(Pieces.parse(text).all()).containsExactly(piece(8, 2), piece(1, 0.5));
    }

    @Test
    void feet_inches_and_fractions() {
        assertThat(Pieces.parse("48 x 92 5/8 in, 9 ft 4 3/4 in").all())
                .containsExactly(piece(48, 92.625 * 0.0254), piece(1, 112.75 * 0.0254));
    }

    @Test
    void number_and_length_of_all() {
        Pieces pieces = Pieces.parse("8 x 2 m, 2 x 0.5 m");
        assertThat(pieces.count()).isEqualTo(10);
        assertThat(pieces.total()).isCloseTo(17, within(1e-12));
        assertThat(Pieces.NONE.count()).isZero();
        assertThat(Pieces.NONE.total()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"none", " None "})
    void none_is_no_piece(String text) {
        assertThat(Pieces.parse(text)).isEqualTo(Pieces.NONE);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            none                  | none
            8 x 2 m, 2 x 19.25 in | 8 x 2 m, 2 x 0.48895 m
            1/3 in                | 1 x 0.008466667 m
            """)
    void what_is_written_reads_back(String text, String written) {
        Pieces pieces = Pieces.parse(text);
        assertThat(pieces).hasToString(written);
        assertThat(Pieces.parse(pieces.toString())).isEqualTo(pieces);
    }

    @Test
    void a_list_that_is_made_keeps_what_it_was_given() {
        assertThat(new Pieces(List.of(piece(2, 1)))).isEqualTo(Pieces.parse("2 x 1 m"));
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @ValueSource(strings = {"", " ", "2 m,", ",2 m", "2 m,,3 m"})
        void nothing_between_commas(String text) {
            assertThat(fault(text))
                    .isEqualTo("'" + text
                            + "' is no list of lengths; write numbers and lengths such as '8 x 112 in, 10 x 88 in'");
        }

        @ParameterizedTest
        @ValueSource(strings = {"0 x 2 m", "2 x 0 m", "-1 m", "0.9 mm"})
        void no_number_and_no_length(String text) {
            assertThat(fault(text)).startsWith("'" + text + "' has a piece of no number or of less than a millimetre");
        }

        @Test
        void a_millimetre_is_a_piece() {
            assertThat(Pieces.parse("1 mm").count()).isEqualTo(1);
        }

        @Test
        void what_is_no_length() {
            assertThat(fault("3 x 4")).startsWith("'4' is not a number with its unit");
            assertThat(fault("12345 x 4 m")).isNotEmpty();
        }

        @Test
        void long_text_is_shortened_to_60_characters() {
            String sixty = "0 x 1 m" + " ".repeat(53);
            assertThat(fault(sixty)).startsWith("'" + sixty + "' has a piece");
            assertThat(fault(sixty + " ")).startsWith("'" + sixty + "...' has a piece");
        }

        @Test
        void more_than_200_lengths_or_5000_pieces() {
            assertThat(Pieces.parse(times(200, "1m")).count())
                    .as("1 x 1 m, is 9 characters")
                    .isEqualTo(200);
            assertThat(fault(times(201, "1m"))).contains("holds more than 200 lengths or 5000 pieces");
            assertThat(Pieces.parse("5000 x 1 m").count()).isEqualTo(5000);
            assertThat(fault("5000 x 1 m, 1 m")).startsWith("'5000 x 1 m, 1 m' holds more than 200 lengths");
        }

        @Test
        void text_that_is_too_long_to_read_or_to_write() {
            assertThat(Pieces.parse("1 m" + " ".repeat(1997)).count()).isEqualTo(1);
            assertThat(fault("1 m" + " ".repeat(1998))).contains("...' is too long");
            // 150 x 5 characters are read, but "1 x 0.3048 m, " has 14
            assertThat(fault(times(150, "1 ft"))).contains("is too long");
            assertThat(Pieces.parse(times(142, "1 ft")).toString()).hasSizeLessThanOrEqualTo(2000);
        }
    }
}
