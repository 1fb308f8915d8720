package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.trade.takeoff.Inputs.refused;
import static org.firmset.trade.takeoff.Inputs.work;
import static org.firmset.trade.trace.Results.amount;
import static org.firmset.trade.trace.Results.told;
import static org.firmset.trade.trace.Results.warnings;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class FormsTest {
    @Test
    void two_boards_high_with_a_key() {
        assertThat(told(work(Forms.class, "edge", "44 ft", "inner", "10 ft", "wastePercent", "5", "height", "8 in")))
                .isEqualTo("""
                rows: 2; r = H / b, rounded up; H: height, 8 in; b: board, 5 1/2 in
                stakes: 11 stakes; s = E / d, rounded up; E: edge, 44 ft; d: distance, 4 ft
                boards: 9 boards (8.531); N = ((E + I) r + s l) (1 + w) / L, rounded up; E: edge, 44 ft; I: inner forms, \
                10 ft; r: boards above each other, 2; s: stakes, 11; l: length of a stake, 2 ft; w: waste, 5 %; L: length of \
                a board, 16 ft
                labour: 5.4 h; T = (E + I) / r; E: edge, 44 ft; I: inner forms, 10 ft; r: edge in an hour, 10 ft
                """);
    }

    @Test
    void stakes_at_hand_take_no_board() {
        assertThat(amount(work(Forms.class, "edge", "48 ft", "stake", "0 m"), "boards"))
                .isEqualTo(3);
    }

    @Test
    void forms_higher_than_2_feet_are_warned_of() {
        String[] given = {"edge", "44 ft", "stake", "5 ft", "height", "24 in"};
        assertThat(warnings(work(Forms.class, given))).isEmpty();
        given[5] = "24.1 in";
        assertThat(warnings(work(Forms.class, given)))
                .singleElement()
                .asString()
                .startsWith("Forms higher than 2 ft (0.6 m)");
    }

    @Nested
    class Refusals {
        @Test
        void stakes_longer_than_a_board() {
            assertThat(refused(Forms.class, "edge", "10 m", "boardLength", "1 m", "stake", "1.01 m"))
                    .hasMessage("stake [1.01 m] is longer than a board. Enter at most 1 m.");
            assertThat(work(Forms.class, "edge", "10 m", "boardLength", "1 m", "stake", "1 m")
                            .line("boards"))
                    .isPresent();
        }

        @Test
        void stakes_that_do_not_reach_into_the_ground() {
            assertThat(refused(Forms.class, "edge", "10 m", "height", "0.5 m", "stake", "0.5 m"))
                    .hasMessage(
                            "stake [0.5 m] is no longer than the form is high, so nothing of it stands in the ground. Enter"
                                    + " more than 0.5 m, or 0 when stakes are at hand.");
            assertThat(work(Forms.class, "edge", "10 m", "height", "0.5 m", "stake", "0.501 m")
                            .line("boards"))
                    .isPresent();
            assertThat(work(Forms.class, "edge", "10 m", "height", "0.5 m", "stake", "0 m")
                            .line("boards"))
                    .isPresent();
        }
    }
}
