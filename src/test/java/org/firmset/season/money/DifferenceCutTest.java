package org.firmset.season.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.measure.Cash;
import org.firmset.season.words.WordTable;
import org.firmset.spend.Baseline;
import org.firmset.spend.LineKind;
import org.firmset.spend.RandomReceipts;
import org.javamoney.moneta.Money;
import org.junit.jupiter.api.Test;

/** Which differences stand on the page and which are folded: the cut is common practice, no source. */
class DifferenceCutTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 12, 1);
    private static final Money BUDGET = cents(1_000_000);

    private static Money cents(long cents) {
        return Cash.ofCents(cents, "USD");
    }

    private static Baseline budget(List<Baseline.Item> items) {
        return new Baseline(TODAY, "USD", items, List.of());
    }

    private static Baseline.Item item(int number, long quantity, long cents) {
        return new Baseline.Item(
                "water",
                "stage-" + number,
                LineKind.OTHER,
                null,
                BigDecimal.valueOf(quantity),
                cents(cents),
                null,
                null);
    }

    /** Each thing was to cost 100.00 and costs so much more. */
    private static List<BudgetDifference> over(long... cents) {
        List<Baseline.Item> before = IntStream.range(0, cents.length)
                .mapToObj(i -> item(i, 1, 10_000))
                .toList();
        List<Baseline.Item> now = IntStream.range(0, cents.length)
                .mapToObj(i -> item(i, 1, 10_000 + cents[i]))
                .toList();
        return BudgetDifference.of(budget(before), budget(now));
    }

    private static List<Long> sums(List<BudgetDifference> some) {
        return some.stream().map(d -> Cash.cents(d.difference().sum())).toList();
    }

    @Test
    void what_is_together_no_more_than_a_hundredth_of_the_budget_is_folded() {
        // a hundredth is 100.00: 60.00, 30.00, 9.99 and 0.01 make just that
        DifferenceCut cut =
                DifferenceCut.of(over(1, 999, 3_000, -6_000, 20_000, 30_000, -40_000, 50_000, 60_000, 10_001), BUDGET);
        assertThat(sums(cut.small())).containsExactly(-6_000L, 3_000L, 999L, 1L);
        assertThat(sums(cut.great())).containsExactly(60_000L, 50_000L, -40_000L, 30_000L, 20_000L, 10_001L);
    }

    @Test
    void of_few_or_of_many_small_ones_some_are_always_shown_and_never_too_many() {
        assertThat(DifferenceCut.of(over(1, 2, 3, 4, 5, 6, 7, 8), BUDGET).small())
                .isEmpty();
        DifferenceCut small = DifferenceCut.of(over(1, 2, 3, 4, 5, 6, 7, 8, 9), BUDGET);
        assertThat(sums(small.great())).containsExactly(9L, 8L, 7L, 6L, 5L);
        assertThat(small.small()).hasSize(DifferenceCut.LEAST_FOLDED);
        DifferenceCut great = DifferenceCut.of(
                over(IntStream.range(0, 40).mapToLong(i -> 100_000L + i).toArray()), BUDGET);
        assertThat(great.great()).hasSize(DifferenceCut.MOST_SHOWN);
        assertThat(great.small()).hasSize(40 - DifferenceCut.MOST_SHOWN);
    }

    /** Twice as much at half the price costs what it was to cost, but nobody would call that a small change. */
    @Test
    void a_rise_that_is_made_up_for_by_less_of_it_is_not_folded() {
        List<Baseline.Item> before = new ArrayList<>(List.of(item(99, 100, 500_000)));
        List<Baseline.Item> now = new ArrayList<>(List.of(item(99, 50, 500_001)));
        for (int i = 0; i < 20; i++) {
            before.add(item(i, 1, 10_000));
            now.add(item(i, 1, 10_000 + 50 + i));
        }
        DifferenceCut cut = DifferenceCut.of(BudgetDifference.of(budget(before), budget(now)), BUDGET);
        assertThat(sums(cut.great())).contains(1L);
        assertThat(sums(cut.small())).doesNotContain(1L).isNotEmpty();
    }

    /** Whatever was bought: nothing is lost between the two, and the folded row is the sum of its rows to the cent. */
    @Test
    void the_rows_on_the_page_add_up_to_the_sum_row_to_the_cent() {
        Homestead demo = SeedHomesteads.demo(TODAY);
        int folded = 0;
        for (long seed = RandomReceipts.SEED; seed < RandomReceipts.SEED + 30; seed++) {
            SplittableRandom dice = new SplittableRandom(seed);
            Baseline kept = MoneyReport.of(
                            new Books(demo, null, new RandomReceipts(seed).many(dice.nextInt(40)), TODAY))
                    .budget();
            MoneyReport now =
                    MoneyReport.of(new Books(demo, null, new RandomReceipts(seed + 1).many(dice.nextInt(40)), TODAY));
            DifferenceWords words = new DifferenceWords(now, kept);
            assertThat(Stream.concat(words.great().stream(), words.small().stream()))
                    .as("seed %d", seed)
                    .containsExactlyInAnyOrderElementsOf(words.all());
            addsUp(words.greatTable(), "seed " + seed);
            addsUp(words.smallTable(), "seed " + seed);
            addsUp(words.table(), "seed " + seed);
            if (!words.small().isEmpty()) {
                folded++;
                assertThat(words.greatTable().rows().reversed().get(1).subList(1, 8))
                        .as("seed %d", seed)
                        .isEqualTo(words.smallTable().rows().getLast().subList(1, 8));
                assertThat(words.greatTable().rows().getLast())
                        .isEqualTo(words.table().rows().getLast());
            }
        }
        assertThat(folded).isGreaterThan(5);
    }

    private static void addsUp(WordTable table, String what) {
        if (table.rows().isEmpty()) {
            return;
        }
        for (int column = 2; column <= 5; column++) {
            int c = column;
            List<Long> cents = table.rows().stream().map(r -> cents(r.get(c))).toList();
            assertThat(cents.subList(0, cents.size() - 1).stream()
                            .mapToLong(Long::longValue)
                            .sum())
                    .as("%s, column %d", what, c)
                    .isEqualTo(cents.getLast());
        }
    }

    private static long cents(String cell) {
        String digits = cell.replaceAll("[^0-9.]", "");
        long cents =
                digits.isEmpty() ? 0 : new BigDecimal(digits).movePointRight(2).longValueExact();
        return cell.endsWith("under") ? -cents : cents;
    }
}
