package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.firmset.trade.takeoff.Inputs.work;
import static org.firmset.trade.trace.Results.amount;
import static org.firmset.trade.trace.Results.packs;

import org.firmset.trade.trace.Results;
import org.firmset.trade.trace.Whole;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The sums of docs/demo.md come out of the calculators. */
class DemoSumsTest {
    private static final String[] BASE_WALL = {"length", "112 in", "width", "112 in", "height", "24 in"};

    private static String[] with(String[] given, String... more) {
        String[] all = new String[given.length + more.length];
        System.arraycopy(given, 0, all, 0, given.length);
        System.arraycopy(more, 0, all, given.length, more.length);
        return all;
    }

    private static long toBuy(String total, String pack, String waste) {
        return packs(work(Lengths.class, "total", total, "pack", pack, "wastePercent", waste), "pieces");
    }

    private static long sheets(String area, String waste) {
        return packs(work(Panels.class, "area", area, "wastePercent", waste), "sheets");
    }

    private static long counted(String number, String perPack, String waste) {
        return packs(work(Counted.class, "number", number, "perPack", perPack, "wastePercent", waste), "packs");
    }

    private static long bars(String pieces) {
        Worksheet sheet = work(CutList.class, "pieces", pieces);
        assertThat(Results.word(sheet, "proven")).isEqualTo("yes, proven");
        return packs(sheet, "bars");
    }

    @Nested
    class Water {
        @Test
        void hole_of_128_cubic_feet_takes_nine_and_a_half_hours() {
            Worksheet dig = work(Dig.class, "plan", "11.33 ft x 11.33 ft", "depth", "1 ft");
            assertThat(amount(dig, "in-ground", "ft3")).isCloseTo(128, within(0.5));
            assertThat(amount(dig, "in-ground", "yd3")).isCloseTo(4.8, within(0.05));
            assertThat(amount(dig, "labour")).isCloseTo(9.5, within(0.1));
        }

        @Test
        void footing_steel_is_two_loops_of_two_bars_and_three_bars_of_dowels() {
            Worksheet loops = work(BarRun.class, "run", "416 in", "loop", "true", "runs", "2", "bar", "no-4");
            assertThat(packs(loops, "bars")).isEqualTo(4);
            assertThat(amount(work(WallFill.class, BASE_WALL), "barred-cells")).isEqualTo(13);
            assertThat(bars("13 x 44 in")).isEqualTo(3);
        }

        @Test
        void footing_takes_43_bags_and_9_and_three_quarter_hours() {
            Worksheet footing = work(
                    Footing.class, "length", "112 in", "width", "112 in", "footingWidth", "16 in", "depth", "6 in");
            assertThat(amount(footing, "centre-line", "in")).isCloseTo(416, within(1e-6));
            assertThat(amount(footing, "volume", "ft3")).isCloseTo(23.1, within(0.05));
            assertThat(amount(footing, "bags")).isCloseTo(42.4, within(0.05));
            assertThat(packs(footing, "bags")).isEqualTo(43);
            assertThat(amount(footing, "labour")).isEqualTo(9.75);
        }

        @Test
        void wall_takes_82_blocks_7_bags_of_mortar_and_18_hours() {
            Worksheet wall = work(BlockWall.class, BASE_WALL);
            assertThat(amount(wall, "blocks-net")).isCloseTo(78, within(1e-9));
            assertThat(packs(wall, "blocks")).isEqualTo(82);
            assertThat(packs(wall, "mortar")).isEqualTo(7);
            assertThat(amount(wall, "labour")).isCloseTo(18, within(1e-9));
            Worksheet loop = work(BarRun.class, "run", "416 in", "loop", "true", "bar", "no-4");
            assertThat(packs(loop, "bars")).isEqualTo(2);
        }

        @Test
        void wall_fill_takes_43_bags_and_9_and_three_quarter_hours() {
            Worksheet bare = work(WallFill.class, with(BASE_WALL, "barsPerCell", "0"));
            assertThat(amount(bare, "grout", "ft3")).isCloseTo(23.4, within(0.05));
            assertThat(amount(bare, "bags")).isCloseTo(42.8, within(0.05));
            Worksheet barred = work(WallFill.class, BASE_WALL);
            assertThat(packs(barred, "bags")).isEqualTo(43);
            assertThat(amount(barred, "labour")).isEqualTo(9.75);
        }

        @Test
        void basin_takes_6_yards_of_rock_in_four_layers() {
            Worksheet basin = work(BaseFill.class, "plan", "8 ft x 8 ft", "depth", "2 ft");
            assertThat(amount(basin, "compacted", "yd3")).isCloseTo(4.74, within(0.005));
            assertThat(amount(basin, "loose", "yd3")).isCloseTo(5.5, within(0.05));
            assertThat(Whole.up(amount(basin, "loose", "yd3"))).isEqualTo(6);
            assertThat(amount(basin, "lifts")).isEqualTo(4);
        }

        @Test
        void cap_bars_are_18_of_9_feet_4_and_three_quarter_inches_two_from_a_bar_and_4_hours() {
            Worksheet mat = work(BarMat.class, "length", "112 in", "width", "112 in", "bar", "no-4");
            assertThat(amount(mat, "bars-along")).isEqualTo(9);
            assertThat(amount(mat, "bars-across")).isEqualTo(9);
            Worksheet bent = work(BentBar.class, "bar", "no-4", "legs", "106 in, 8 in", "count", "18");
            assertThat(amount(bent, "cut-length", "in")).isCloseTo(112.75, within(0.005));
            assertThat(amount(bent, "labour")).isEqualTo(4);
            assertThat(bars("18 x 9 ft 4 3/4 in")).isEqualTo(9);
        }

        @Test
        void cap_forms_take_4_boards() {
            Worksheet forms = work(Forms.class, "edge", "448 in");
            assertThat(amount(forms, "boards")).isCloseTo(3.6, within(0.05));
            assertThat(packs(forms, "boards")).isEqualTo(4);
        }

        @Test
        void cap_takes_67_bags() {
            Worksheet cap = work(Slab.class, "plan", "112 in x 112 in", "thickness", "5 in", "otherHours", "2.6");
            assertThat(amount(cap, "volume", "ft3")).isCloseTo(36.3, within(0.05));
            assertThat(amount(cap, "bags")).isCloseTo(66.5, within(0.05));
            assertThat(packs(cap, "bags")).isEqualTo(67);
            assertThat(amount(cap, "labour")).isCloseTo(16, within(1e-9));
        }

        @Test
        void cap_pour_has_34_batches_of_two_bags() {
            assertThat(amount(work(Batches.class, "bags", "67"), "batches")).isEqualTo(34);
        }

        @Test
        void trench_holds_almost_6_yards_and_the_pipe_is_7_lengths() {
            Worksheet trench = work(Dig.class, "plan", "120 ft x 24 in", "depth", "8 in");
            assertThat(amount(trench, "in-ground", "yd3")).isCloseTo(5.9, within(0.05));
            assertThat(amount(trench, "labour")).isCloseTo(11.9, within(0.05));
            assertThat(toBuy("120 ft", "20 ft", "5")).isEqualTo(7);
        }
    }

    @Nested
    class Shop {
        @Test
        void base_takes_4_yards_of_rock_in_two_thin_layers() {
            Worksheet base = work(BaseFill.class, "plan", "12 ft x 14 ft", "depth", "6 in", "looseLift", "4 in");
            assertThat(amount(base, "compacted", "yd3")).isCloseTo(3.11, within(0.005));
            assertThat(amount(base, "loose", "yd3")).isCloseTo(3.6, within(0.05));
            assertThat(Whole.up(amount(base, "loose", "yd3"))).isEqualTo(4);
            assertThat(amount(base, "lifts")).isEqualTo(2);
        }

        @Test
        void forms_take_5_boards() {
            assertThat(packs(work(Forms.class, "edge", "44 ft", "inner", "10 ft"), "boards"))
                    .isEqualTo(5);
        }

        @Test
        void steel_is_11_bars_and_an_edge_loop_of_3() {
            Worksheet mat = work(BarMat.class, "length", "12 ft", "width", "10 ft", "bar", "no-4", "spacing", "18 in");
            assertThat(amount(mat, "bars-along")).isEqualTo(7);
            assertThat(amount(mat, "length-along", "in")).isCloseTo(138, within(1e-6));
            assertThat(amount(mat, "bars-across")).isEqualTo(8);
            assertThat(amount(mat, "length-across", "in")).isCloseTo(114, within(1e-6));
            assertThat(bars("7 x 11 ft 6 in, 8 x 9 ft 6 in")).isEqualTo(11);
            Worksheet loop = work(BarRun.class, "run", "44 ft", "loop", "true", "bar", "no-4");
            assertThat(packs(loop, "bars")).isEqualTo(3);
        }

        @Test
        void each_half_of_the_slab_takes_37_bags() {
            Worksheet half = work(Slab.class, "plan", "10 ft x 6 ft", "thickness", "4 in");
            assertThat(amount(half, "volume", "ft3")).isCloseTo(20, within(1e-6));
            assertThat(amount(half, "bags")).isCloseTo(36.7, within(0.05));
            assertThat(packs(half, "bags")).isEqualTo(37);
        }

        @Test
        void frame_takes_34_boards_3_sills_and_13_sheets() {
            assertThat(amount(work(Lumber.class, "pieces", "48 x 92 5/8 in"), "cut-boards"))
                    .isEqualTo(24);
            assertThat(toBuy("88 ft", "16 ft", "0")).isEqualTo(6);
            assertThat(counted("32", "1", "5")).isEqualTo(34);
            assertThat(toBuy("44 ft", "16 ft", "0")).isEqualTo(3);
            assertThat(sheets("382 ft2", "8")).isEqualTo(13);
        }

        @Test
        void roof_takes_6_sheets_1_underlay_and_5_panels() {
            assertThat(sheets("156 ft2", "10")).isEqualTo(6);
            assertThat(counted("156", "200", "15")).isEqualTo(1);
            assertThat(toBuy("13 ft", "3 ft", "0")).isEqualTo(5);
        }

        @Test
        void paint_is_a_pail_and_six_hours() {
            Worksheet paint = work(Coating.class, "area", "382 ft2");
            assertThat(packs(paint, "cans")).isEqualTo(1);
            assertThat(amount(paint, "labour")).isCloseTo(6, within(0.05));
        }

        @Test
        void pipe_to_the_tank_is_3_lengths() {
            assertThat(toBuy("50 ft", "20 ft", "5")).isEqualTo(3);
        }
    }

    @Nested
    class Cabin {
        @Test
        void piers_take_70_bags_and_their_bars_are_8() {
            Worksheet piers = work(Pads.class, "plan", "round 12 in", "height", "4 ft", "count", "12");
            assertThat(amount(piers, "volume", "ft3")).isCloseTo(37.7, within(0.05));
            assertThat(amount(piers, "bags")).isCloseTo(69.1, within(0.05));
            assertThat(packs(piers, "bags")).isEqualTo(70);
            assertThat(bars("36 x 44 in")).isEqualTo(8);
        }

        @Test
        void floor_takes_21_joists_and_8_sheets() {
            Worksheet joists = work(Lumber.class, "pieces", "16 x 12 ft, 4 x 10 ft", "board", "12 ft");
            assertThat(packs(joists, "boards")).isEqualTo(21);
            assertThat(sheets("240 ft2", "5")).isEqualTo(8);
        }

        @Test
        void walls_take_58_boards_and_19_sheets() {
            assertThat(amount(work(Lumber.class, "pieces", "70 x 92 5/8 in"), "cut-boards"))
                    .isEqualTo(35);
            assertThat(counted("55", "1", "5")).isEqualTo(58);
            assertThat(sheets("560 ft2", "8")).isEqualTo(19);
        }

        @Test
        void roof_takes_13_sheets_and_3_underlays() {
            assertThat(sheets("353 ft2", "10")).isEqualTo(13);
            assertThat(counted("353", "200", "15")).isEqualTo(3);
        }
    }
}
