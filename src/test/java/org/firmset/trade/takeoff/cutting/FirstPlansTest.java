package org.firmset.trade.takeoff.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class FirstPlansTest {
    private static Stock bought(long length) {
        return new Stock(length, 1, Stock.UNLIMITED);
    }

    private static Instance pieces(List<Stock> stocks, long... lengths) {
        List<Demand> demands =
                Arrays.stream(lengths).mapToObj(l -> new Demand(l, 1)).toList();
        return new Instance(stocks, demands, 0);
    }

    private static long cost(Instance instance) {
        List<Column> plan = FirstPlans.best(instance);
        check(instance, plan);
        return FirstPlans.cost(instance, plan);
    }

    private static void check(Instance instance, List<Column> plan) {
        int[] made = new int[instance.kinds()];
        int[] used = new int[instance.stocks()];
        for (Column column : plan) {
            assertThat(instance.taken(column.counts())).isLessThanOrEqualTo(instance.capacities[column.stock()]);
            used[column.stock()]++;
            for (int i = 0; i < made.length; i++) {
                made[i] += column.counts()[i];
            }
        }
        assertThat(made).isEqualTo(instance.wanted);
        for (int k = 0; k < used.length; k++) {
            assertThat(used[k]).isLessThanOrEqualTo(instance.available[k]);
        }
    }

    @Test
    void filling_each_bar_well_is_better_at_times() {
        // longest first takes 5: 9, 9, 6 + 3, 5 + 2 + 2, 2
        assertThat(cost(pieces(List.of(bought(10)), 2, 2, 2, 3, 5, 6, 9, 9))).isEqualTo(4);
    }

    @Test
    void longest_first_is_better_at_other_times() {
        // filled as well as can be one after the other takes 5
        assertThat(cost(pieces(List.of(bought(20)), 2, 5, 5, 5, 8, 10, 11, 11, 19)))
                .isEqualTo(4);
    }

    @Test
    void neither_finds_what_needs_more_thought() {
        List<Stock> three = List.of(new Stock(20, 1, 3));
        assertThat(cost(pieces(List.of(bought(20)), 2, 3, 4, 5, 6, 9, 9, 10, 12)))
                .isEqualTo(4);
        assertThat(FirstPlans.best(pieces(three, 2, 3, 4, 5, 6, 9, 9, 10, 12))).isEmpty();
    }

    @Test
    void nothing_fits_is_no_plan() {
        assertThat(FirstPlans.best(pieces(List.of(bought(10)), 11))).isEmpty();
        assertThat(FirstPlans.best(pieces(List.of(bought(10)), 3, 11))).isEmpty();
        assertThat(cost(pieces(List.of(bought(10)), 10))).isEqualTo(1);
    }

    @Test
    void another_stock_serves_when_the_first_is_used_up_or_too_short() {
        List<Stock> stocks =
                List.of(new Stock(10, 1, 1), new Stock(10, 3, 1), new Stock(12, 2, 1), new Stock(20, 50, 9));
        assertThat(cost(pieces(stocks, 9))).isEqualTo(1);
        assertThat(cost(pieces(stocks, 9, 9))).isEqualTo(3);
        assertThat(cost(pieces(stocks, 9, 9, 9))).isEqualTo(6);
        assertThat(cost(pieces(stocks, 9, 9, 9, 9))).isEqualTo(56);
        assertThat(cost(pieces(stocks, 12))).isEqualTo(2);
        assertThat(cost(pieces(stocks, 13))).isEqualTo(50);
        assertThat(cost(pieces(stocks, 12, 12))).isEqualTo(52);
    }

    @Test
    void stock_that_costs_nothing_is_preferred() {
        List<Stock> stocks = List.of(bought(10), new Stock(6, 0, 2));
        assertThat(cost(pieces(stocks, 5, 5))).isZero();
        assertThat(cost(pieces(stocks, 5, 5, 5, 5))).isEqualTo(1);
    }

    @Test
    void the_fullest_bar_that_fits_takes_the_next_piece() {
        // 7, then 6, then 3 into the bar of 7, then 4 into that of 6
        List<Column> plan = FirstPlans.best(pieces(List.of(bought(10)), 7, 6, 4, 3));
        assertThat(plan).hasSize(2);
        // 6, 5, 4 into the 6, 5 into the 5: two bars whichever way, 10 and 10
        assertThat(cost(pieces(List.of(bought(10)), 6, 5, 5, 4))).isEqualTo(2);
    }

    @Test
    void several_of_a_kind() {
        Instance instance = new Instance(List.of(bought(10)), List.of(new Demand(3, 7), new Demand(4, 2)), 0);
        List<Column> plan = new ArrayList<>(FirstPlans.best(instance));
        check(instance, plan);
        assertThat(plan).hasSize(3);
    }
}
