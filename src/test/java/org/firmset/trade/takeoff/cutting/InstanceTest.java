package org.firmset.trade.takeoff.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class InstanceTest {
    private static Instance costing(long... costs) {
        List<Stock> stocks = java.util.Arrays.stream(costs)
                .mapToObj(c -> new Stock(10, c, 3))
                .toList();
        return new Instance(stocks, List.of(new Demand(5, 1)), 0);
    }

    @Test
    void pieces_go_from_the_longest_and_take_their_cut_with_them() {
        Instance instance = new Instance(
                List.of(new Stock(100, 7, 3)), List.of(new Demand(20, 2), new Demand(40, 1), new Demand(30, 5)), 3);
        assertThat(instance.order).containsExactly(1, 2, 0);
        assertThat(instance.sizes).containsExactly(43, 33, 23);
        assertThat(instance.wanted).containsExactly(1, 5, 2);
        assertThat(instance.capacities).containsExactly(103);
        assertThat(instance.costs).containsExactly(7);
        assertThat(instance.available).containsExactly(3);
        assertThat(instance.kinds()).isEqualTo(3);
        assertThat(instance.stocks()).isEqualTo(1);
        assertThat(instance.taken(new int[] {1, 0, 2})).isEqualTo(89);
    }

    @Test
    void what_is_still_to_do_is_a_problem_of_its_own() {
        Instance whole = new Instance(List.of(new Stock(10, 1, 3)), List.of(new Demand(5, 4)), 0);
        int[] open = {2};
        Instance rest = whole.with(open, new int[] {1});
        open[0] = 9;
        assertThat(rest.wanted).containsExactly(2);
        assertThat(rest.available).containsExactly(1);
        assertThat(rest.sizes).isEqualTo(whole.sizes);
        assertThat(whole.wanted).containsExactly(4);
    }

    @Test
    void stock_may_be_lent() {
        Instance lent = new Instance(List.of(new Stock(10, 7, 2)), List.of(new Demand(5, 4), new Demand(12, 1)), 1)
                .withStockLent();
        assertThat(lent.capacities).containsExactly(11, 13);
        assertThat(lent.costs).containsExactly(0, 1);
        assertThat(lent.available).containsExactly(2, Stock.UNLIMITED);
        assertThat(lent.wanted).containsExactly(1, 4);
        assertThat(lent.sizes).containsExactly(13, 6);
    }

    @Test
    void no_plan_costs_more_than_a_bar_of_the_dearest_stock_for_each_piece() {
        Instance instance = new Instance(
                List.of(new Stock(10, 6, 2), new Stock(8, 4, 2)), List.of(new Demand(5, 4), new Demand(3, 1)), 0);
        assertThat(instance.moreThanAny()).isEqualTo(5 * 6 + 2);
    }

    @Test
    void costs_are_multiples_of_a_step() {
        assertThat(costing(6, 4).step()).isEqualTo(2);
        assertThat(costing(7, 0).step()).isEqualTo(7);
        assertThat(costing(0).step()).isEqualTo(1);
        assertThat(costing(6, 4).roundedUp(7.9)).isEqualTo(8);
        assertThat(costing(6, 4).roundedUp(8)).isEqualTo(8);
        assertThat(costing(6, 4).roundedUp(8 + 1e-8))
                .as("what arithmetic rounds off")
                .isEqualTo(8);
        assertThat(costing(6, 4).roundedUp(8.001)).isEqualTo(10);
    }

    @Test
    void columns_are_equal_by_what_they_hold() {
        Column column = new Column(1, new int[] {2, 0});
        assertThat(column)
                .isEqualTo(new Column(1, new int[] {2, 0}))
                .hasSameHashCodeAs(new Column(1, new int[] {2, 0}))
                .isNotEqualTo(new Column(0, new int[] {2, 0}))
                .isNotEqualTo(new Column(1, new int[] {2, 1}))
                .isNotEqualTo("1:[2, 0]")
                .hasToString("1:[2, 0]");
        assertThat(column.hashCode())
                .as("spread over a table")
                .isNotEqualTo(new Column(0, new int[] {2, 0}).hashCode())
                .isNotEqualTo(new Column(1, new int[] {2, 1}).hashCode());
    }

    @Test
    void the_least_of_everything_is_allowed() {
        assertThat(new Stock(1, 0, 0).available()).isZero();
        assertThat(new Demand(1, 1).count()).isEqualTo(1);
    }

    @Test
    void a_plan_is_proven_when_its_cost_is_the_bound() {
        Pattern pattern = new Pattern(0, List.of(1));
        Pattern other = new Pattern(1, List.of(1));
        CutPlan plan = new CutPlan(Map.of(pattern, 3, other, 2), 5, 4, true);
        assertThat(plan.proven()).isFalse();
        assertThat(new CutPlan(Map.of(), 5, 5, true).proven()).isTrue();
        assertThat(plan.used(0)).isEqualTo(3);
        assertThat(plan.used(1)).isEqualTo(2);
        assertThat(plan.used(2)).isZero();
    }
}
