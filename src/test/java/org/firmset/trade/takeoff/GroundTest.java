package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.firmset.trade.takeoff.Inputs.refused;
import static org.firmset.trade.takeoff.Inputs.work;
import static org.firmset.trade.trace.Results.amount;
import static org.firmset.trade.trace.Results.engineers;
import static org.firmset.trade.trace.Results.line;
import static org.firmset.trade.trace.Results.notes;
import static org.firmset.trade.trace.Results.told;
import static org.firmset.trade.trace.Results.warnings;

import org.firmset.trade.trace.Known;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Digging and filling. */
class GroundTest {
    @Nested
    class Fill {
        private static Worksheet fill(String... more) {
            String[] all = new String[more.length + 4];
            String[] first = {"plan", "4 m x 2.5 m", "depth", "0.6 m"};
            System.arraycopy(first, 0, all, 0, 4);
            System.arraycopy(more, 0, all, 4, more.length);
            return work(BaseFill.class, all);
        }

        @Test
        void of_a_basin_with_rubble() {
            assertThat(told(work(
                            BaseFill.class,
                            "plan",
                            "8 ft x 8 ft",
                            "depth",
                            "2 ft",
                            "rubble",
                            "10 ft3",
                            "wastePercent",
                            "5")))
                    .isEqualTo("""
                    compacted: 4.741 yd3; V = A d; A: area, 64 ft2; d: depth, 2 ft
                    loose: 5.362 yd3; L = (V - r) / c (1 + w); V: compacted, 4.741 yd3; r: rubble, 0.3704 yd3; c: compacted \
                    for loose, 0.856; w: waste, 5 %
                    mass: 6.883 ton; M = (V - r) g (1 + w); V - r: compacted, without rubble, 4.37 yd3; g: density when compacted, 111.1 lb/ft3; w: waste, 5 %
                    lifts: 4 layers; n = d / (l c), rounded up; d: depth, 2 ft; l: loose layer, 8 in; c: compacted for loose, \
                    0.856
                    compacting: 12 min; t = n p A / (b v); n: layers, 4; p: passes, 4; A: area, 64 ft2; b: plate, 1 ft 8 in; \
                    v: way in a minute, 50 ft
                    labour: 7.35 h; T = L / r + t; L: loose, 5.362 yd3; r: moved in an hour, 0.75 yd3; t: compacting, \
                    0.2 h
                    """);
        }

        @Test
        void share_density_and_compactor_as_entered() {
            Worksheet fill = fill(
                    "compactedShare", "0.75",
                    "tonsPerCubicYard", "2",
                    "looseLift", "0.2 m",
                    "passes", "3",
                    "plate", "0.5 m",
                    "pacePerMinute", "10 m",
                    "volumePerHour", "2 m3");
            assertThat(amount(fill, "loose", "m3")).isCloseTo(8, within(1e-9));
            assertThat(line(fill, "loose").source().known()).isEqualTo(Known.PRACTICE);
            assertThat(line(fill(), "loose").source().known()).isEqualTo(Known.MEMORY);
            // 2 short tons a cubic yard
            assertThat(amount(fill, "mass", "t")).isCloseTo(6 * 2 * 0.90718474 / 0.764554857984, within(1e-6));
            assertThat(amount(fill, "lifts")).isEqualTo(4);
            assertThat(amount(fill, "compacting")).isCloseTo(4 * 3 * 10 / (0.5 * 10), within(1e-9));
            assertThat(amount(fill, "labour")).isCloseTo(8 / 2.0 + 24 / 60.0, within(1e-9));
        }

        @Test
        void loose_fill_is_what_is_bought() {
            assertThat(fill().lines(Line.Role.MATERIAL)).extracting(Line::key).containsExactly("loose");
        }

        @Test
        void layers_over_8_inches_are_warned_of() {
            assertThat(warnings(fill("looseLift", "8 in"))).isEmpty();
            assertThat(warnings(fill("looseLift", "8.01 in")))
                    .singleElement()
                    .asString()
                    .startsWith("Layers under a structure are at most 8 in (203 mm) loose");
        }

        @Test
        void clay_is_warned_of() {
            assertThat(warnings(fill("fill", "clay")))
                    .singleElement()
                    .asString()
                    .startsWith("Clay under a floor swells");
            assertThat(warnings(fill("fill", "earth"))).isEmpty();
        }

        @Test
        void fill_deeper_than_4_feet_is_for_an_engineer() {
            assertThat(engineers(work(BaseFill.class, "plan", "4 m x 4 m", "depth", "4 ft")))
                    .isEmpty();
            assertThat(engineers(work(BaseFill.class, "plan", "4 m x 4 m", "depth", "4.01 ft")))
                    .containsExactly(
                            "Fill deeper than 4 ft (1.2 m) settles, and pushes hard on the walls around it. Ask a"
                                    + " licensed engineer.");
        }

        @Test
        void rubble_is_noted_and_over_30_percent_for_an_engineer() {
            assertThat(notes(fill())).hasSize(1);
            assertThat(notes(fill("rubble", "0.001 m3")))
                    .hasSize(2)
                    .first()
                    .asString()
                    .startsWith("Rubble no larger than half a layer");
            assertThat(engineers(fill("rubble", "1.8 m3"))).isEmpty();
            assertThat(engineers(fill("rubble", "1.801 m3")))
                    .containsExactly(
                            "More than 30 % of this fill is rubble: it leaves hollows that settle later. Ask a licensed"
                                    + " engineer.");
        }

        @Test
        void more_rubble_than_fill_is_refused() {
            assertThat(refused(BaseFill.class, "plan", "4 m x 2.5 m", "depth", "0.6 m", "rubble", "6 m3"))
                    .hasMessage("rubble [6 m3] is more than the whole fill. Enter less than 6 m3, its solid volume.");
            assertThat(amount(fill("rubble", "5.9 m3"), "mass", "t")).isPositive();
        }
    }

    @Nested
    class Hole {
        private static Worksheet dig(String depth, String... more) {
            String[] all = new String[more.length + 4];
            String[] first = {"plan", "4 m x 2.5 m", "depth", depth};
            System.arraycopy(first, 0, all, 0, 4);
            System.arraycopy(more, 0, all, 4, more.length);
            return work(Dig.class, all);
        }

        @Test
        void a_trench_put_back_in_part() {
            assertThat(told(work(Dig.class, "plan", "120 ft x 24 in", "depth", "8 in", "backfill", "4 yd3")))
                    .isEqualTo("""
                    in-ground: 5.926 yd3; V = A d; A: area, 240 ft2; d: depth, 8 in
                    loose: 7.407 yd3; L = V (1 + s); V: in the ground, 5.926 yd3; s: swell, 25 %
                    kept: 4.444 yd3; K = B / (1 - k); B: put back, 4 yd3; k: shrink, 10 %
                    haul-off: 1.852 yd3; H = (V - K) (1 + s); V: in the ground, 5.926 yd3; K: kept, 4.444 yd3; s: swell, 25 %
                    labour: 11.85 h; T = V / r; V: in the ground, 5.926 yd3; r: dug in an hour, 0.5 yd3
                    """);
        }

        @Test
        void deeper_than_1_2_metres_is_for_an_engineer() {
            assertThat(engineers(dig("1.2 m"))).isEmpty();
            assertThat(engineers(dig("1.21 m")))
                    .singleElement()
                    .asString()
                    .startsWith("Deeper than 1.2 m (nearly 4 ft)");
        }

        @Test
        void blasting_is_for_licensed_people() {
            assertThat(notes(dig("1 m", "ground", "blasted-rock")))
                    .singleElement()
                    .asString()
                    .startsWith("Blasting");
            assertThat(notes(dig("1 m"))).isEmpty();
        }

        @Test
        void everything_may_be_put_back_but_no_more() {
            assertThat(amount(dig("1 m", "backfill", "9 m3"), "haul-off", "m3")).isCloseTo(0, within(1e-8));
            assertThat(refused(Dig.class, "plan", "4 m x 2.5 m", "depth", "1 m", "backfill", "9.001 m3"))
                    .hasMessage(
                            "backfill [9.001 m3] takes more ground than is dug. Enter at most 9 m3, or order fill.");
        }
    }
}
