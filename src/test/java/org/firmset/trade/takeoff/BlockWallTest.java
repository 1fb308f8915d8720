package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.firmset.trade.takeoff.Inputs.refused;
import static org.firmset.trade.takeoff.Inputs.work;
import static org.firmset.trade.trace.Results.amount;
import static org.firmset.trade.trace.Results.engineers;
import static org.firmset.trade.trace.Results.notes;
import static org.firmset.trade.trace.Results.term;
import static org.firmset.trade.trace.Results.told;

import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class BlockWallTest {
    private static final String CUT =
            "A side is no whole number of half blocks (0.2032 m): each course needs a block cut to fit.";

    private static Worksheet wall(String length, String width, String height, String... more) {
        String[] all = new String[more.length + 6];
        String[] first = {"length", length, "width", width, "height", height};
        System.arraycopy(first, 0, all, 0, 6);
        System.arraycopy(more, 0, all, 6, more.length);
        return work(BlockWall.class, all);
    }

    @Test
    void walls_round_a_rectangle_with_an_opening() {
        assertThat(told(wall("112 in", "112 in", "24 in", "openings", "4 ft2", "filledPercent", "50")))
                .isEqualTo("""
                courses: 3 courses; n = H / h, rounded up; H: height, 2 ft; h: course with its joint, 8 in
                blocks-in-course: 26 blocks; c = (2 (L + B) - 4 t) / l; L: length outside, 9 ft 4 in; B: width outside, \
                9 ft 4 in; t: width of the wall, 8 in; l: block with its joint, 1 ft 4 in
                blocks-net: 73.5 blocks; N = c n - o p; c: blocks in a course, 26; n: courses, 3; o: openings, 4 ft2; \
                p: blocks for an area, 1.125 a ft2
                blocks: 78 blocks (77.18); N (1 + w), rounded up once; N: blocks without waste, 73.5; w: waste, 5 %
                mortar: 7 bags (6.431); M = N / b, rounded up; N: blocks with waste, 77.2; b: blocks for a bag, 12
                labour: 17.1 h; T = N / r + f; N: blocks laid, 73.5; r: blocks an hour, 5; f: layout and clearing up, 2.4 h
                mass-hollow: 2,384 lb; M = g A; g: its area, without the mortar, 36.5 lb/ft2; A: wall, 65.33 ft2
                mass-filled: 3,970 lb; M = (g + f q) A; g: its area before, 36.5 lb/ft2; f: share of the cells, 50 %; \
                q: grout in its area, 48.6 lb/ft2; A: wall, 65.33 ft2
                """);
    }

    @Test
    void a_straight_wall() {
        assertThat(told(wall("20 ft", "0 m", "8 ft"))).contains("""
                blocks-in-course: 15 blocks; c = L / l; L: length, 20 ft; l: block with its joint, 1 ft 4 in
                blocks-net: 180 blocks;""");
    }

    @Test
    void what_is_bought_is_marked() {
        assertThat(wall("20 ft", "0 m", "8 ft").lines(Line.Role.MATERIAL))
                .extracting(Line::key)
                .containsExactly("blocks", "mortar");
        assertThat(wall("20 ft", "0 m", "8 ft").lines(Line.Role.LABOUR))
                .extracting(Line::key)
                .containsExactly("labour");
    }

    @Test
    void an_unfilled_wall_weighs_what_it_weighs_hollow() {
        Worksheet hollow = wall("20 ft", "0 m", "8 ft", "filledPercent", "0");
        assertThat(amount(hollow, "mass-filled", "kg")).isEqualTo(amount(hollow, "mass-hollow", "kg"));
        assertThat(term(hollow, "mass-filled", "q", "")).isZero();
    }

    @Test
    void mass_is_that_of_the_courses_counted() {
        // two courses are counted for 21 cm; without their opening 0.1064 m2 are left, however low the wall is entered
        Worksheet low = wall("1 m", "0 m", "0.21 m", "openings", "0.3 m2");
        assertThat(amount(low, "courses")).isEqualTo(2);
        assertThat(term(low, "mass-hollow", "A", "m2")).isCloseTo(0.4064 - 0.3, within(1e-9));
        assertThat(amount(low, "mass-filled", "kg")).isPositive();
    }

    @Test
    void heights_and_sides_that_need_cut_blocks_are_noted() {
        assertThat(notes(wall("20 ft", "0 m", "8 ft"))).hasSize(1);
        assertThat(notes(wall("239 5/8 in", "0 m", "95 5/8 in")))
                .as("without the last joints")
                .hasSize(1);
        assertThat(notes(wall("20 ft", "0 m", "95 1/2 in")))
                .containsExactly(
                        "The height is no whole number of courses; 12 are counted.",
                        "Brace fresh walls against wind and cover their tops every night, about 2 ft down the sides.");
        assertThat(notes(wall("239 1/2 in", "0 m", "8 ft"))).first().isEqualTo(CUT);
        assertThat(notes(wall("240.1 in", "0 m", "8 ft"))).first().isEqualTo(CUT);
        assertThat(notes(wall("240.07 in", "0 m", "8 ft"))).hasSize(1);
        assertThat(notes(wall("20 ft", "100 in", "8 ft"))).first().isEqualTo(CUT);
        assertThat(notes(wall("100 in", "20 ft", "8 ft"))).first().isEqualTo(CUT);
        assertThat(notes(wall("20 ft", "8 ft", "8 ft")))
                .first()
                .isEqualTo("The rule that does not take the corners off counts 42 blocks in a course.");
    }

    @Test
    void the_rule_of_thumb_is_shown_to_a_hundredth() {
        assertThat(notes(wall("101 in", "96 in", "8 ft")))
                .contains("The rule that does not take the corners off counts 24.63 blocks in a course.");
    }

    @Test
    void openings_need_more_than_is_counted() {
        assertThat(notes(wall("20 ft", "0 m", "8 ft", "openings", "0.1 m2")))
                .first()
                .asString()
                .startsWith("Openings need lintels");
    }

    @Test
    void a_wall_over_18_times_its_width_is_for_an_engineer() {
        assertThat(engineers(wall("20 ft", "0 m", "12 ft"))).isEmpty();
        assertThat(engineers(wall("20 ft", "0 m", "12 ft 8 in")))
                .containsExactly(
                        "The wall is higher than 18 times its width, beyond the empirical rules of TMS 402 (from"
                                + " memory). Ask a licensed engineer.");
        assertThat(engineers(wall("20 ft", "0 m", "9 ft 4 in", "block", "in-6")))
                .hasSize(1);
    }

    @Nested
    class Refusals {
        @Test
        void openings_as_large_as_the_wall() {
            assertThat(refused(BlockWall.class, "length", "2.032 m", "height", "1.016 m", "openings", "2.065 m2"))
                    .hasMessage("openings [2.065 m2] are no smaller than the wall. Enter less than 2.064 m2.");
            assertThat(wall("2.032 m", "0 m", "1.016 m", "openings", "2.064 m2").line("blocks"))
                    .isPresent();
        }

        @Test
        void a_rectangle_without_room_inside() {
            assertThat(refused(BlockWall.class, "length", "2 m", "width", "16 in", "height", "1 m"))
                    .hasMessage(
                            "width [0.4064 m] leaves no room inside walls of 8 x 8 x 16 in. Enter more than 0.4064 m,"
                                    + " measured outside.");
            assertThat(refused(BlockWall.class, "length", "0.4 m", "width", "2 m", "height", "1 m"))
                    .hasMessageStartingWith("length [0.4 m] leaves no room");
            assertThat(wall("2 m", "0.407 m", "1 m").line("blocks")).isPresent();
        }

        @Test
        void of_two_sides_alike_the_width_is_named() {
            assertThat(refused(BlockWall.class, "length", "0.4 m", "width", "0.4 m", "height", "1 m")
                            .input())
                    .isEqualTo("width");
        }

        @Test
        void limits_of_the_group() {
            assertThat(refused(BlockWall.class, "length", "61 m", "height", "1 m"))
                    .hasMessage("length [61 m] is too large. Enter from 0.2 m to 60 m.");
        }
    }
}
