package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.trade.takeoff.Inputs.refused;
import static org.firmset.trade.takeoff.Inputs.work;
import static org.firmset.trade.trace.Results.amount;
import static org.firmset.trade.trace.Results.keys;
import static org.firmset.trade.trace.Results.notes;
import static org.firmset.trade.trace.Results.told;
import static org.firmset.trade.trace.Results.warnings;

import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class BarRunTest {
    private static Worksheet run(String run, String... more) {
        String[] all = new String[more.length + 4];
        all[0] = "bar";
        all[1] = "no-4";
        all[2] = "run";
        all[3] = run;
        System.arraycopy(more, 0, all, 4, more.length);
        return work(BarRun.class, all);
    }

    @Test
    void straight_runs() {
        assertThat(told(run("40 ft", "lap", "20 in", "runs", "3"))).isEqualTo("""
                bars-each: 3 bars; n = (R - o) / (l - o), rounded up; R: run, 40 ft; l: bar, 20 ft; o: lap, 1 ft 8 in
                bars: 9 bars; N = n k; n: bars in one, 3; k: runs, 3
                in-place: 130 ft; runs with their laps, and corner bars
                mass: 86.86 lb; M = S g; S: in place, 130 ft; g: mass of its length, 0.668 lb/ft
                """);
    }

    @Test
    void loops_with_corner_bars() {
        assertThat(told(run("416 in", "loop", "true", "runs", "2", "corners", "4")))
                .isEqualTo("""
                bars-each: 2 bars; n = R / (l - o), rounded up; R: once round, 34 ft 8 in; l: bar, 20 ft; o: lap, 2 ft
                bars: 4 bars; N = n k; n: bars in one, 2; k: runs, 2
                corner-bars: 8 bars; c k; c: corners, 4; k: runs, 2
                corner-cut: 3 ft 10 3/4 in; 2 o - b; o: lap, 2 ft; b: taken off for the bend, 1.251 in
                in-place: 108 ft 6 in; runs with their laps, and corner bars
                mass: 72.49 lb; M = S g; S: in place, 108 ft 6 in; g: mass of its length, 0.668 lb/ft
                """);
    }

    @Test
    void corner_bars_have_to_be_cut_besides() {
        assertThat(notes(run("416 in", "loop", "true", "runs", "2", "corners", "4")))
                .containsExactly("Corner bars are not among the bars to buy: enter '8 x 1.1874 m' in the cut list.");
        Worksheet bentRound = run("416 in", "loop", "true");
        assertThat(keys(bentRound)).doesNotContain("corner-bars", "corner-cut");
        assertThat(notes(bentRound)).isEmpty();
        // 34 ft 8 in and two laps
        assertThat(amount(bentRound, "in-place", "in")).isEqualTo(416 + 2 * 24);
    }

    @Test
    void a_lap_under_40_diameters_is_warned_of_where_there_is_one() {
        assertThat(warnings(run("40 ft", "lap", "20 in"))).isEmpty();
        assertThat(warnings(run("40 ft", "lap", "19.9 in")))
                .singleElement()
                .asString()
                .startsWith("The lap is shorter than 40 diameters of the bar");
        assertThat(warnings(run("20 ft", "lap", "19.9 in")))
                .as("one bar has no lap")
                .isEmpty();
        assertThat(warnings(run("10 ft", "lap", "19.9 in", "loop", "true")))
                .as("a loop of one bar laps with itself")
                .hasSize(1);
        assertThat(warnings(run("20 ft", "lap", "19.9 in", "corners", "1"))).hasSize(1);
    }

    @Nested
    class Refusals {
        @Test
        void a_lap_as_long_as_the_bar() {
            assertThat(refused(BarRun.class, "bar", "no-4", "run", "40 ft", "stock", "1.5 m", "lap", "1.5 m"))
                    .hasMessage("lap [1.5 m] is as long as the bar. Enter less than 1.5 m or longer bars.");
            assertThat(run("40 ft", "stock", "1.5 m", "lap", "1.49 m").line("bars"))
                    .isPresent();
        }

        @Test
        void corner_bars_whose_legs_are_shorter_than_their_bend() {
            assertThat(refused(BarRun.class, "bar", "no-4", "run", "40 ft", "lap", "50 mm", "corners", "4"))
                    .hasMessage("lap [0.05 m] is shorter than the bend of a corner bar. Enter at least 0.051 m.");
            assertThat(run("40 ft", "lap", "50 mm").line("bars")).isPresent();
            assertThat(run("40 ft", "lap", "2 in", "corners", "4").line("bars")).isPresent();
        }
    }
}
