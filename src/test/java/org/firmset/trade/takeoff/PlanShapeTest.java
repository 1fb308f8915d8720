package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.firmset.measure.UnitsFault;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlanShapeTest {
    private static String fault(String text) {
        return String.valueOf(assertThatExceptionOfType(UnitsFault.class)
                .isThrownBy(() -> PlanShape.parse(text))
                .actual()
                .getMessage());
    }

    /** An outline that bends the same way at each of its corners. */
    private static String bow(int corners, String unit) {
        return IntStream.range(0, corners)
                .mapToObj(i -> i + unit + "," + i * i / 100.0 + unit)
                .collect(Collectors.joining(";", "corners ", ""));
    }

    @ParameterizedTest(name = "{0}: {1} m2, {2} m")
    @CsvSource(delimiter = '|', textBlock = """
            4 m x 2.5 m                                  | 10       | 13
            4m×2.5m                                      | 10       | 13
            4 M X 2.5 M                                  | 10       | 13
            100 in x 1 m                                 | 2.54     | 7.08
            round 2 m                                    | 3.141593 | 6.283185
            Round 2 m                                    | 3.141593 | 6.283185
            ring 4 m, 2 m                                | 9.424778 | 18.849556
            corners 0 m, 0 m; 4 m, 0 m; 4 m, 3 m         | 6        | 12
            corners 4 m, 3 m; 4 m, 0 m; 0 m, 0 m         | 6        | 12
            corners -1 m, -1 m; 1 m, -1 m; 1 m, 1 m; -1 m, 1 m | 4  | 8
            """)
    void area_and_edge(String text, double area, double edge) {
        assertThat(PlanShape.parse(text).area()).isCloseTo(area, within(1e-6));
        assertThat(PlanShape.parse(text).edge()).isCloseTo(edge, within(1e-6));
    }

    @Test
    void an_l_a_u_and_a_t() {
        assertThat(PlanShape.parse("corners 0 m, 0 m; 4 m, 0 m; 4 m, 1 m; 1 m, 1 m; 1 m, 3 m; 0 m, 3 m")
                        .area())
                .isCloseTo(6, within(1e-12));
        PlanShape u = PlanShape.parse(
                "corners 0 m, 0 m; 6 m, 0 m; 6 m, 3 m; 4 m, 3 m; 4 m, 1 m; 2 m, 1 m; 2 m, 3 m; 0 m, 3 m");
        assertThat(u.area()).as("the ends of a U lie in one line").isCloseTo(14, within(1e-12));
        assertThat(u.edge()).isCloseTo(22, within(1e-12));
        PlanShape t = PlanShape.parse(
                "corners 2 m, 0 m; 4 m, 0 m; 4 m, 2 m; 6 m, 2 m; 6 m, 3 m; 0 m, 3 m; 0 m, 2 m; 2 m, 2 m");
        assertThat(t.area()).isCloseTo(10, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "4 m x 2.5 m",
                "round 8 ft",
                "ring 8 ft, 6 ft",
                "corners 0 m, 0 m; 4 m, 0 m; 4 m, 3 m; 1.234567891 m, 3 m",
                "10 mm x 300 m"
            })
    void what_is_written_reads_back(String text) {
        PlanShape shape = PlanShape.parse(text);
        assertThat(PlanShape.parse(shape.toString())).isEqualTo(shape);
    }

    @Test
    void a_hundred_corners_are_read_and_no_more() {
        assertThat(PlanShape.parse(bow(100, "m")).area()).isPositive();
        assertThat(fault(bow(101, "m")))
                .endsWith(
                        "has more than 100 corners; write it such as '12 ft x 10 ft', 'round 8 ft', 'ring 8 ft, 6 ft' or"
                                + " 'corners 0 m, 0 m; 4 m, 0 m; 4 m, 3 m'");
    }

    @Test
    void text_of_2000_characters_is_read_and_no_more() {
        assertThat(PlanShape.parse("4 m x " + " ".repeat(1991) + "3 m").area()).isEqualTo(12);
        assertThat(fault("4 m x " + " ".repeat(1992) + "3 m")).contains("...' is too long; write it such as");
    }

    @Test
    void what_could_not_be_read_back_is_not_taken() {
        String inches = bow(100, "in");
        assertThat(inches).hasSizeLessThan(2000);
        assertThat(fault(inches)).contains("...' is too long");
        assertThat(PlanShape.parse(bow(70, "in")).toString()).hasSizeLessThanOrEqualTo(2000);
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @ValueSource(strings = {"4 m", "4 m x 3 m x 2 m", "ring 4 m", "corners 0 m", "corners 1 m, 2 m, 3 m", "x"})
        void what_is_no_shape(String text) {
            assertThat(fault(text)).isNotEmpty();
        }

        @Test
        void no_shape_says_how_to_write_one() {
            assertThat(fault("4 m"))
                    .isEqualTo(
                            "'4 m' is no shape; write it such as '12 ft x 10 ft', 'round 8 ft', 'ring 8 ft, 6 ft' or 'corners 0"
                                    + " m, 0 m; 4 m, 0 m; 4 m, 3 m'");
            assertThat(fault("m".repeat(61))).startsWith("'" + "m".repeat(60) + "...' is no shape");
            assertThat(fault("m".repeat(60))).startsWith("'" + "m".repeat(60) + "' is no shape");
        }

        @ParameterizedTest(name = "{0}")
        @CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
                0 m x 3 m         | '0 m' is no length of a shape
                3 m x 0 m         | '0 m' is no width of a shape
                9.9 mm x 3 m      | '0.0099 m' is no length of a shape
                3 m x 300.1 m     | '300.1 m' is no width of a shape
                round 0 m         | '0 m' is no diameter of a shape
                round -1 m        | '-1 m' is no diameter of a shape
                ring 301 m, 2 m   | '301 m' is no outer diameter of a shape
                ring 3 m, 0 m     | '0 m' is no inner diameter of a shape
                ring 2 m, 2 m     | 'ring 2 m, 2 m' has no width
                ring 2 m, 3 m     | 'ring 2 m, 3 m' has no width
                corners 301 m, 0 m; 4 m, 0 m; 4 m, 3 m | '301 m, 0 m' is no corner of a shape
                corners 0 m, -301 m; 4 m, 0 m; 4 m, 3 m | '0 m, -301 m' is no corner of a shape
                corners 0 m, 0 m; 4 m, 0 m | 'corners 0 m, 0 m; 4 m, 0 m' encloses nothing
                corners 0 m, 0 m; 4 m, 0 m; 8 m, 0 m | 'corners 0 m, 0 m; 4 m, 0 m; 8 m, 0 m' encloses nothing
                corners 0.1 m, 0.1 m; 0.2 m, 0.2 m; 0.3 m, 0.3 m | 'corners 0.1 m, 0.1 m; 0.2 m, 0.2 m; 0.3 m, 0.3 m' encloses
                corners 0 m, 0 m; 4 m, 0 m; 0 m, 3 m; 5 m, 5 m | 'corners 0 m, 0 m; 4 m, 0 m; 0 m, 3 m; 5 m, 5 m' crosses or
                """)
        void measures_and_outlines(String text, String message) {
            assertThat(fault(text)).startsWith(message);
        }

        @Test
        void measures_at_their_limits_pass() {
            assertThat(PlanShape.parse("300 m x 300 m").area()).isEqualTo(90_000);
            assertThat(PlanShape.parse("10 mm x 1 m").area()).isCloseTo(0.01, within(1e-12));
            assertThat(PlanShape.parse("corners -300 m, -300 m; 300 m, -300 m; 300 m, 300 m")
                            .area())
                    .isEqualTo(180_000);
        }

        @Test
        void an_outline_that_comes_back_to_a_corner() {
            assertThat(fault("corners 0 m, 0 m; 4 m, 0 m; 4 m, 3 m; 0 m, 3 m; 0 m, 0 m"))
                    .contains("crosses or touches itself");
            assertThat(fault("corners 0 m, 0 m; 4 m, 0 m; 4 m, 3 m; 2 m, 0 m; 0 m, 3 m"))
                    .contains("crosses or touches itself");
        }

        @Test
        void long_outlines_are_shortened() {
            assertThat(fault("corners 0 m, 0 m; 4 m, 0 m; 0 m, 3 m; 4 m, 4 m; 5 m, 5 m; 6 m, 7 m"))
                    .startsWith(
                            "'corners 0 m, 0 m; 4 m, 0 m; 0 m, 3 m; 4 m, 4 m; 5 m, 5 m; 6 ...' crosses or touches itself");
        }
    }
}
