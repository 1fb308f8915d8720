package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.firmset.trade.takeoff.Inputs.work;
import static org.firmset.trade.trace.Results.amount;
import static org.firmset.trade.trace.Results.packs;

import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.firmset.trade.trace.CutBar;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Test;

/** What holds for any inputs. Repeat a failure with -Dfirmset.seed=... */
class TakeoffPropertiesTest {
    private static final long SEED = Long.getLong("firmset.seed", 2027);

    private final SplittableRandom random = new SplittableRandom(SEED);

    private static String metres(double metres) {
        return String.format(java.util.Locale.ROOT, "%.3f m", metres);
    }

    private String metres(double least, double most) {
        return metres(random.nextDouble(least, most));
    }

    private static String what(Object... given) {
        return "seed " + SEED + ": " + java.util.Arrays.toString(given);
    }

    @Test
    void a_longer_wall_takes_no_less_of_anything() {
        for (int trial = 0; trial < 100; trial++) {
            double length = random.nextDouble(1, 30);
            String height = metres(0.5, 3);
            String longer = metres(length + random.nextDouble(0.001, 5));
            Worksheet small = work(BlockWall.class, "length", metres(length), "height", height);
            Worksheet large = work(BlockWall.class, "length", longer, "height", height);
            Worksheet smallFill = work(WallFill.class, "length", metres(length), "height", height);
            Worksheet largeFill = work(WallFill.class, "length", longer, "height", height);
            String what = what(length, longer, height);
            assertThat(amount(large, "blocks")).as(what).isGreaterThan(amount(small, "blocks"));
            assertThat(amount(large, "mass-filled", "kg")).as(what).isGreaterThan(amount(small, "mass-filled", "kg"));
            assertThat(amount(largeFill, "filled-cells")).as(what).isGreaterThan(amount(smallFill, "filled-cells"));
            assertThat(amount(largeFill, "barred-cells"))
                    .as(what)
                    .isGreaterThanOrEqualTo(amount(smallFill, "barred-cells"));
        }
    }

    @Test
    void volume_grows_with_every_measure() {
        for (int trial = 0; trial < 100; trial++) {
            double length = random.nextDouble(1, 20);
            String width = metres(0.5, 8);
            double thickness = random.nextDouble(0.05, 0.5);
            String what = what(length, width, thickness);
            double volume = slab(metres(length) + " x " + width, thickness);
            assertThat(slab(metres(length + 0.01) + " x " + width, thickness))
                    .as(what)
                    .isGreaterThan(volume);
            assertThat(slab(metres(length) + " x " + width, thickness + 0.01))
                    .as(what)
                    .isGreaterThan(volume);
        }
    }

    private static double slab(String plan, double thickness) {
        return amount(work(Slab.class, "plan", plan, "thickness", metres(thickness)), "volume", "m3");
    }

    @Test
    void bags_hold_the_volume_and_more_waste_takes_no_fewer() {
        for (int trial = 0; trial < 100; trial++) {
            String plan = metres(0.2, 6) + " x " + metres(0.2, 6);
            int litres = random.nextInt(10, 25);
            long before = 0;
            for (int waste = 0; waste <= 50; waste += 5) {
                String what = what(plan, litres, waste);
                Worksheet slab = work(
                        Slab.class,
                        "plan",
                        plan,
                        "thickness",
                        "0.1 m",
                        "wastePercent",
                        "" + waste,
                        "bagYield",
                        litres + " L");
                long bags = packs(slab, "bags");
                assertThat(bags).as(what).isGreaterThanOrEqualTo(before);
                assertThat(bags * litres / 1000.0)
                        .as(what)
                        .isGreaterThanOrEqualTo(amount(slab, "volume", "m3") * (1 + waste / 100.0) - 1e-5)
                        .isLessThan(amount(slab, "volume", "m3") * (1 + waste / 100.0) + litres / 1000.0);
                before = bags;
            }
        }
    }

    @Test
    void bars_across_keep_their_distance_and_one_more_would_not_go_in() {
        for (int trial = 0; trial < 1000; trial++) {
            double width = random.nextDouble(0.5, 20);
            double edge = random.nextDouble(0, Math.min(0.3, width / 2.1));
            double spacing = random.nextDouble(0.075, 1);
            long bars = Bars.barsAcross(width, edge, spacing);
            double taken = (bars - 1) * spacing;
            assertThat(taken).as(what(width, edge, spacing)).isLessThanOrEqualTo(width - 2 * edge + 1e-5);
            assertThat(taken + spacing).as(what(width, edge, spacing)).isGreaterThan(width - 2 * edge - 1e-9);
        }
    }

    @Test
    void lapped_bars_reach_and_one_less_would_not() {
        for (int trial = 0; trial < 1000; trial++) {
            double run = random.nextDouble(0.3, 100);
            double stock = random.nextDouble(1, 12);
            double lap = random.nextDouble(0, 0.9);
            String what = what(run, stock, lap);
            long straight = Bars.barsForRun(run, stock, lap);
            assertThat(straight * stock - (straight - 1) * lap).as(what).isGreaterThan(run - 1e-4);
            assertThat(straight == 1 || (straight - 1) * stock - (straight - 2) * lap < run)
                    .as(what)
                    .isTrue();
            long round = Bars.barsForLoop(run, stock, lap);
            assertThat(round * (stock - lap)).as(what).isGreaterThan(run - 1e-4);
            assertThat((round - 1) * (stock - lap)).as(what).isLessThan(run);
        }
    }

    @Test
    void barred_cells_of_a_straight_wall_are_no_further_apart_than_asked() {
        for (int trial = 0; trial < 200; trial++) {
            double length = random.nextDouble(0.5, 30);
            double spacing = random.nextDouble(0.21, 3);
            Worksheet fill =
                    work(WallFill.class, "length", metres(length), "height", "1 m", "barSpacing", metres(spacing));
            double between = amount(fill, "barred-cells") - 1;
            double reach = Math.floor(length * 1000) / 1000 - 0.2032;
            assertThat(between * spacing).as(what(length, spacing)).isGreaterThan(reach - spacing * 1e-3 - 0.2032);
        }
    }

    @Test
    void layers_cover_the_depth_and_one_less_would_not() {
        for (int trial = 0; trial < 1000; trial++) {
            double depth = random.nextDouble(0.025, 4);
            double loose = random.nextDouble(0.05, 0.3);
            double share = random.nextDouble(0.4, 1);
            long lifts = Earthwork.lifts(depth, loose, share);
            assertThat(lifts * loose * share).as(what(depth, loose, share)).isGreaterThan(depth - 1e-4);
            assertThat((lifts - 1) * loose * share)
                    .as(what(depth, loose, share))
                    .isLessThan(depth);
        }
    }

    @Test
    void what_is_dug_is_what_is_kept_and_hauled_off() {
        for (int trial = 0; trial < 100; trial++) {
            String backfill = random.nextInt(0, 500) / 100.0 + " m3";
            Worksheet dig = work(
                    Dig.class, "plan", metres(2.5, 6) + " x " + metres(2.5, 6), "depth", "1 m", "backfill", backfill);
            double swell = amount(dig, "loose", "m3") / amount(dig, "in-ground", "m3");
            assertThat(amount(dig, "haul-off", "m3") + amount(dig, "kept", "m3") * swell)
                    .as(what(backfill))
                    .isCloseTo(amount(dig, "loose", "m3"), within(1e-6));
        }
    }

    @Test
    void cut_lists_cut_exactly_the_pieces_and_beat_no_length() {
        for (int trial = 0; trial < 30; trial++) {
            Map<Integer, Integer> wanted = new TreeMap<>();
            for (int i = random.nextInt(1, 9); i > 0; i--) {
                wanted.merge(random.nextInt(200, 4000), random.nextInt(1, 6), Integer::sum);
            }
            String pieces = wanted.entrySet().stream()
                    .map(e -> e.getValue() + " x " + e.getKey() + " mm")
                    .collect(Collectors.joining(", "));
            int kerf = random.nextInt(0, 5);
            Worksheet list = work(CutList.class, "pieces", pieces, "stock", "6 m, 4 m", "kerf", kerf + " mm");
            check(list, wanted, kerf, what(pieces, kerf));
        }
    }

    private static void check(Worksheet list, Map<Integer, Integer> wanted, int kerf, String what) {
        Map<Integer, Integer> cut = new TreeMap<>();
        double bought = 0;
        for (CutBar bar : list.cuts()) {
            double used = bar.pieces().stream().mapToDouble(d -> d).sum()
                    + (bar.pieces().size() - 1) * kerf / 1000.0;
            assertThat(used).as(what).isLessThanOrEqualTo(bar.stock() + 1e-9);
            assertThat(bar.left()).as(what).isBetween(0.0, bar.stock() - used + 1e-9);
            bar.pieces().forEach(p -> cut.merge((int) Math.round(p * 1000), bar.times(), Integer::sum));
            bought += bar.stock() * bar.times();
        }
        assertThat(cut).as(what).isEqualTo(wanted);
        assertThat(amount(list, "bought", "m")).as(what).isCloseTo(bought, within(1e-6));
        assertThat(bought).as(what).isGreaterThanOrEqualTo(amount(list, "net", "m") - 1e-9);
        assertThat(6.0 * packs(list, "bars") + 4.0 * packs(list, "bars-2"))
                .as(what)
                .isCloseTo(bought, within(1e-9));
    }
}
