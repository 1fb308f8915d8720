package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.trade.takeoff.Inputs.refused;
import static org.firmset.trade.takeoff.Inputs.work;
import static org.firmset.trade.trace.Results.amount;
import static org.firmset.trade.trace.Results.notes;
import static org.firmset.trade.trace.Results.told;

import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class BentBarTest {
    private static Worksheet bent(String legs, String... more) {
        String[] all = new String[more.length + 4];
        all[0] = "bar";
        all[1] = "no-4";
        all[2] = "legs";
        all[3] = legs;
        System.arraycopy(more, 0, all, 4, more.length);
        return work(BentBar.class, all);
    }

    @Test
    void bars_with_a_leg_and_a_hook() {
        assertThat(told(bent("106 in, 8 in", "count", "18", "hooks180", "1"))).isEqualTo("""
                cut-length: 9 ft 10 3/4 in; c = sum - n b + k a; sum: legs, 9 ft 6 in; n: bends, 1; b: taken off for a \
                bend, 1.251 in; k: hooks of 180 degrees, 1; a: added for a hook, 5.998 in
                mass: 119 lb; M = n c g; n: bars, 18; c: cut length, 9 ft 10 3/4 in; g: mass of its length, 0.668 lb/ft
                labour: 5.5 h; T = n (1 + b) / r + s; n: bars, 18; b: bends and hooks of each, 2; r: cuts and bends an \
                hour, 12; s: bench, 1 h
                """);
    }

    @Test
    void a_straight_bar_is_only_cut() {
        Worksheet straight = bent("44 in", "count", "12");
        assertThat(amount(straight, "cut-length", "in")).isEqualTo(44);
        assertThat(amount(straight, "labour")).isEqualTo(2);
    }

    @Test
    void legs_with_a_number_are_so_many_legs() {
        // a frame of four sides and a lap: five legs, four bends of 1.251 in
        assertThat(amount(bent("4 x 20 in, 8 in"), "cut-length", "in"))
                .isEqualTo(amount(bent("20 in, 20 in, 20 in, 20 in, 8 in"), "cut-length", "in"));
    }

    @Test
    void what_to_enter_in_the_cut_list_is_said() {
        assertThat(notes(bent("106 in, 8 in", "count", "18")))
                .containsExactly("For the bars to buy enter '18 x 2.8638 m' in the cut list.");
    }

    @Test
    void an_end_leg_under_that_of_a_standard_hook_is_noted() {
        assertThat(notes(bent("106 in, 8 in"))).hasSize(1);
        assertThat(notes(bent("106 in, 7.9 in")))
                .hasSize(2)
                .first()
                .isEqualTo("The shorter end leg is under the 0.203 m of a standard 90 degree hook, measured outside.");
        assertThat(notes(bent("7.9 in, 106 in"))).hasSize(2);
        assertThat(notes(bent("7.9 in"))).as("no bend").hasSize(1);
        assertThat(notes(bent("106 in, 7.9 in", "hooks180", "1")))
                .as("ends in a hook")
                .hasSize(1);
    }

    @Test
    void a_leg_may_be_as_short_as_its_bends() {
        // half the bend and the bar: 2 in at each turn
        assertThat(bent("10 in, 2 in").line("cut-length")).isPresent();
        assertThat(bent("2 in, 10 in").line("cut-length")).isPresent();
        assertThat(bent("2 x 9 m").line("cut-length")).isPresent();
        assertThat(bent("10 in, 4 in, 10 in").line("cut-length")).isPresent();
        assertThat(bent("708.6 in").line("cut-length")).isPresent();
    }

    @Nested
    class Refusals {
        @Test
        void no_leg() {
            assertThat(refused(BentBar.class, "bar", "no-4", "legs", "none"))
                    .hasMessage("legs [none] has no leg. Enter at least one, such as '106 in, 8 in'.");
        }

        @Test
        void an_end_leg_shorter_than_half_a_bend() {
            assertThat(refused(BentBar.class, "bar", "no-4", "legs", "10 in, 1.99 in"))
                    .hasMessage(
                            "legs [0.050546 m] is shorter than the bend itself. Enter at least 0.051 m for this leg.");
            assertThat(refused(BentBar.class, "bar", "no-4", "legs", "1.99 in, 10 in")
                            .input())
                    .isEqualTo("legs");
        }

        @Test
        void a_whole_millimetre_is_asked_for_as_it_is() {
            assertThat(refused(BentBar.class, "bar", "mm-10", "legs", "10 in, 39 mm")
                            .remedy())
                    .isEqualTo("Enter at least 0.04 m for this leg");
        }

        @Test
        void a_leg_between_two_bends_shorter_than_both() {
            assertThat(refused(BentBar.class, "bar", "no-4", "legs", "10 in, 3.99 in, 10 in"))
                    .hasMessage(
                            "legs [0.101346 m] is shorter than the bend itself. Enter at least 0.102 m for this leg.");
        }

        @Test
        void a_bar_that_nobody_sells() {
            assertThat(refused(BentBar.class, "bar", "no-4", "legs", "2 x 9.001 m"))
                    .hasMessage(
                            "legs [2 x 9.001 m] are together longer than any bar. Enter at most 18 m for all legs of one"
                                    + " bar, and lap the rest.");
        }
    }
}
