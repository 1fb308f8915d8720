package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.trade.takeoff.Inputs.refused;
import static org.firmset.trade.takeoff.Inputs.work;
import static org.firmset.trade.trace.Results.amount;
import static org.firmset.trade.trace.Results.line;
import static org.firmset.trade.trace.Results.notes;
import static org.firmset.trade.trace.Results.packs;
import static org.firmset.trade.trace.Results.told;

import java.util.Locale;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Boards, sheets, lengths, fasteners, paint and anything else that is bought. */
class GoodsTest {
    @Nested
    class Boards {
        @Test
        void for_studs_and_plates() {
            assertThat(told(work(Lumber.class, "pieces", "48 x 92 5/8 in, 5 x 16 ft")))
                    .isEqualTo("""
                    cut-boards: 29 boards; least number, see the cut list
                    boards: 31 boards (30.45); N = n (1 + w), rounded up; n: for the pieces, 29; w: more, 5 %
                    volume: 28.42 ft3; V = N l t b; N: boards, 31; l: length, 16 ft; t: thickness, 1.5 in; b: width, 5.5 in
                    mass: 994.6 lb; M = V g; V: volume, 28.42 ft3; g: density, 35 lb/ft3
                    """);
            assertThat(notes(work(Lumber.class, "pieces", "48 x 92 5/8 in, 5 x 16 ft")))
                    .containsExactly("The 53 pieces take 90.8 % of the length bought.");
        }

        @Test
        void are_told_alike_in_every_language() {
            Locale before = Locale.getDefault();
            try {
                Locale.setDefault(Locale.GERMANY);
                assertThat(notes(work(Lumber.class, "pieces", "48 x 92 5/8 in, 5 x 16 ft")))
                        .containsExactly("The 53 pieces take 90.8 % of the length bought.");
            } finally {
                Locale.setDefault(before);
            }
        }

        @Test
        void lose_the_width_of_the_cut() {
            assertThat(amount(work(Lumber.class, "pieces", "2 x 8 ft", "kerf", "0 mm"), "cut-boards"))
                    .isEqualTo(1);
            assertThat(amount(work(Lumber.class, "pieces", "2 x 8 ft"), "cut-boards"))
                    .isEqualTo(2);
        }

        @Test
        void that_divide_into_equal_parts_do_not_fail_by_what_decimals_round_off() {
            // 4 m / 13 is 0.307692308 m to nine decimals, a little more than a thirteenth
            assertThat(amount(
                            work(Lumber.class, "pieces", "13 x 0.307692308 m", "board", "4 m", "kerf", "0 mm"),
                            "cut-boards"))
                    .isEqualTo(1);
        }

        @Test
        void refuse_no_piece_and_one_longer_than_a_board() {
            assertThat(refused(Lumber.class, "pieces", "none"))
                    .hasMessage("pieces [none] names no piece. Enter at least one, such as '48 x 92 5/8 in'.");
            assertThat(refused(Lumber.class, "pieces", "2 m, 4.001 m", "board", "4 m"))
                    .hasMessage("pieces [4.001 m] is longer than a board of 4 m. Enter at most 4 m, or longer boards.");
            assertThat(packs(work(Lumber.class, "pieces", "4 m", "board", "4 m", "wastePercent", "0"), "boards"))
                    .isEqualTo(1);
        }
    }

    @Nested
    class Sheets {
        @Test
        void for_walls_with_openings() {
            assertThat(told(work(Panels.class, "area", "382 ft2", "openings", "40 ft2")))
                    .isEqualTo("""
                    net: 342 ft2; A = a - o; a: area, 382 ft2; o: openings, 40 ft2
                    sheets: 12 sheets (11.54); N = A / (l b) (1 + w), rounded up; A: area, 342 ft2; l: length, 8 ft; b: width \
                    covered, 4 ft; w: waste, 8 %
                    mass: 720 lb; M = N l b t g; N: sheets, 12; t: thickness, 0.625 in; g: density, 36 lb/ft3
                    """);
        }

        @Test
        void refuse_openings_as_large_as_the_area() {
            assertThat(refused(Panels.class, "area", "20 m2", "openings", "20 m2"))
                    .hasMessage("openings [20 m2] are no smaller than the area. Enter less than 20 m2.");
            assertThat(packs(work(Panels.class, "area", "20 m2", "openings", "19.9 m2"), "sheets"))
                    .isEqualTo(1);
        }
    }

    @Nested
    class Runs {
        @Test
        void of_pipe() {
            assertThat(told(work(Lengths.class, "total", "120 ft"))).isEqualTo("""
                    with-waste: 126 ft; G = L (1 + w); L: needed, 120 ft; w: waste, 5 %
                    pieces: 7 pieces (6.3); N = G / l, rounded up; G: with waste, 126 ft; l: length as sold, 20 ft
                    """);
        }
    }

    @Nested
    class ScrewsAndNails {
        private static Worksheet fasteners(String... inputs) {
            return work(Fasteners.class, inputs);
        }

        @Test
        void for_sheets_and_joints() {
            assertThat(told(fasteners("sheets", "13", "joints", "20"))).isEqualTo("""
                    in-sheet: 67 fasteners; 2 supports at the ends, n between: 2 (B / e + 1) + n (B / f + 1), and the long \
                    edges 2 (n + 1) (L / (n + 1) / e - 1), gaps rounded up; B: width, 4 ft; L: length, 8 ft; n: supports \
                    between, 5; e: along edges, 6 in; f: between, 1 ft; s: distance of supports, 1 ft 4 in
                    fasteners: 1,047; (N k + J p) (1 + w); N: sheets, 13; k: in one, 67; J: joints, 20; p: in a joint, 4; \
                    w: waste, 10 %
                    boxes: 3 boxes (2.092); rounded up; b: in a box, 500
                    """);
        }

        @Test
        void along_supports_further_apart_than_the_sheet_is_long() {
            // two ends of 2 (1.2 / 0.3 + 1) and two edges of 2.4 / 0.3 - 1 between them
            assertThat(amount(
                            fasteners(
                                    "sheets", "1",
                                    "sheetLength", "1.5 m",
                                    "sheetWidth", "1.2 m",
                                    "supportSpacing", "2 m",
                                    "edgeSpacing", "0.3 m"),
                            "in-sheet"))
                    .isEqualTo(2 * 5 + 2 * 4);
        }

        @Test
        void at_least_at_both_ends_of_a_narrow_sheet() {
            assertThat(amount(
                            fasteners(
                                    "sheets", "1",
                                    "sheetLength", "0.3 m",
                                    "sheetWidth", "0.1 m",
                                    "supportSpacing", "2 m",
                                    "edgeSpacing", "0.6 m"),
                            "in-sheet"))
                    .isEqualTo(4);
        }

        @Test
        void of_joints_alone() {
            assertThat(amount(fasteners("joints", "10", "wastePercent", "0"), "fasteners"))
                    .isEqualTo(40);
            assertThat(amount(fasteners("sheets", "1", "wastePercent", "0"), "fasteners"))
                    .isEqualTo(67);
        }

        @Test
        void for_nothing_are_refused() {
            assertThat(refused(Fasteners.class))
                    .hasMessage("sheets [0] and joints are both none. Enter the number of sheets or of joints.");
        }
    }

    @Nested
    class Paint {
        @Test
        void of_two_coats() {
            assertThat(told(work(Coating.class, "area", "382 ft2", "coats", "2", "wastePercent", "10")))
                    .isEqualTo("""
                    liquid: 8.404 gal; V = A n v / c (1 + w); A: area, 382 ft2; n: coats, 2; v: so much, 1 gal; c: covers, \
                    100 ft2; w: waste, 10 %
                    cans: 2 cans (1.681); rounded up; V: needed, 8.404 gal; p: in a can, 5 gal
                    labour: 10.75 h; T = A n / r + f; A: area, 382 ft2; n: coats, 2; r: area in an hour, 80 ft2; \
                    f: preparing, 1.2 h
                    """);
        }
    }

    @Nested
    class AnythingElse {
        @Test
        void with_its_reason() {
            Worksheet rolls = work(
                    Counted.class,
                    "number",
                    "156",
                    "perPack",
                    "200",
                    "wastePercent",
                    "15",
                    "pack",
                    "rolls",
                    "why",
                    "roof plan");
            assertThat(told(rolls)).isEqualTo("""
                    packs: 1 roll (0.897); N = n (1 + w) / p, rounded up; n: needed, 156; w: waste, 15 %; p: in a pack, 200
                    """);
            assertThat(line(rolls, "packs").source().text()).isEqualTo("roof plan");
        }

        @Test
        void refuses_words_that_are_none_or_too_many() {
            String blank = " ".repeat(40);
            assertThat(refused(Counted.class, "number", "1", "pack", blank))
                    .hasMessage("pack [" + blank + "] says nothing. Enter from 1 to 40 letters.");
            assertThat(refused(Counted.class, "number", "1", "pack", "p".repeat(41)))
                    .hasMessage("pack [" + "p".repeat(40) + "...] is too long. Enter from 1 to 40 letters.");
            assertThat(refused(Counted.class, "number", "1", "why", "w".repeat(201))
                            .input())
                    .isEqualTo("why");
            assertThat(packs(
                            work(Counted.class, "number", "1", "pack", "p".repeat(40), "why", "w".repeat(200)),
                            "packs"))
                    .isEqualTo(1);
        }
    }
}
