package org.firmset.trade.takeoff.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CuttingStockTest {
    private static final long SEED = Long.getLong("firmset.seed", 2027);

    private static Stock bought(long length) {
        return new Stock(length, 1, Stock.UNLIMITED);
    }

    private static CutPlan plan(List<Stock> stocks, List<Demand> demands, long kerf) {
        return CuttingStock.plan(stocks, demands, kerf).orElseThrow();
    }

    /** Written apart from the search: every plan is exactly what was asked, out of stock that is there. */
    private static void check(CutPlan plan, List<Stock> stocks, List<Demand> demands, long kerf) {
        int[] cut = new int[demands.size()];
        int[] used = new int[stocks.size()];
        long cost = 0;
        for (Map.Entry<Pattern, Integer> use : plan.uses().entrySet()) {
            Stock stock = stocks.get(use.getKey().stock());
            long length = 0;
            int pieces = 0;
            for (int i = 0; i < cut.length; i++) {
                int n = use.getKey().pieces().get(i);
                cut[i] += n * use.getValue();
                length += n * demands.get(i).length();
                pieces += n;
            }
            assertThat(length + kerf * (pieces - 1)).as("length with cuts").isLessThanOrEqualTo(stock.length());
            used[use.getKey().stock()] += use.getValue();
            cost += stock.cost() * use.getValue();
        }
        for (int i = 0; i < cut.length; i++) {
            assertThat(cut[i])
                    .as("pieces of " + demands.get(i))
                    .isEqualTo(demands.get(i).count());
        }
        for (int k = 0; k < used.length; k++) {
            assertThat(used[k])
                    .as("used of " + stocks.get(k))
                    .isLessThanOrEqualTo(stocks.get(k).available());
        }
        assertThat(plan.cost()).isEqualTo(cost);
        assertThat(plan.bound()).isLessThanOrEqualTo(cost);
    }

    @Test
    @DisplayName("PM-12: widths 45, 36, 31, 14 from stock of 100 need 453 pieces; Chvatal, Linear Programming ch. 13,"
            + " verified")
    void the_textbook_example() {
        List<Stock> stocks = List.of(bought(100));
        List<Demand> demands =
                List.of(new Demand(45, 97), new Demand(36, 610), new Demand(31, 395), new Demand(14, 211));
        CutPlan plan = plan(stocks, demands, 0);
        check(plan, stocks, demands, 0);
        assertThat(plan.cost()).isEqualTo(453);
        assertThat(plan.proven()).isTrue();
    }

    @Test
    @DisplayName("PM-11: the 120 items of u120_00 fit into 48 bins of 150; OR-Library, verified")
    void a_bin_packing_problem() {
        List<Stock> stocks = List.of(bought(BinPacking.BIN));
        CutPlan plan = plan(stocks, BinPacking.demands(), 0);
        check(plan, stocks, BinPacking.demands(), 0);
        assertThat(plan.cost()).isEqualTo(48);
        assertThat(plan.proven()).isTrue();
        assertThat(plan.solved())
                .as("longest first gives 49, so the solver was needed")
                .isTrue();
    }

    @Test
    void a_simple_plan_that_reaches_the_bound_needs_no_solver() {
        CutPlan plan = plan(List.of(bought(20)), List.of(new Demand(5, 8)), 0);
        assertThat(plan.cost()).isEqualTo(2);
        assertThat(plan.proven()).isTrue();
        assertThat(plan.solved()).isFalse();
    }

    @Test
    void the_last_cut_of_a_bar_that_is_used_up_is_not_needed() {
        // three pieces of 32 and two cuts of 2 make 100 exactly
        assertThat(plan(List.of(bought(100)), List.of(new Demand(32, 3)), 2).cost())
                .isEqualTo(1);
        assertThat(plan(List.of(bought(99)), List.of(new Demand(32, 3)), 2).cost())
                .isEqualTo(2);
    }

    @Test
    void what_cannot_be_cut_gives_no_plan() {
        assertThat(CuttingStock.plan(List.of(bought(10)), List.of(new Demand(11, 1)), 0))
                .isEmpty();
        Stock two = new Stock(10, 1, 2);
        assertThat(CuttingStock.plan(List.of(two), List.of(new Demand(6, 3)), 0))
                .isEmpty();
        assertThat(CuttingStock.plan(List.of(two), List.of(new Demand(6, 2)), 0))
                .isPresent();
    }

    @Test
    void what_simple_plans_miss_is_found_in_limited_stock() {
        // only 3 bars are there, and they are filled to the end: 12 + 5 + 3, 10 + 6 + 4, 9 + 9 + 2
        List<Stock> stocks = List.of(new Stock(20, 1, 3));
        List<Demand> demands = List.of(
                new Demand(2, 1),
                new Demand(3, 1),
                new Demand(4, 1),
                new Demand(5, 1),
                new Demand(6, 1),
                new Demand(9, 2),
                new Demand(10, 1),
                new Demand(12, 1));
        CutPlan plan = plan(stocks, demands, 0);
        check(plan, stocks, demands, 0);
        assertThat(plan.cost()).isEqualTo(3);
        assertThat(plan.solved()).isTrue();
        assertThat(CuttingStock.plan(List.of(new Stock(20, 1, 2)), demands, 0)).isEmpty();
    }

    @Test
    void random_limited_stock_is_enough_or_it_is_not() {
        SplittableRandom random = new SplittableRandom(SEED + 2);
        int enough = 0;
        for (int trial = 0; trial < 150; trial++) {
            List<Demand> demands = new ArrayList<>();
            for (int i = random.nextInt(2, 6); i > 0; i--) {
                demands.add(new Demand(2 + random.nextInt(11), 1 + random.nextInt(2)));
            }
            List<Stock> stocks =
                    List.of(new Stock(12, 5, random.nextInt(1, 5)), new Stock(17, 8, random.nextInt(0, 3)));
            String what = "seed " + SEED + ", trial " + trial + ": " + stocks + " for " + demands;
            long cheapest = cheapest(stocks, demands);
            Optional<CutPlan> plan = CuttingStock.plan(stocks, demands, 0);
            assertThat(plan.isPresent()).as(what).isEqualTo(cheapest < Long.MAX_VALUE);
            if (plan.isPresent()) {
                check(plan.get(), stocks, demands, 0);
                assertThat(plan.get().cost()).as(what).isEqualTo(cheapest);
                assertThat(plan.get().proven()).as(what).isTrue();
                enough++;
            }
        }
        assertThat(enough).as("seed " + SEED + ": some are, some are not").isBetween(15, 135);
    }

    @Test
    void a_piece_that_fits_no_stock_is_no_plan_whatever_else_fits() {
        List<Demand> demands = List.of(new Demand(21, 1), new Demand(5, 3));
        assertThat(CuttingStock.plan(List.of(bought(20), bought(10)), demands, 0))
                .isEmpty();
        assertThat(plan(List.of(bought(21), bought(10)), demands, 0).cost()).isEqualTo(2);
    }

    @Test
    void what_patterns_make_too_much_is_not_cut() {
        List<Stock> stocks = List.of(bought(100));
        List<Demand> demands =
                List.of(new Demand(50, 6), new Demand(25, 4), new Demand(13, 3), new Demand(31, 9), new Demand(58, 4));
        CutPlan plan = plan(stocks, demands, 0);
        check(plan, stocks, demands, 0);
        assertThat(plan.cost()).isEqualTo(10);
        assertThat(plan.proven()).isTrue();
    }

    @Test
    void patterns_tell_pieces_in_the_order_they_were_asked_for() {
        CutPlan plan = plan(List.of(bought(10)), List.of(new Demand(3, 1), new Demand(7, 1)), 0);
        assertThat(plan.uses()).containsExactly(Map.entry(new Pattern(0, List.of(1, 1)), 1));
    }

    @Test
    void the_cheaper_mix_of_two_lengths_is_found() {
        // 7 of 4 and 3 of 6: 46 of length; stock 10 for 10 and stock 6 for 6
        List<Stock> stocks = List.of(new Stock(10, 10, Stock.UNLIMITED), new Stock(6, 6, Stock.UNLIMITED));
        List<Demand> demands = List.of(new Demand(4, 7), new Demand(6, 3));
        CutPlan plan = plan(stocks, demands, 0);
        check(plan, stocks, demands, 0);
        assertThat(plan.cost()).isEqualTo(cheapest(stocks, demands));
        assertThat(plan.proven()).isTrue();
    }

    @Test
    void left_overs_that_cost_nothing_are_used_first() {
        List<Stock> stocks = List.of(new Stock(20, 20, Stock.UNLIMITED), new Stock(7, 0, 2));
        List<Demand> demands = List.of(new Demand(7, 2), new Demand(10, 2));
        CutPlan plan = plan(stocks, demands, 0);
        check(plan, stocks, demands, 0);
        assertThat(plan.cost()).isEqualTo(20);
        assertThat(plan.used(0)).isEqualTo(1);
        assertThat(plan.used(1)).isEqualTo(2);
    }

    @Test
    void random_plans_are_sound_and_as_cheap_as_trying_everything() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int trial = 0; trial < 120; trial++) {
            int kinds = 1 + random.nextInt(3);
            List<Demand> demands = new ArrayList<>();
            for (int i = 0; i < kinds; i++) {
                demands.add(new Demand(2 + random.nextInt(9), 1 + random.nextInt(3)));
            }
            List<Stock> stocks = new ArrayList<>();
            stocks.add(new Stock(12, 12, Stock.UNLIMITED));
            if (random.nextBoolean()) {
                stocks.add(new Stock(17, 16, Stock.UNLIMITED));
            }
            if (random.nextBoolean()) {
                stocks.add(new Stock(6, 1, 2));
            }
            String what = "seed " + SEED + ", trial " + trial + ": " + stocks + " for " + demands;
            CutPlan plan = plan(stocks, demands, 0);
            check(plan, stocks, demands, 0);
            assertThat(plan.cost()).as(what).isEqualTo(cheapest(stocks, demands));
            assertThat(plan.proven()).as(what).isTrue();
        }
    }

    @Test
    void never_fewer_bars_than_the_length_needs_and_the_same_plan_twice() {
        SplittableRandom random = new SplittableRandom(SEED + 1);
        for (int trial = 0; trial < 10; trial++) {
            List<Demand> demands = new ArrayList<>();
            long total = 0;
            for (int i = 0; i < 25; i++) {
                Demand demand = new Demand(300 + 7L * random.nextInt(400), 1 + random.nextInt(12));
                demands.add(demand);
                total += demand.length() * demand.count();
            }
            List<Stock> stocks = List.of(bought(6096));
            CutPlan plan = plan(stocks, demands, 3);
            check(plan, stocks, demands, 3);
            assertThat(plan.cost()).isGreaterThanOrEqualTo(Math.ceilDiv(total, 6096L));
            assertThat(plan.proven()).as("seed " + SEED + ", trial " + trial).isTrue();
            assertThat(plan(stocks, demands, 3)).isEqualTo(plan);
        }
    }

    /** Cheapest by trying every way to put each piece into an open bar or a new one. */
    private static long cheapest(List<Stock> stocks, List<Demand> demands) {
        List<Long> pieces = new ArrayList<>();
        demands.forEach(d -> {
            for (int n = 0; n < d.count(); n++) {
                pieces.add(d.length());
            }
        });
        return cheapest(stocks, pieces, 0, new ArrayList<>(), new int[stocks.size()], 0, Long.MAX_VALUE);
    }

    private static long cheapest(
            List<Stock> stocks, List<Long> pieces, int next, List<Long> left, int[] used, long cost, long best) {
        if (cost >= best) {
            return best;
        }
        if (next == pieces.size()) {
            return cost;
        }
        long result = best;
        long piece = pieces.get(next);
        for (int bar = 0; bar < left.size(); bar++) {
            if (left.get(bar) >= piece) {
                left.set(bar, left.get(bar) - piece);
                result = cheapest(stocks, pieces, next + 1, left, used, cost, result);
                left.set(bar, left.get(bar) + piece);
            }
        }
        for (int k = 0; k < stocks.size(); k++) {
            Stock stock = stocks.get(k);
            if (stock.length() >= piece && used[k] < stock.available()) {
                used[k]++;
                left.add(stock.length() - piece);
                result = cheapest(stocks, pieces, next + 1, left, used, cost + stock.cost(), result);
                left.removeLast();
                used[k]--;
            }
        }
        return result;
    }

    @Nested
    class Refusals {
        @Test
        void nothing_to_cut_or_nothing_to_cut_it_from() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> CuttingStock.plan(List.of(), List.of(new Demand(1, 1)), 0));
            assertThatIllegalArgumentException().isThrownBy(() -> CuttingStock.plan(List.of(bought(1)), List.of(), 0));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> CuttingStock.plan(List.of(bought(1)), List.of(new Demand(1, 1)), -1));
        }

        @Test
        void lengths_and_numbers_that_are_none() {
            assertThatIllegalArgumentException().isThrownBy(() -> new Demand(0, 1));
            assertThatIllegalArgumentException().isThrownBy(() -> new Demand(1, 0));
            assertThatIllegalArgumentException().isThrownBy(() -> new Stock(0, 1, 1));
            assertThatIllegalArgumentException().isThrownBy(() -> new Stock(1, -1, 1));
            assertThatIllegalArgumentException().isThrownBy(() -> new Stock(1, 1, -1));
        }
    }
}
