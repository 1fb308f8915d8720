package org.firmset.trade.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Results;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TankTest {
    private static final Given<Tank> USUAL = Given.of(WaterKinds.TANK);
    /** 90 mph on 8 x 5 ft, in pounds. */
    private static final double WIND = 0.6125 * 40.2336 * 40.2336 * 0.8 * 40 * 0.09290304 / 9.80665 / 0.45359237;

    private static Given<Tank> shape(String shape) {
        return USUAL.with("shape", shape).with("baseLength", "20 ft").with("baseWidth", "20 ft");
    }

    @Nested
    class Shapes {
        @ParameterizedTest(name = "{0}: {1} ft3")
        @CsvSource(textBlock = """
                nominal,          220.572917
                upright-cylinder, 251.327412
                lying-cylinder,   301.592895
                box,              120
                cone-bottom,      284.837734
                """)
        void hold_this_when_full(String shape, double cubicFeet) {
            // 8 ft across, 5 ft high, 6 ft long, 4 ft wide, cone of 2 ft
            assertThat(Results.amount(shape(shape).work(), "volume", "ft3")).isCloseTo(cubicFeet, within(1e-5));
        }

        @ParameterizedTest(name = "{0} at 3 ft: {1} ft3")
        @CsvSource(textBlock = """
                nominal,          132.34375
                upright-cylinder, 150.796447
                lying-cylinder,   103.301242
                box,              72
                cone-bottom,      83.775804
                """)
        void hold_this_at_a_depth(String shape, double cubicFeet) {
            Worksheet sheet = shape(shape).with("waterDepth", "3 ft").work();
            assertThat(Results.amount(sheet, "volume-now", "ft3")).isCloseTo(cubicFeet, within(1e-5));
            assertThat(Results.amount(sheet, "mass-now", "kg"))
                    .isCloseTo(cubicFeet * 28.316846592 + 400 * 0.45359237, within(1e-3));
        }

        @ParameterizedTest(name = "{0}: {1} x {2} ft, {3} ft2")
        @CsvSource(textBlock = """
                nominal,          8, 8, 50.265482
                upright-cylinder, 8, 8, 50.265482
                lying-cylinder,   8, 6, 48
                box,              6, 4, 24
                cone-bottom,      8, 8, 50.265482
                """)
        void stand_on_this(String shape, double along, double across, double area) {
            Worksheet sheet = shape(shape).work();
            assertThat(Results.term(sheet, "least-base-length", "s", "ft")).isCloseTo(along, within(1e-9));
            assertThat(Results.term(sheet, "least-base-width", "s", "ft")).isCloseTo(across, within(1e-9));
            assertThat(Results.term(sheet, "pressure-on-base", "A", "ft2")).isCloseTo(area, within(1e-6));
        }

        @ParameterizedTest(name = "{0}: {1} ft2 at {2} ft, {3} ft wide, C {4}")
        @CsvSource(textBlock = """
                nominal,          40, 2.5,      8, 0.8
                upright-cylinder, 40, 2.5,      8, 0.8
                lying-cylinder,   48, 4,        6, 0.8
                box,              30, 2.5,      4, 1.4
                cone-bottom,      48, 3.972222, 8, 0.8
                """)
        void show_this_to_the_wind(String shape, double area, double arm, double width, double drag) {
            Worksheet sheet = shape(shape).work();
            assertThat(Results.term(sheet, "wind-force", "A", "ft2")).isCloseTo(area, within(1e-6));
            assertThat(Results.term(sheet, "wind-force", "C", "")).isEqualTo(drag);
            assertThat(Results.term(sheet, "tipping-safety", "a", "ft")).isCloseTo(arm, within(1e-6));
            assertThat(Results.term(sheet, "tipping-safety", "b", "ft")).isCloseTo(width, within(1e-6));
        }

        @Test
        void a_long_lying_tank_and_a_box_that_is_wider_than_long() {
            Worksheet lying = shape("lying-cylinder").with("length", "10 ft").work();
            assertThat(Results.term(lying, "least-base-length", "s", "ft")).isCloseTo(10, within(1e-9));
            assertThat(Results.term(lying, "least-base-width", "s", "ft")).isCloseTo(8, within(1e-9));
            Worksheet box = shape("box").with("width", "7 ft").work();
            assertThat(Results.term(box, "least-base-length", "s", "ft")).isCloseTo(7, within(1e-9));
            assertThat(Results.term(box, "least-base-width", "s", "ft")).isCloseTo(6, within(1e-9));
            assertThat(Results.term(box, "wind-force", "A", "ft2")).isCloseTo(35, within(1e-6));
        }

        @ParameterizedTest
        @CsvSource(delimiter = '|', textBlock = """
                nominal          | V as its maker states | d h
                upright-cylinder | V = pi/4 d2 h         | d h
                lying-cylinder   | V = L (r2 acos((r - y) / r) - (r - y) sqrt(2 r y - y2)), r = d / 2, y = d | d L
                box              | V = L w h             | L w h
                cone-bottom      | V = pi/4 d2 (h + c / 3) | d h c
                """)
        void say_by_which_formula(String shape, String formula, String symbols) {
            Line line = Results.line(shape(shape).work(), "volume");
            assertThat(line.formula()).isEqualTo(formula);
            assertThat(line.terms()).extracting(t -> t.symbol()).containsExactly(symbols.split(" "));
        }

        @Test
        void a_dip_table_goes_up_in_tenths() {
            Worksheet sheet = shape("lying-cylinder").work();
            List<List<Amount>> rows = sheet.tables().getFirst().rows();
            assertThat(rows).hasSize(10);
            assertThat(Results.amount(rows.get(0).get(0), "ft")).isCloseTo(0.8, within(1e-9));
            assertThat(Results.amount(rows.get(4).get(1), "ft3")).isCloseTo(150.796447, within(1e-5));
            assertThat(Results.amount(rows.get(9).get(0), "ft")).isCloseTo(8, within(1e-9));
            assertThat(Results.amount(rows.get(9).get(1), "ft3")).isCloseTo(301.592895, within(1e-5));
            assertThat(sheet.curves().getFirst().points()).hasSize(11);
            assertThat(sheet.curves().getFirst().points().getFirst().y()).isZero();
            assertThat(sheet.curves().getFirst().points().getLast().x()).isCloseTo(2.4384, within(1e-9));
        }
    }

    @Nested
    class Lines {
        private final Worksheet sheet = USUAL.work();

        @Test
        void are_these() {
            assertThat(Results.keys(sheet))
                    .containsExactly(
                            "volume",
                            "water-mass",
                            "full-mass",
                            "water",
                            "least-base-length",
                            "least-base-width",
                            "base-concrete",
                            "pressure-on-base",
                            "pressure-on-ground",
                            "allowed",
                            "share",
                            "least-pad",
                            "wind-force",
                            "sliding-safety",
                            "tipping-safety",
                            "slides-at",
                            "tips-at",
                            "tie-down",
                            "ballast");
            assertThat(sheet.lines(Line.Role.MATERIAL)).extracting(Line::key).containsExactly("water", "base-concrete");
        }

        @Test
        void masses() {
            assertThat(Results.amount(sheet, "water-mass", "kg")).isCloseTo(6245.929444, within(1e-5));
            assertThat(Results.amount(sheet, "full-mass", "lb")).isCloseTo(13769.917347 + 400, within(1e-4));
            assertThat(Results.amount(sheet, "water", "gal")).isCloseTo(1650, within(1e-6));
            assertThat(Results.line(sheet, "full-mass").caution()).contains("Never stand below it");
        }

        @Test
        void the_base() {
            assertThat(Results.amount(sheet, "least-base-length", "in")).isCloseTo(104, within(1e-6));
            assertThat(Results.amount(sheet, "least-base-width", "in")).isCloseTo(104, within(1e-6));
            assertThat(Results.amount(sheet, "base-concrete", "yd3")).isCloseTo(1, within(1e-6));
            assertThat(Results.amount(sheet, "pressure-on-base", "lb/ft2"))
                    .isCloseTo(14169.917347 / 50.265482457, within(1e-5));
            // 27 ft3 at 150 lb/ft3
            assertThat(Results.term(sheet, "pressure-on-ground", "S", "lb")).isCloseTo(4050, within(1e-4));
            assertThat(Results.amount(sheet, "pressure-on-ground", "lb/ft2"))
                    .isCloseTo(18219.917347 / 81, within(1e-5));
            assertThat(Results.amount(sheet, "allowed", "lb/ft2")).isCloseTo(1500, within(1e-6));
            assertThat(Results.amount(sheet, "share", "%")).isCloseTo(18219.917347 / 81 / 15, within(1e-6));
            assertThat(Results.amount(sheet, "least-pad", "ft"))
                    .isCloseTo(Math.sqrt(18219.917347 / 1500), within(1e-6));
        }

        @Test
        void without_a_slab_the_tank_itself_presses_on_the_ground() {
            Worksheet bare = USUAL.with("baseThickness", "0 m").work();
            assertThat(bare.line("base-concrete")).isEmpty();
            assertThat(Results.amount(bare, "pressure-on-ground", "lb/ft2"))
                    .isCloseTo(14169.917347 / 50.265482457, within(1e-5));
            assertThat(Results.amount(bare, "least-pad", "ft")).isCloseTo(Math.sqrt(14169.917347 / 1500), within(1e-6));
            assertThat(Results.line(bare, "pressure-on-ground").formula()).isEqualTo("p = M g / A");
            assertThat(Results.line(sheet, "pressure-on-ground").formula()).isEqualTo("p = (M + S) g / (a b)");
        }

        @Test
        void feet_press_on_their_own_area() {
            Worksheet feet = USUAL.with("contactArea", "4 ft2")
                    .with("baseThickness", "0 m")
                    .work();
            assertThat(Results.amount(feet, "pressure-on-base", "lb/ft2")).isCloseTo(14169.917347 / 4, within(1e-4));
            assertThat(Results.amount(feet, "pressure-on-ground", "lb/ft2")).isCloseTo(14169.917347 / 4, within(1e-4));
        }

        @Test
        void the_ground_says_its_source() {
            assertThat(Results.line(sheet, "allowed").source()).isEqualTo(Sources.BEARING_UNKNOWN);
            Worksheet gravel = USUAL.with("soil", "gravel").work();
            assertThat(Results.line(gravel, "allowed").source()).isEqualTo(Sources.BEARING);
            assertThat(Results.amount(gravel, "allowed", "lb/ft2")).isCloseTo(3000, within(1e-6));
        }

        @Test
        void wind_on_the_empty_tank() {
            assertThat(Results.amount(sheet, "wind-force", "lb")).isCloseTo(WIND, within(1e-5));
            double sliding = 0.3 * 400 / WIND;
            double tipping = 400 * 8 / (2 * WIND * 2.5);
            assertThat(Results.amount(sheet, "sliding-safety", "")).isCloseTo(sliding, within(1e-8));
            assertThat(Results.amount(sheet, "tipping-safety", "")).isCloseTo(tipping, within(1e-8));
            assertThat(Results.amount(sheet, "slides-at", "mph")).isCloseTo(90 * Math.sqrt(sliding), within(1e-6));
            assertThat(Results.amount(sheet, "tips-at", "mph")).isCloseTo(90 * Math.sqrt(tipping), within(1e-6));
        }

        @Test
        void what_ties_it_down() {
            assertThat(Results.amount(sheet, "tie-down", "lb")).isCloseTo(1.5 * WIND / 0.3 - 400, within(1e-4));
            assertThat(Results.amount(sheet, "ballast", "L"))
                    .isCloseTo((1.5 * WIND / 0.3 - 400) * 0.45359237, within(1e-4));
            Worksheet narrow =
                    USUAL.with("friction", "1").with("stance", "2 ft").work();
            assertThat(Results.term(narrow, "tipping-safety", "b", "ft")).isCloseTo(2, within(1e-9));
            assertThat(Results.amount(narrow, "tie-down", "lb")).isCloseTo(3 * WIND * 2.5 / 2 - 400, within(1e-4));
            Worksheet calm = USUAL.with("wind", "10 mph").work();
            assertThat(Results.amount(calm, "tie-down", "lb")).isZero();
            assertThat(Results.amount(calm, "ballast", "L")).isZero();
        }

        @Test
        void the_factor_of_the_wind_can_be_given() {
            Worksheet given = USUAL.with("drag", "1.2").work();
            assertThat(Results.amount(given, "wind-force", "lb")).isCloseTo(WIND * 1.5, within(1e-5));
        }
    }

    @Nested
    class Findings {
        private final Given<Tank> calm = USUAL.with("wind", "5 mph").with("soil", "sand");

        @Test
        void a_calm_tank_on_good_ground_has_only_the_note_on_wind() {
            assertThat(calm.work().findings()).hasSize(1);
            assertThat(Results.notes(calm.work()))
                    .singleElement()
                    .asString()
                    .startsWith("The wind is taken in simple form");
        }

        @Test
        void more_than_75_percent_of_the_presumptive_value_is_for_an_engineer() {
            Given<Tank> feet = calm.with("soil", "clay").with("baseThickness", "0 m");
            // 14,169.917 lb on 1,125 lb/ft2 need 12.59548 ft2
            assertThat(Results.engineers(feet.with("contactArea", "12.596 ft2").work()))
                    .isEmpty();
            assertThat(Results.engineers(feet.with("contactArea", "12.595 ft2").work()))
                    .containsExactly(
                            "The ground carries more than 75 % of its presumptive bearing value. Ask a licensed"
                                    + " engineer.");
        }

        @Test
        void fill_is_for_an_engineer() {
            assertThat(Results.engineers(calm.with("onFill", "true").work()))
                    .singleElement()
                    .asString()
                    .startsWith("The base stands on fill or filled block");
        }

        @Test
        void less_than_one_and_a_half_times_held_is_for_an_engineer() {
            Given<Tank> sliding = USUAL.with("soil", "sand");
            double slides = Results.amount(sliding.work(), "slides-at", "mph") / Math.sqrt(1.5);
            assertThat(Results.engineers(sliding.with("wind", "%.6f mph".formatted(slides - 1e-4))
                            .work()))
                    .isEmpty();
            assertThat(Results.engineers(sliding.with("wind", "%.6f mph".formatted(slides + 1e-4))
                            .work()))
                    .singleElement()
                    .asString()
                    .startsWith("The empty tank is not held 1.5 times");
            Given<Tank> tipping = sliding.with("friction", "1").with("stance", "2 ft");
            double tips = Results.amount(tipping.work(), "tips-at", "mph") / Math.sqrt(1.5);
            assertThat(Results.engineers(tipping.with("wind", "%.6f mph".formatted(tips - 1e-4))
                            .work()))
                    .isEmpty();
            assertThat(Results.engineers(tipping.with("wind", "%.6f mph".formatted(tips + 1e-4))
                            .work()))
                    .hasSize(1);
        }

        @Test
        void a_frame_under_a_cone_is_for_an_engineer_and_a_lying_tank_rolls() {
            assertThat(Results.engineers(
                            shape("cone-bottom").with("wind", "5 mph").work()))
                    .singleElement()
                    .asString()
                    .startsWith("A cone-bottom tank stands on a frame");
            assertThat(Results.warnings(shape("lying-cylinder").work()))
                    .singleElement()
                    .asString()
                    .startsWith("A lying tank rests on cradles");
            assertThat(Results.warnings(shape("box").work())).isEmpty();
            assertThat(Results.warnings(shape("upright-cylinder").work())).isEmpty();
        }

        @ParameterizedTest
        @CsvSource(delimiter = '|', textBlock = """
                104 in   | 104 in   | false
                103.9 in | 104 in   | true
                104 in   | 103.9 in | true
                """)
        void a_base_that_does_not_reach_4_inches_beyond(String length, String width, boolean small) {
            Worksheet sheet =
                    calm.with("baseLength", length).with("baseWidth", width).work();
            assertThat(Results.warnings(sheet).stream()
                            .anyMatch(w -> w.startsWith("The base does not reach far enough")))
                    .isEqualTo(small);
        }

        @ParameterizedTest
        @CsvSource(delimiter = '|', textBlock = """
                56 in | 80 in   | false
                80 in | 56 in   | false
                56 in | 79.9 in | true
                79 in | 57 in   | true
                90 in | 55.9 in | true
                """)
        void a_base_may_lie_either_way_under_a_box(String length, String width, boolean small) {
            // 6 x 4 ft and 4 in all round: 80 x 56 in
            Worksheet sheet = calm.with("shape", "box")
                    .with("baseLength", length)
                    .with("baseWidth", width)
                    .work();
            assertThat(Results.warnings(sheet).isEmpty()).isEqualTo(!small);
        }

        @Test
        void unknown_ground_is_to_be_dug_up() {
            assertThat(Results.notes(calm.with("soil", "unknown").work()))
                    .hasSize(2)
                    .first()
                    .asString()
                    .startsWith("The value for unknown ground does not hold for peat");
        }

        @Test
        void what_even_water_does_not_hold_must_be_tied() {
            // 1.5 x 662.64 lb / mu - 400 lb against 13,769.9 lb of water
            assertThat(Results.warnings(USUAL.with("friction", "0.0702").work()))
                    .isEmpty();
            assertThat(Results.warnings(USUAL.with("friction", "0.0701").work()))
                    .containsExactly("Even full, the tank is not heavy enough for this wind; it must be tied down.");
        }
    }

    @Nested
    class Refusals {
        private static void refused(Given<Tank> tank, String message) {
            assertThatExceptionOfType(Refusal.class).isThrownBy(tank::work).withMessageStartingWith(message);
        }

        @ParameterizedTest
        @ValueSource(strings = {"peat", "organic-clay", "uncompacted-fill"})
        void ground_that_gives_way(String soil) {
            refused(USUAL.with("soil", soil), "soil [");
        }

        @Test
        void more_water_than_the_tank_is_high() {
            assertThat(USUAL.with("waterDepth", "5 ft").work().line("volume-now"))
                    .isPresent();
            refused(
                    USUAL.with("waterDepth", "5.01 ft"),
                    "waterDepth [1.527048 m] is more than the tank is high inside.");
            assertThat(shape("cone-bottom").with("waterDepth", "7 ft").work().line("volume-now"))
                    .isPresent();
            refused(shape("lying-cylinder").with("waterDepth", "8.01 ft"), "waterDepth [");
        }

        @Test
        void a_base_smaller_than_what_stands_on_it() {
            refused(
                    USUAL.with("baseLength", "7 ft").with("baseWidth", "7 ft"),
                    "baseLength [2.1336 m] makes a base smaller than the tank.");
            assertThat(USUAL.with("contactArea", "81 ft2").work().lines()).isNotEmpty();
            refused(USUAL.with("contactArea", "81.1 ft2"), "contactArea [7.534436544 m2] is more than the base has.");
        }
    }
}
