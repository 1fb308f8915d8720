package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.firmset.trade.takeoff.Inputs.refused;
import static org.firmset.trade.takeoff.Inputs.work;
import static org.firmset.trade.trace.Results.amount;
import static org.firmset.trade.trace.Results.engineers;
import static org.firmset.trade.trace.Results.keys;
import static org.firmset.trade.trace.Results.line;
import static org.firmset.trade.trace.Results.notes;
import static org.firmset.trade.trace.Results.told;
import static org.firmset.trade.trace.Results.warnings;

import org.firmset.trade.trace.Known;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WallFillTest {
    private static String[] given(String height, String... more) {
        String[] all = new String[more.length + 4];
        String[] first = {"length", "10 ft", "height", height};
        System.arraycopy(first, 0, all, 0, 4);
        System.arraycopy(more, 0, all, 4, more.length);
        return all;
    }

    private static Worksheet fill(String height, String... more) {
        return work(WallFill.class, given(height, more));
    }

    @Test
    void walls_round_a_rectangle() {
        Worksheet fill = work(
                WallFill.class,
                "length",
                "112 in",
                "width",
                "112 in",
                "height",
                "24 in",
                "conduits",
                "2",
                "barsPerCell",
                "2");
        assertThat(told(fill)).isEqualTo("""
                courses: 3 courses; n = H / h, rounded up; H: height, 2 ft; h: course with its joint, 8 in
                blocks-in-course: 26 blocks; c = (2 (L + B) - 4 t) / l; L: length outside, 9 ft 4 in; B: width outside, \
                9 ft 4 in; t: width of the wall, 8 in; l: block with its joint, 1 ft 4 in
                barred-cells: 13 cells; k = c l / s, rounded up; c: blocks in a course, 26; l: block with its joint, \
                1 ft 4 in; s: distance of the bars, at most, 2 ft 8 in
                filled-cells: 52 cells; N = 2 c; c: blocks in a course, 26; k: cells with a bar, 13
                core: 0.2996 ft3; v = (a - 2 s) (l - 3 w) h; a: width of the block, 7.625 in; s: face shell, 1.25 in; \
                l: length of the block, 15.62 in; w: web, 1 in; h: course, 8 in
                taken: 0.09272 ft3; b = (k m A + p C) n h; k: cells with a bar, 13; m: bars in each, 2; A: section of #4, \
                0.1963 in2; p: conduits, 2; C: section of a conduit, 0.7854 in2; n h: filled height, 2 ft
                grout: 23.27 ft3; V = N n v / 2 - b; N: filled cells seen from above, 52; n: courses, 3; v: cores of one \
                block over a course, 0.2996 ft3; b: bars and conduits, 0.09272 ft3
                volume-with-waste: 25.6 ft3; G = V (1 + w); V: net volume, 23.27 ft3; w: waste, 10 %
                bags: 43 bags (42.67); B = G / y, rounded up once; G: volume with waste, 25.6 ft3; y: yield of a bag, 0.6 ft3
                bag-mass: 3,440 lb; M = B m; B: bags, 43; m: mass of a bag, 80 lb
                mixing-water: 32.25 gal; W = B q; B: bags, 43; q: water for a bag, 0.75 gal
                wash-water: 32.25 gal; about as much again; W: mixing water, 32.25 gal
                labour: 9.75 h; T = B / r + f; B: bags, 43; r: bags mixed and placed in an hour of labour, 5; f: setting up, \
                finishing and washing, 1.15 h
                lifts: 1 lift; k = H / 5 ft 4 in, rounded up; H: height of the pour, 2 ft
                vibrating: 7 min; t = N k 2 s; N: cells filled, 52; k: lifts, 1; s: seconds each time, 4 s
                """);
        assertThat(amount(fill, "vibrating")).isCloseTo(52 * 2 * 4 / 60.0, within(1e-9));
    }

    @Test
    void cells_with_bars_alone() {
        assertThat(told(fill("6 ft", "cells", "with-bars"))).contains("""
                barred-cells: 5 cells; k = (c l - l / 2) / s, rounded up, + 1; c: blocks in a course, 7.5; l: block with \
                its joint, 1 ft 4 in; s: distance of the bars, at most, 2 ft 8 in
                filled-cells: 5 cells; N = k; c: blocks in a course, 7.5; k: cells with a bar, 5
                """);
        assertThat(amount(fill("6 ft", "cells", "with-bars"), "vibrating"))
                .isCloseTo(5 * 2 * 2 * 4 / 60.0, within(1e-9));
    }

    @ParameterizedTest(name = "every {0} in: {1}")
    @CsvSource(textBlock = """
            8,     15
            8.1,   15
            111.9, 3
            112,   2
            """)
    void bars_from_end_to_end_of_a_wall_of_15_cells(String inches, double bars) {
        // 112 in from the middle of the first cell to that of the last
        assertThat(amount(fill("6 ft", "barSpacing", inches + " in"), "barred-cells"))
                .isEqualTo(bars);
    }

    @Test
    void a_wall_of_less_than_a_cell_has_one_bar() {
        assertThat(amount(work(WallFill.class, "length", "0.2 m", "height", "1 m"), "barred-cells"))
                .isEqualTo(1);
    }

    @Test
    void bars_as_entered() {
        assertThat(line(fill("6 ft", "barredCells", "15"), "barred-cells").formula())
                .isEqualTo("as entered");
        assertThat(amount(fill("6 ft", "barredCells", "15"), "barred-cells")).isEqualTo(15);
        assertThat(keys(fill("6 ft", "barsPerCell", "0"))).doesNotContain("barred-cells");
    }

    @Test
    void core_volume_from_the_data_sheet_comes_first() {
        Worksheet fill = fill("6 ft", "coreVolume", "7 L", "barsPerCell", "0");
        assertThat(amount(fill, "core", "L")).isEqualTo(7);
        assertThat(line(fill, "core").formula()).isEqualTo("as entered");
        assertThat(line(fill, "core").source().known()).isEqualTo(Known.PRACTICE);
        assertThat(amount(fill, "grout", "L")).isCloseTo(7.5 * 9 * 7, within(1e-6));
        assertThat(notes(fill)).noneMatch(n -> n.startsWith("Range"));
    }

    @Test
    void measured_shells_and_webs_come_before_the_least_of_the_standard() {
        // (7 5/8 - 3) x (15 5/8 - 3.75) x 8 in3
        Worksheet fill = fill("6 ft", "shell", "1 1/2 in", "web", "1 1/4 in", "barsPerCell", "0");
        assertThat(amount(fill, "core", "in3")).isCloseTo(4.625 * 11.875 * 8, within(0.0001));
        assertThat(notes(fill))
                .contains("Range to expect: 27 bags where the cores taper by 15 %, 33 where grout also fills the"
                        + " space between the block ends.");
    }

    @Test
    void range_takes_bars_off_and_waste_in() {
        // 67.5 blocks of 0.2996 ft3, tapered 17.19 or with their end space 20.82 ft3; bars 0.123 ft3; + 20 %
        Worksheet fill = fill("6 ft", "barredCells", "15", "wastePercent", "20");
        assertThat(notes(fill))
                .contains("Range to expect: 35 bags where the cores taper by 15 %, 42 where grout also fills the"
                        + " space between the block ends.");
    }

    @Test
    void range_takes_conduits_off() {
        // 15 blocks, 3.818 or 4.626 ft3, and 12 conduits of 2 in over two courses, 0.349 ft3
        Worksheet fill = fill("16 in", "barsPerCell", "0", "conduits", "12", "conduitDiameter", "2 in");
        assertThat(notes(fill))
                .contains("Range to expect: 7 bags where the cores taper by 15 %, 8 where grout also fills the"
                        + " space between the block ends.");
    }

    @Test
    void what_grout_is_fit_is_said() {
        assertThat(notes(fill("2 ft"))).anyMatch(n -> n.contains("a slump of 8 to 11 in and 2,000 psi"));
    }

    @Test
    void pours_over_5_feet_4_want_cleanouts() {
        assertThat(warnings(fill("5 ft 4 in"))).isEmpty();
        assertThat(amount(fill("5 ft 4 in"), "lifts")).isEqualTo(1);
        assertThat(warnings(fill("6 ft")))
                .singleElement()
                .asString()
                .startsWith("The pour is higher than 5 ft 4 in (1.63 m): leave cleanouts of 3 in at the foot");
        assertThat(amount(fill("5 ft 4.1 in"), "lifts")).isEqualTo(2);
    }

    @Test
    void pours_over_12_feet_8_are_for_an_engineer() {
        assertThat(engineers(fill("12 ft 8 in"))).isEmpty();
        assertThat(engineers(fill("12 ft 9 in")))
                .containsExactly(
                        "The pour is higher than 12 ft 8 in (3.86 m), the most TMS 602 allows in one lift. Ask a"
                                + " licensed engineer.");
        assertThat(warnings(fill("12 ft 9 in"))).hasSize(1);
    }

    @Test
    void bars_over_half_the_cell_are_warned_of() {
        // the cell is 5 1/8 in wide: two of 1.27 in fit well, two of 1.41 in do not
        assertThat(warnings(fill("2 ft", "bar", "no-10", "barsPerCell", "2"))).isEmpty();
        assertThat(warnings(fill("2 ft", "bar", "no-11", "barsPerCell", "2")))
                .singleElement()
                .asString()
                .startsWith("The bars take more than half the width of a cell");
    }

    @Test
    void the_narrower_side_of_a_cell_counts() {
        // 12 in block: 8 5/8 in across, (15 5/8 - 3 3/8) / 2 = 6 1/8 in along
        assertThat(warnings(fill("2 ft", "block", "in-12", "bar", "no-7", "barsPerCell", "4")))
                .hasSize(1);
        assertThat(warnings(fill("2 ft", "block", "in-12", "bar", "no-6", "barsPerCell", "4")))
                .isEmpty();
    }

    @Nested
    class Refusals {
        @Test
        void more_barred_cells_than_cells() {
            assertThat(refused(WallFill.class, given("2 ft", "barredCells", "16")))
                    .hasMessage("barredCells [16] are more cells with a bar than the wall has. Enter at most 15.");
        }

        @Test
        void barred_cells_without_bars() {
            assertThat(refused(WallFill.class, given("2 ft", "barredCells", "3", "barsPerCell", "0")))
                    .hasMessage("barredCells [3] have no bar in them. Enter 0, or 1 bar or more in a cell.");
        }

        @Test
        void bars_closer_than_the_cells() {
            assertThat(refused(WallFill.class, given("2 ft", "barSpacing", "0.2 m")))
                    .hasMessage("barSpacing [0.2 m] is less than a cell. Enter at least 0.204 m.");
        }

        @Test
        void no_cell_to_fill() {
            assertThat(refused(WallFill.class, given("2 ft", "cells", "with-bars", "barsPerCell", "0")))
                    .hasMessage("barsPerCell [0] leaves no cell to fill. Enter from 1 to 4, or fill all cells.");
        }

        @Test
        void cores_larger_than_the_block() {
            // 193.675 x 396.875 x 203.2 mm
            assertThat(refused(WallFill.class, given("2 ft", "coreVolume", "15.62 L")))
                    .hasMessage(
                            "coreVolume [0.01562 m3] is more than the whole block of 8 x 8 x 16 in. Enter less than 0.015"
                                    + " m3, the cores alone.");
            assertThat(fill("2 ft", "coreVolume", "15.61 L").line("bags")).isPresent();
        }

        @Test
        void shells_that_meet() {
            assertThat(refused(WallFill.class, given("2 ft", "shell", "3 13/16 in")))
                    .hasMessage(
                            "shell [0.0968375 m] leaves no core in a block of 8 x 8 x 16 in. Enter less than 0.096 m for one"
                                    + " shell.");
            assertThat(fill("2 ft", "shell", "3 in", "barsPerCell", "0").line("bags"))
                    .isPresent();
        }

        @Test
        void webs_as_thick_as_they_may_be_still_leave_a_cell() {
            // (390 - 300) / 2 = 45 mm
            assertThat(fill("2 ft", "block", "mm-190", "web", "100 mm").line("bags"))
                    .isPresent();
            assertThat(refused(WallFill.class, given("2 ft", "block", "mm-190", "web", "100 mm", "barsPerCell", "4"))
                            .getMessage())
                    .startsWith("bar [#4] is too thick: 4 of them do not go into a cell 0.045 m wide");
        }

        @Test
        void bars_that_do_not_go_into_a_cell() {
            // 5 1/8 in: four of 1.27 in take 5.08 in, four of 1.41 in 5.64 in
            assertThat(refused(WallFill.class, given("2 ft", "bar", "no-11", "barsPerCell", "4")))
                    .hasMessage(
                            "bar [#11] is too thick: 4 of them do not go into a cell 0.13 m wide. Enter fewer or thinner bars,"
                                    + " or measure shell and web again.");
            assertThat(fill("2 ft", "bar", "no-10", "barsPerCell", "4").line("bags"))
                    .isPresent();
        }

        @Test
        void conduits_that_do_not_go_into_a_cell() {
            assertThat(refused(
                            WallFill.class,
                            given("2 ft", "shell", "2 1/2 in", "conduits", "1", "conduitDiameter", "2 5/8 in")))
                    .hasMessage("conduitDiameter [0.066675 m] is thicker than the cell. Enter less than 0.066 m.");
            assertThat(fill("2 ft", "shell", "2 1/2 in", "conduits", "1", "conduitDiameter", "2.6 in")
                            .line("bags"))
                    .isPresent();
            assertThat(fill("2 ft", "shell", "2 1/2 in", "conduits", "0", "conduitDiameter", "3 in")
                            .line("bags"))
                    .isPresent();
        }

        @Test
        void conduits_that_leave_no_room() {
            assertThat(refused(
                            WallFill.class, given("2 ft", "cells", "with-bars", "barredCells", "1", "conduits", "50")))
                    .hasMessage(
                            "conduits [50] and bars leave no room in the cells. Enter fewer or thinner conduits and bars.");
        }
    }
}
