package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.firmset.trade.takeoff.Inputs.refused;
import static org.firmset.trade.takeoff.Inputs.work;
import static org.firmset.trade.trace.Results.amount;
import static org.firmset.trade.trace.Results.told;
import static org.firmset.trade.trace.Results.warnings;
import static org.firmset.trade.trace.Results.word;

import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Test;

class BatchesTest {
    private static Worksheet pour(String... inputs) {
        return work(Batches.class, inputs);
    }

    @Test
    void a_cap_of_67_bags() {
        assertThat(told(pour("bags", "67"))).isEqualTo("""
                batches: 34 batches; n = B / b, rounded up; B: bags, 67; b: bags in a batch, 2
                pouring: 6.8 h; T = n m; n: batches, 34; m: minutes for one, 12 min
                batches-in-time: 5 batches; k = w / m, rounded down; w: working time, 60 min; m: minutes for one, 12 min
                strip: 5 ft 5 13/16 in; a = k b y / (t f); k: batches in time, 5; b: bags in a batch, 2; y: yield of a bag, \
                0.6 ft3; t: thickness, 4 in; f: width of the edge, 3 ft 3 3/8 in
                covered: 15:18; start + T + f; T: pouring, 6.8 h; f: floating and covering, 1.5 h
                bags-that-day: 67 bags; as many batches as end in time
                """);
        assertThat(warnings(pour("bags", "67"))).isEmpty();
    }

    @Test
    void a_wider_edge_is_met_sooner() {
        // 5 batches of 2 bags of 20 L on 0.1 x 4 m
        assertThat(amount(pour("bags", "67", "bagYield", "20 L", "thickness", "0.1 m", "front", "4 m"), "strip", "m"))
                .isCloseTo(0.5, within(1e-9));
    }

    @Test
    void a_batch_that_stiffens_before_the_next_is_warned_of() {
        assertThat(warnings(pour("bags", "10", "workingMinutes", "12"))).isEmpty();
        Worksheet slow = pour("bags", "10", "workingMinutes", "11");
        assertThat(amount(slow, "batches-in-time")).isZero();
        assertThat(warnings(slow))
                .singleElement()
                .asString()
                .startsWith("One batch takes longer than it stays workable");
    }

    @Test
    void less_than_an_hour_before_dark_is_warned_of() {
        // 10 batches of 12 min and 90 min to finish: 10:30
        assertThat(warnings(pour("bags", "20", "dark", "11:30"))).isEmpty();
        assertThat(warnings(pour("bags", "20", "dark", "11:29")))
                .containsExactly("Less than an hour is left before 11:29: a broken mixer would leave a cold joint.");
        assertThat(warnings(pour("bags", "20", "dark", "10:30")))
                .singleElement()
                .asString()
                .startsWith("Less than an hour");
    }

    @Test
    void what_does_not_end_in_time_is_divided() {
        Worksheet late = pour("bags", "20", "dark", "10:29");
        assertThat(warnings(late))
                .containsExactly(
                        "This ends 1 min after 10:29: start earlier, take a helper, or divide it at a planned joint with"
                                + " a key; 18 of 20 bags fit.");
        assertThat(amount(late, "bags-that-day")).isEqualTo(18);
        assertThat(amount(pour("bags", "20", "dark", "08:00"), "bags-that-day")).isZero();
    }

    @Test
    void what_goes_on_past_midnight_says_so() {
        // from 20:00, 2 h for the batches and 2 h to finish
        assertThat(word(pour("bags", "20", "start", "20:00", "dark", "23:00", "finishHours", "2"), "covered"))
                .isEqualTo("00:00 the next day");
        assertThat(word(pour("bags", "20", "start", "19:59", "dark", "23:00", "finishHours", "2"), "covered"))
                .isEqualTo("23:59");
    }

    @Test
    void a_day_that_ends_before_it_begins_is_refused() {
        assertThat(refused(Batches.class, "bags", "20", "start", "07:00", "dark", "07:00"))
                .hasMessage("dark [07:00] is not after the first batch. Enter a time after 07:00.");
        assertThat(pour("bags", "20", "start", "07:00", "dark", "07:01").line("covered"))
                .isPresent();
    }
}
