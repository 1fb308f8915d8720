package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.firmset.trade.takeoff.Inputs.refused;
import static org.firmset.trade.takeoff.Inputs.work;
import static org.firmset.trade.trace.Results.amount;
import static org.firmset.trade.trace.Results.keys;
import static org.firmset.trade.trace.Results.notes;
import static org.firmset.trade.trace.Results.packs;
import static org.firmset.trade.trace.Results.told;
import static org.firmset.trade.trace.Results.warnings;
import static org.firmset.trade.trace.Results.word;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.firmset.measure.UnitSystem;
import org.firmset.trade.trace.CutBar;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Results;
import org.firmset.trade.trace.Show;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CutListTest {
    private static Worksheet cut(String pieces, String... more) {
        String[] all = new String[more.length + 2];
        all[0] = "pieces";
        all[1] = pieces;
        System.arraycopy(more, 0, all, 2, more.length);
        return work(CutList.class, all);
    }

    @Test
    void twelve_bars_proven() {
        Worksheet list = cut("8 x 112 in, 10 x 88 in, 12 x 56 in, 6 x 40 in", "kerf", "0 mm");
        assertThat(told(list)).startsWith("""
                bars: 12 pieces; least total length, whole pieces; l: length of one, 20 ft
                wanted: 36 pieces
                net: 224 ft
                bought: 240 ft
                bound: 12 pieces; fractions of pieces allowed, rounded up, or all ways tried
                proven: yes, proven; the plan costs what the bound says
                """);
        assertThat(warnings(list)).isEmpty();
        assertThat(list.lines(Line.Role.MATERIAL)).extracting(Line::key).containsExactly("bars");
    }

    @Test
    void what_is_left_is_kept_or_wasted() {
        // a saw cut after each of two pieces of 2 m and the one of 2.5 m leaves 1 m less 9 mm, and 2.5 m less 3 mm
        String[] given = {"stock", "5 m", "kerf", "3 mm", "keepFrom", "2 m"};
        Worksheet list = cut("2 x 2 m, 2.5 m", given);
        assertThat(list.cuts())
                .containsExactly(
                        new CutBar(1, 5, List.of(2.5, 2.0), 5 - 4.5 - 0.006), new CutBar(1, 5, List.of(2.0), 2.997));
        assertThat(amount(list, "waste", "m")).isCloseTo(0.494, within(1e-9));
        assertThat(word(list, "kept")).isEqualTo("1 x 2.997 m");
        assertThat(notes(list))
                .containsExactly("Enter the left-overs to keep as offcuts of a later cut list: '1 x 2.997 m'.");
        given[5] = "2.998 m";
        assertThat(keys(cut("2 x 2 m, 2.5 m", given))).doesNotContain("kept");
        assertThat(amount(cut("2 x 2 m, 2.5 m", given), "waste", "m")).isCloseTo(0.494 + 2.997, within(1e-9));
    }

    @Test
    void waste_of_bars_cut_alike_is_counted_for_each() {
        Worksheet list = cut("6 x 2.5 m", "stock", "3 m", "kerf", "0 mm");
        assertThat(list.cuts()).containsExactly(new CutBar(6, 3, List.of(2.5), 0.5));
        assertThat(amount(list, "waste", "m")).isCloseTo(3, within(1e-9));
    }

    @Test
    void kept_left_overs_are_listed_from_the_longest_and_may_be_entered_again() {
        Worksheet list = cut("2 x 2.2 m, 2 x 3.1 m", "stock", "4 m", "kerf", "0 mm", "keepFrom", "0.5 m");
        assertThat(word(list, "kept")).isEqualTo("2 x 1.8 m, 2 x 0.9 m");
        Worksheet later = cut("2 x 1.7 m", "stock", "4 m", "offcuts", word(list, "kept"), "kerf", "0 mm");
        assertThat(packs(later, "bars")).isZero();
    }

    @Test
    void a_bar_that_is_used_up_leaves_nothing() {
        Worksheet list = cut("2 x 2.5 m", "stock", "5 m", "kerf", "0 mm", "keepFrom", "0 m");
        assertThat(list.cuts()).containsExactly(new CutBar(1, 5, List.of(2.5, 2.5), 0));
        assertThat(keys(list)).doesNotContain("kept");
        assertThat(amount(list, "waste", "m")).isZero();
    }

    @Test
    void the_last_cut_may_run_off_the_end() {
        // 2.499 + 0.003 + 2.499 m leave no room for another cut
        Worksheet list = cut("2 x 2.4985 m", "stock", "5 m", "kerf", "3 mm");
        assertThat(packs(list, "bars")).isEqualTo(1);
        assertThat(list.cuts().getFirst().left()).isZero();
    }

    @Test
    void a_left_over_of_just_the_length_worth_keeping_is_kept() {
        assertThat(word(cut("3 m", "stock", "5 m", "kerf", "0 mm", "keepFrom", "2 m"), "kept"))
                .isEqualTo("1 x 2 m");
    }

    @Test
    void bars_come_in_the_order_of_stock_and_pieces() {
        Worksheet list = cut("3 x 5 m, 3 x 3 m, 2 x 2 m", "stock", "4 m, 5 m", "kerf", "0 mm");
        assertThat(list.cuts())
                .extracting(bar -> bar.stock() + " " + bar.pieces())
                .containsExactly("4.0 [3.0]", "5.0 [5.0]", "5.0 [3.0, 2.0]");
    }

    @Test
    void what_is_not_proven_says_so() {
        // even lengths never fill an odd one, which no bound on length sees, and there are too many patterns to try
        String even = IntStream.range(0, 24)
                .mapToObj(i -> "3 x " + (1000 + 34 * i) + " mm")
                .collect(Collectors.joining(", "));
        Worksheet list = cut(even + ", 7842 mm", "stock", "17.999 m", "kerf", "0 mm");
        assertThat(word(list, "proven")).isEqualTo("not proven");
        assertThat(packs(list, "bars")).isEqualTo(7);
        assertThat(amount(list, "bound")).isEqualTo(6);
        assertThat(warnings(list))
                .containsExactly("This is a good way of cutting, but a better one may exist with 6 pieces.");
        assertThat(warnings(cut(even + ", 7842 mm", "stock", "17.999 m", "offcuts", "1 m", "kerf", "0 mm")))
                .as("money of several lengths is no number of pieces")
                .allMatch(w -> w.endsWith("may exist."));
    }

    @Test
    void how_to_cut_is_told_in_a_table() {
        Worksheet list = cut("6 x 2.5 m, 2 x 1 m", "stock", "3 m", "kerf", "0 mm");
        List<String> rows = list.tables().getFirst().rows().stream()
                .map(r -> r.stream()
                        .map(a -> Show.amount(a, UnitSystem.METRIC))
                        .toList()
                        .toString())
                .toList();
        assertThat(rows).containsExactly("[6, 3 m, 1, 0.5 m]", "[1, 3 m, 2, 1 m]");
    }

    @Test
    void two_lengths_that_can_be_bought() {
        // 4 + 3 m and 3 m from 7 and 3 m, not from two of 7
        Worksheet list = cut("4 m, 2 x 3 m", "stock", "7 m, 3 m", "kerf", "0 mm");
        assertThat(told(list, UnitSystem.METRIC)).startsWith("""
                bars: 1 piece; least total length, whole pieces; l: length of one, 7 m
                bars-2: 1 piece; least total length, whole pieces; l: length of one, 3 m
                wanted: 3 pieces
                net: 10 m
                bought: 10 m
                proven: yes, proven;""");
        assertThat(keys(list)).as("several lengths have no bound in pieces").doesNotContain("bound");
        assertThat(Results.line(list, "bars").name()).isEqualTo("To buy, length 1");
        assertThat(Results.line(cut("4 m"), "bars").name()).isEqualTo("To buy");
    }

    @Test
    void offcuts_save_what_is_bought() {
        Worksheet list = cut("3 x 2 m", "stock", "6 m", "offcuts", "2 x 2.1 m, 2.05 m", "kerf", "0 mm");
        assertThat(packs(list, "bars")).isZero();
        assertThat(amount(list, "bought", "m")).isZero();
        assertThat(keys(list)).doesNotContain("bound");
        assertThat(list.cuts()).extracting(CutBar::stock).containsExactly(2.1, 2.05);
    }

    @Test
    void no_more_offcuts_are_used_than_are_there() {
        assertThat(packs(cut("3 x 2 m", "stock", "6 m", "offcuts", "2 x 2.1 m", "kerf", "0 mm"), "bars"))
                .isEqualTo(1);
    }

    @Test
    void short_offcuts_are_used_before_long_ones() {
        Worksheet list = cut("2 m", "stock", "6 m", "offcuts", "5 m, 2.1 m", "kerf", "0 mm");
        assertThat(list.cuts()).extracting(CutBar::stock).containsExactly(2.1);
    }

    @Test
    void an_offcut_may_be_longer_than_what_is_bought() {
        assertThat(packs(cut("7 m", "stock", "6 m", "offcuts", "8 m"), "bars")).isZero();
    }

    @Test
    void equal_parts_of_a_bar_do_not_fail_by_what_decimals_round_off() {
        // 6.096 m / 13 is 0.468923077 m to nine decimals
        assertThat(packs(cut("13 x 0.468923077 m", "kerf", "0 mm"), "bars")).isEqualTo(1);
    }

    @Test
    void long_offcuts_that_are_just_enough_are_enough() {
        // longest first and well filled bars both leave a piece over; 12 + 5 + 3, 10 + 6 + 4 and 9 + 9 + 2 do not
        Worksheet list = cut(
                "12 ft, 10 ft, 2 x 9 ft, 6 ft, 5 ft, 4 ft, 3 ft, 2 ft",
                "stock",
                "1 ft",
                "offcuts",
                "3 x 20 ft",
                "kerf",
                "0 mm");
        assertThat(packs(list, "bars")).isZero();
        assertThat(list.cuts()).hasSize(3).allMatch(bar -> bar.left() == 0);
    }

    @Nested
    class Refusals {
        @Test
        void no_piece_and_no_stock() {
            assertThat(refused(CutList.class, "pieces", "none"))
                    .hasMessage("pieces [none] names no piece. Enter at least one, such as '8 x 112 in'.");
            assertThat(refused(CutList.class, "pieces", "1 m", "stock", "none"))
                    .hasMessage("stock [none] names no length. Enter at least one, such as '20 ft'.");
        }

        @Test
        void stock_with_a_number() {
            assertThat(refused(CutList.class, "pieces", "1 m", "stock", "3 x 6 m"))
                    .hasMessage(
                            "stock [3 x 6 m] has a number in it. Enter only lengths that can be bought; what is at hand"
                                    + " belongs to the offcuts.");
        }

        @Test
        void stock_and_offcuts_that_nobody_carries() {
            assertThat(refused(CutList.class, "pieces", "1 m", "stock", "18.001 m"))
                    .hasMessage("stock [1 x 18.001 m] is longer than 18 m. Enter at most 18 m.");
            assertThat(refused(CutList.class, "pieces", "1 m", "offcuts", "18.001 m")
                            .input())
                    .isEqualTo("offcuts");
            assertThat(packs(cut("1 m", "stock", "18 m", "offcuts", "none"), "bars"))
                    .isEqualTo(1);
        }

        @Test
        void a_piece_longer_than_all_stock() {
            assertThat(refused(CutList.class, "pieces", "2 m, 6.001 m", "stock", "6 m, 3 m"))
                    .hasMessage(
                            "pieces [6.001 m] is longer than the longest stock, 6 m. Enter longer stock, or divide the piece"
                                    + " with a lap or joint.");
            assertThat(packs(cut("6 m", "stock", "6 m"), "bars")).isEqualTo(1);
        }

        @Test
        void pieces_for_which_the_long_offcuts_run_out() {
            assertThat(refused(CutList.class, "pieces", "2 x 7 m", "stock", "6 m", "offcuts", "8 m"))
                    .hasMessage(
                            "pieces [2 x 7 m] do not all find room in this stock. Enter longer stock or shorter pieces.");
        }
    }
}
