package org.firmset.trade.takeoff.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.ortools.Loader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The parts of the search that lean on the solver. */
class SolverTest {
    private static final Instance TEXTBOOK = new Instance(
            List.of(bought(100)),
            List.of(new Demand(45, 97), new Demand(36, 610), new Demand(31, 395), new Demand(14, 211)),
            0);
    private static final Instance NINE = pieces(List.of(bought(20)), 2, 3, 4, 5, 6, 9, 9, 10, 12);

    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    private static Stock bought(long length) {
        return new Stock(length, 1, Stock.UNLIMITED);
    }

    private static Instance pieces(List<Stock> stocks, long... lengths) {
        return new Instance(
                stocks, Arrays.stream(lengths).mapToObj(l -> new Demand(l, 1)).toList(), 0);
    }

    private static Column column(int stock, int... counts) {
        return new Column(stock, counts);
    }

    /** A column for each kind alone. */
    private static List<Column> alone(Instance instance) {
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < instance.kinds(); i++) {
            int[] counts = new int[instance.kinds()];
            counts[i] = 1;
            columns.add(new Column(0, counts));
        }
        return columns;
    }

    @Nested
    class WithFractions {
        @Test
        @DisplayName("PM-12: the bound with fractions allowed is 452.25; Chvatal, Linear Programming ch. 13, verified")
        void the_textbook_example() {
            Relaxation relaxation = Relaxation.solve(TEXTBOOK, alone(TEXTBOOK)).orElseThrow();
            assertThat(relaxation.bound()).isCloseTo(452.25, within(1e-4));
            double bars =
                    relaxation.uses().values().stream().mapToDouble(d -> d).sum();
            assertThat(bars).isCloseTo(452.25, within(1e-6));
            for (int i = 0; i < TEXTBOOK.kinds(); i++) {
                int kind = i;
                double made = relaxation.uses().entrySet().stream()
                        .mapToDouble(e -> e.getValue() * e.getKey().counts()[kind])
                        .sum();
                assertThat(made).isGreaterThan(TEXTBOOK.wanted[i] - 1e-6);
            }
            assertThat(relaxation.columns()).containsAll(alone(TEXTBOOK)).doesNotHaveDuplicates();
            relaxation.close();
        }

        @Test
        void cheap_stock_is_bounded_by_what_is_there() {
            Instance instance = new Instance(
                    List.of(new Stock(10, 10, Stock.UNLIMITED), new Stock(10, 1, 2)), List.of(new Demand(10, 5)), 0);
            Relaxation relaxation =
                    Relaxation.solve(instance, List.of(column(0, 1))).orElseThrow();
            assertThat(relaxation.bound()).isCloseTo(2 + 3 * 10, within(1e-4));
            assertThat(relaxation.uses().get(column(1, 1))).isCloseTo(2, within(1e-9));
            relaxation.close();
        }

        @Test
        void what_cannot_be_made_has_no_bound() {
            Instance instance = new Instance(List.of(new Stock(10, 1, 2)), List.of(new Demand(10, 3)), 0);
            assertThat(Relaxation.solve(instance, List.of(column(0, 1)))).isEmpty();
        }

        @Test
        void a_column_that_is_known_already_is_not_added_again() {
            Relaxation relaxation = Relaxation.solve(NINE, twice(alone(NINE))).orElseThrow();
            assertThat(relaxation.columns()).doesNotHaveDuplicates();
            assertThat(relaxation.bound()).isCloseTo(3, within(1e-4));
            relaxation.close();
        }

        private static List<Column> twice(List<Column> columns) {
            List<Column> all = new ArrayList<>(columns);
            all.addAll(columns);
            return all;
        }

        @Test
        void patterns_within_a_great_cost_are_all_the_full_ones() {
            // of 6 and of 4 from 10 and from 13: 6 + 4, 4 + 4; 6 + 6, 6 + 4, 4 + 4 + 4
            Instance instance =
                    new Instance(List.of(bought(10), bought(13)), List.of(new Demand(6, 5), new Demand(4, 5)), 0);
            Relaxation relaxation = Relaxation.solve(instance, List.of(column(0, 1, 0), column(0, 0, 1)))
                    .orElseThrow();
            assertThat(relaxation.within(1000, 5).orElseThrow())
                    .containsExactlyInAnyOrder(
                            column(0, 1, 1), column(0, 0, 2), column(1, 2, 0), column(1, 1, 1), column(1, 0, 3));
            assertThat(relaxation.within(1000, 4)).isEmpty();
            assertThat(relaxation.within(1000, 2))
                    .as("the first stock alone has 2")
                    .isEmpty();
            relaxation.close();
        }

        @Test
        void patterns_within_the_bound_are_those_that_cost_nothing_more() {
            // two halves of the bar are worth it all; one of 3 beside a half wastes a fifth of it
            Instance instance = new Instance(List.of(bought(10)), List.of(new Demand(5, 8), new Demand(3, 3)), 0);
            Relaxation relaxation = Relaxation.solve(instance, List.of(column(0, 1, 0), column(0, 0, 1)))
                    .orElseThrow();
            assertThat(relaxation.bound()).isCloseTo(5, within(1e-4));
            assertThat(relaxation.within(5, 100).orElseThrow())
                    .containsExactlyInAnyOrder(column(0, 2, 0), column(0, 0, 3));
            // a bar more lets in 5 + 3 as well
            assertThat(relaxation.within(6, 100).orElseThrow())
                    .containsExactlyInAnyOrder(column(0, 2, 0), column(0, 1, 1), column(0, 0, 3));
            relaxation.close();
        }

        @Test
        void patterns_of_cheap_stock_that_is_used_up_pay_its_rent() {
            // the second bar is so cheap that using less than all of its length is still worth it
            Instance instance = new Instance(
                    List.of(new Stock(10, 10, Stock.UNLIMITED), new Stock(10, 1, 2)),
                    List.of(new Demand(5, 8), new Demand(3, 3)),
                    0);
            Relaxation relaxation = Relaxation.solve(instance, List.of(column(0, 1, 0), column(0, 0, 1)))
                    .orElseThrow();
            assertThat(relaxation.bound()).isCloseTo(2 + 3 * 10, within(1e-4));
            assertThat(relaxation.within(32, 100).orElseThrow())
                    .containsExactlyInAnyOrder(column(0, 2, 0), column(0, 0, 3), column(1, 2, 0), column(1, 0, 3));
            relaxation.close();
        }
    }

    @Nested
    class InWholeBars {
        private static final List<Column> ALL = List.of(column(0, 2, 0), column(0, 1, 1), column(0, 0, 3));
        private static final Instance FIVE =
                new Instance(List.of(bought(10)), List.of(new Demand(5, 8), new Demand(3, 3)), 0);

        @Test
        void the_cheapest_plan_under_the_limit() {
            WholeBars.Result result = WholeBars.search(FIVE, ALL, 100);
            assertThat(result.best()).isTrue();
            assertThat(FirstPlans.cost(FIVE, result.plan())).isEqualTo(5);
            assertThat(FirstPlans.cost(FIVE, WholeBars.search(FIVE, ALL, 6).plan()))
                    .isEqualTo(5);
        }

        @Test
        void nothing_under_the_cost_of_the_best_is_proof() {
            WholeBars.Result result = WholeBars.search(FIVE, ALL, 5);
            assertThat(result.plan()).isEmpty();
            assertThat(result.best()).isTrue();
        }

        @Test
        void limited_stock_stays_limited() {
            Instance instance = new Instance(
                    List.of(new Stock(10, 10, Stock.UNLIMITED), new Stock(10, 1, 2)), List.of(new Demand(10, 5)), 0);
            WholeBars.Result result = WholeBars.search(instance, List.of(column(0, 1), column(1, 1)), 1000);
            assertThat(FirstPlans.cost(instance, result.plan())).isEqualTo(32);
        }

        @Test
        void a_plan_needs_patterns_enough_for_every_piece() {
            WholeBars.Result result = WholeBars.search(FIVE, List.of(column(0, 2, 0)), 100);
            assertThat(result.plan()).isEmpty();
        }
    }

    @Nested
    class StepByStep {
        @Test
        void the_textbook_example_comes_within_a_bar_of_its_bound() {
            Relaxation relaxation = Relaxation.solve(TEXTBOOK, alone(TEXTBOOK)).orElseThrow();
            Dive.Result dive = Dive.from(TEXTBOOK, relaxation);
            assertThat(FirstPlans.cost(TEXTBOOK, dive.plan())).isBetween(453L, 454L);
            assertThat(dive.seen()).containsAll(relaxation.columns()).doesNotHaveDuplicates();
            relaxation.close();
        }

        @Test
        void limited_stock_is_never_overdrawn() {
            Instance instance = new Instance(
                    List.of(new Stock(10, 10, Stock.UNLIMITED), new Stock(10, 1, 2)), List.of(new Demand(4, 9)), 0);
            Relaxation relaxation =
                    Relaxation.solve(instance, List.of(column(0, 1))).orElseThrow();
            Dive.Result dive = Dive.from(instance, relaxation);
            assertThat(dive.plan().stream().filter(c -> c.stock() == 1)).hasSize(2);
            assertThat(FirstPlans.cost(instance, dive.plan())).isEqualTo(2 + 3 * 10);
            relaxation.close();
        }
    }
}
