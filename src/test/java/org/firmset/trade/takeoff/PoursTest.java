package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.firmset.trade.takeoff.Inputs.refused;
import static org.firmset.trade.takeoff.Inputs.work;
import static org.firmset.trade.trace.Results.amount;
import static org.firmset.trade.trace.Results.engineers;
import static org.firmset.trade.trace.Results.notes;
import static org.firmset.trade.trace.Results.told;
import static org.firmset.trade.trace.Results.warnings;

import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Slabs, footings, pads: what lies between the forms, and what is found there. */
class PoursTest {
    @Nested
    class Slabs {
        private static Worksheet slab(String plan, String thickness, String depth, String width) {
            return work(Slab.class, "plan", plan, "thickness", thickness, "edgeDepth", depth, "edgeWidth", width);
        }

        @Test
        void with_a_deeper_edge_steel_and_sleeves() {
            assertThat(told(work(
                            Slab.class,
                            "plan",
                            "12 ft x 10 ft",
                            "thickness",
                            "4 in",
                            "edgeDepth",
                            "8 in",
                            "edgeWidth",
                            "12 in",
                            "steel",
                            "100 lb",
                            "sleeves",
                            "0.5 ft3")))
                    .isEqualTo("""
                    area: 120 ft2
                    between-forms: 69.33 ft3; G = A t + P w e; A: area, 120 ft2; t: thickness, 4 in; P: edge all round, \
                    44 ft; w: width of the deeper edge, 1 ft; e: how much deeper, 8 in
                    volume: 68.63 ft3; V = G - s / d - e; G: volume between the forms, 69.33 ft3; s: bars, 100 lb; d: density \
                    of steel, 490 lb/ft3; e: sleeves and brackets, 0.5 ft3
                    volume-with-waste: 75.49 ft3; G = V (1 + w); V: net volume, 68.63 ft3; w: waste, 10 %
                    bags: 126 bags (125.8); B = G / y, rounded up once; G: volume with waste, 75.49 ft3; y: yield of a bag, \
                    0.6 ft3
                    bag-mass: 10,080 lb; M = B m; B: bags, 126; m: mass of a bag, 80 lb
                    mixing-water: 94.5 gal; W = B q; B: bags, 126; q: water for a bag, 0.75 gal
                    wash-water: 94.5 gal; about as much again; W: mixing water, 94.5 gal
                    labour: 26.35 h; T = B / r + f; B: bags, 126; r: bags mixed and placed in an hour of labour, 5; \
                    f: setting up, finishing and washing, 1.15 h
                    form-edge: 44 ft; all round, inner edges too
                    wet-cure-water: 41.23 gal; C = A q d; A: area, 120 ft2; q: for a square metre and day, 0.5283 gal; \
                    d: days, 7
                    """);
        }

        @Test
        void an_even_one_has_no_note_of_corners() {
            assertThat(notes(slab("4 m x 3 m", "0.1 m", "0 m", "0 m"))).hasSize(1);
            assertThat(notes(slab("4 m x 3 m", "0.1 m", "0.2 m", "0.3 m")))
                    .last()
                    .asString()
                    .startsWith("The deeper edge is reckoned along the outside");
        }

        @Test
        void a_round_one() {
            Worksheet round = slab("round 2 m", "0.1 m", "0 m", "0 m");
            assertThat(amount(round, "between-forms", "m3")).isCloseTo(Math.PI * 0.1, within(1e-8));
            assertThat(amount(round, "form-edge", "m")).isCloseTo(Math.PI * 2, within(1e-8));
        }

        @Test
        @DisplayName("IRC R506.1, memory: 3 1/2 in on the ground")
        void a_thin_one_is_warned_of() {
            assertThat(warnings(slab("4 m x 3 m", "3 1/2 in", "0 m", "0 m"))).isEmpty();
            assertThat(warnings(slab("4 m x 3 m", "3.4 in", "0 m", "0 m")))
                    .singleElement()
                    .asString()
                    .startsWith("Thinner than 3 1/2 in (89 mm)");
        }

        @Test
        void a_deeper_edge_without_width_is_refused() {
            assertThat(refused(Slab.class, "plan", "4 m x 3 m", "thickness", "0.1 m", "edgeDepth", "0.2 m"))
                    .hasMessage(
                            "edgeWidth [0 m] is none although the edge goes deeper. Enter how wide the deeper edge is.");
            assertThat(refused(Slab.class, "plan", "4 m x 3 m", "thickness", "0.1 m", "edgeWidth", "0.2 m"))
                    .hasMessage(
                            "edgeDepth [0 m] is none although a deeper edge has a width. Enter how much deeper the edge"
                                    + " goes.");
        }

        @Test
        void a_deeper_edge_wider_than_the_slab_is_refused() {
            // 12 m2 / 14 m = 0.857 m
            assertThat(refused(
                            Slab.class,
                            "plan",
                            "4 m x 3 m",
                            "thickness",
                            "0.1 m",
                            "edgeDepth",
                            "0.2 m",
                            "edgeWidth",
                            "0.858 m"))
                    .hasMessage(
                            "edgeWidth [0.858 m] all round is more than the slab. Enter at most 0.857 m, or a thicker slab.");
            assertThat(slab("4 m x 3 m", "0.1 m", "0.2 m", "0.857 m").line("bags"))
                    .isPresent();
            assertThat(slab("4 m x 4 m", "0.1 m", "0.2 m", "1 m").line("bags"))
                    .as("all of it")
                    .isPresent();
        }
    }

    @Nested
    class Footings {
        private static Worksheet footing(String... more) {
            String[] all = new String[more.length + 4];
            String[] first = {"length", "112 in", "width", "100 in"};
            System.arraycopy(first, 0, all, 0, 4);
            System.arraycopy(more, 0, all, 4, more.length);
            return work(Footing.class, all);
        }

        @Test
        void round_a_rectangle() {
            assertThat(told(footing("footingWidth", "16 in", "depth", "6 in"))).startsWith("""
                    centre-line: 32 ft 8 in; L = 2 (a + b) - 4 t; a: length outside, 9 ft 4 in; b: width outside, 8 ft 4 in; \
                    t: walls, 8 in
                    between-forms: 21.78 ft3; G = L b d; L: centre line, 32 ft 8 in; b: width, 1 ft 4 in; d: depth, 6 in
                    volume: 21.78 ft3;""");
        }

        @Test
        void straight() {
            Worksheet straight = work(Footing.class, "length", "10 m", "footingWidth", "0.4 m", "depth", "0.2 m");
            assertThat(told(straight)).startsWith("centre-line: 32 ft 9 11/16 in; as entered\n");
            assertThat(amount(straight, "between-forms", "m3")).isCloseTo(0.8, within(1e-9));
        }

        @Test
        void sound_ones_are_not_remarked_on() {
            Worksheet sound = footing("footingWidth", "20 in", "depth", "6 in");
            assertThat(warnings(sound)).isEmpty();
            assertThat(engineers(sound)).isEmpty();
        }

        @Test
        void narrower_than_the_wall() {
            assertThat(warnings(footing("footingWidth", "8 in", "depth", "6 in")))
                    .isEmpty();
            assertThat(warnings(footing("footingWidth", "7.9 in", "depth", "6 in")))
                    .containsExactly("The footing is narrower than the wall on it.");
        }

        @Test
        @DisplayName("IRC R403.1.1, memory: not wider beside the wall than deep, 6 in deep")
        void sticking_out_or_shallow() {
            assertThat(engineers(footing("footingWidth", "20.1 in", "depth", "6 in")))
                    .singleElement()
                    .asString()
                    .startsWith("The footing sticks out beside the wall further than it is deep");
            assertThat(engineers(footing("footingWidth", "20.1 in", "depth", "6 in", "wall", "0 m")))
                    .as("no wall on it")
                    .isEmpty();
            assertThat(warnings(footing("footingWidth", "16 in", "depth", "5.9 in")))
                    .containsExactly("Less deep than 6 in (152 mm), the least of IRC R403.1.1 (from memory).");
        }

        @Test
        void that_leave_nothing_between_them_are_refused() {
            // 100 - 8 in
            assertThat(refused(
                            Footing.class,
                            "length",
                            "112 in",
                            "width",
                            "100 in",
                            "footingWidth",
                            "92 in",
                            "depth",
                            "6 in"))
                    .hasMessage(
                            "footingWidth [2.3368 m] leaves nothing between the footings. Enter less than 2.336 m, or reckon a"
                                    + " slab.");
            assertThat(footing("footingWidth", "91.9 in", "depth", "6 in").line("bags"))
                    .isPresent();
        }

        @Test
        void walls_that_leave_no_room_are_refused() {
            assertThat(refused(
                                    Footing.class,
                                    "length",
                                    "1 m",
                                    "width",
                                    "0.2 m",
                                    "wall",
                                    "0.2 m",
                                    "footingWidth",
                                    "0.4 m",
                                    "depth",
                                    "0.2 m")
                            .remedy())
                    .startsWith("Enter the outside measures of the walls");
            assertThat(refused(
                            Footing.class,
                            "length",
                            "1 m",
                            "width",
                            "0.2 m",
                            "footingWidth",
                            "0.4 m",
                            "depth",
                            "0.2 m"))
                    .hasMessage(
                            "footingWidth [0.4 m] leaves nothing between the footings. Enter the outside measures of the"
                                    + " walls, or reckon a slab.");
        }
    }

    @Nested
    class PadsAndPiers {
        @Test
        void piers() {
            assertThat(told(work(Pads.class, "plan", "round 12 in", "height", "4 ft", "count", "12", "steel", "50 lb")))
                    .startsWith("""
                    one: 3.142 ft3; g = A h; A: area, 0.7854 ft2; h: height, 4 ft
                    between-forms: 37.7 ft3; G = n g; n: how many, 12; g: one, 3.142 ft3
                    volume: 37.6 ft3; V = G - s / d - e; G: volume between the forms, 37.7 ft3; s: bars, 50 lb; d: density \
                    of steel, 490 lb/ft3; e: sleeves and brackets, 0 ft3
                    """);
        }
    }
}
