package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.trade.takeoff.Inputs.refused;
import static org.firmset.trade.takeoff.Inputs.work;
import static org.firmset.trade.trace.Results.notes;
import static org.firmset.trade.trace.Results.told;

import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Test;

class BarMatTest {
    private static Worksheet mat(String length, String width, String edge) {
        return work(BarMat.class, "bar", "no-4", "length", length, "width", width, "edge", edge);
    }

    @Test
    void bars_both_ways() {
        assertThat(told(work(BarMat.class, "bar", "no-4", "length", "12 ft", "width", "10 ft", "spacing", "18 in")))
                .isEqualTo("""
                bars-along: 7 bars; n = (B - 2 e) / s, rounded down, + 1; B: side they lie across, 10 ft; e: edge, 3 in; \
                s: distance, 1 ft 6 in
                length-along: 11 ft 6 in; L - 2 e; L: side they lie along, 12 ft; e: edge, 3 in
                bars-across: 8 bars; n = (B - 2 e) / s, rounded down, + 1; B: side they lie across, 12 ft; e: edge, 3 in; \
                s: distance, 1 ft 6 in
                length-across: 9 ft 6 in; L - 2 e; L: side they lie along, 10 ft; e: edge, 3 in
                mass: 104.6 lb; M = S g; S: all bars, 156 ft 6 in; g: mass of its length, 0.668 lb/ft
                ties: 56 crossings; every second one tied is usual
                """);
    }

    @Test
    void sides_that_are_no_whole_number_of_distances_are_noted() {
        assertThat(notes(mat("126 in", "54 in", "3 in")))
                .containsExactly("For the bars to buy enter '5 x 3.048 m, 11 x 1.2192 m' in the cut list.");
        assertThat(notes(mat("126 in", "54.12 in", "3 in"))).hasSize(1);
        assertThat(notes(mat("126 in", "54.13 in", "3 in")))
                .hasSize(2)
                .first()
                .asString()
                .startsWith("The sides are no whole number of distances");
        assertThat(notes(mat("126.13 in", "54 in", "3 in"))).hasSize(2);
    }

    @Test
    void bars_longer_than_20_feet_need_laps() {
        assertThat(notes(mat("246 in", "54 in", "3 in"))).hasSize(1);
        assertThat(notes(mat("54 in", "246.1 in", "3 in")))
                .hasSize(2)
                .first()
                .asString()
                .startsWith("Some bars are longer than 20 ft");
    }

    @Test
    void an_edge_of_half_the_slab_is_refused() {
        assertThat(refused(BarMat.class, "bar", "no-4", "length", "2 m", "width", "0.4 m", "edge", "0.2 m"))
                .hasMessage("edge [0.2 m] is half the slab or more. Enter less than 0.2 m.");
        assertThat(refused(BarMat.class, "bar", "no-4", "length", "0.4 m", "width", "2 m", "edge", "0.2 m")
                        .input())
                .isEqualTo("edge");
        assertThat(mat("2 m", "0.4 m", "199 mm").line("bars-along")).isPresent();
    }
}
