package org.firmset.season.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Progress;
import org.firmset.homestead.Stage;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.measure.Cash;
import org.firmset.measure.Hours;
import org.firmset.spend.Baseline;
import org.firmset.spend.FinishedWork;
import org.firmset.spend.Forecast;
import org.firmset.spend.RandomReceipts;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptFilter;
import org.firmset.spend.Selected;
import org.javamoney.moneta.Money;
import org.junit.jupiter.api.Test;

/** Whatever was bought and budgeted: the receipts behind a figure add up to it. Others by -Dfirmset.seed=... */
class OpenedFiguresTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 12, 1);
    private static final Homestead DEMO = SeedHomesteads.demo(TODAY);
    private static final int CASES = 60;

    private static MoneyReport report(Homestead homestead, List<Receipt> receipts) {
        return MoneyReport.of(new Books(homestead, null, receipts, TODAY));
    }

    private static Selected listed(List<Receipt> receipts, ReceiptFilter filter) {
        return receipts.stream()
                .flatMap(r -> Selected.of(r, filter).stream())
                .reduce(Selected.none("USD"), Selected::plus);
    }

    /** Some receipts, and what became of them: a few are gone, others have come. */
    private record Story(List<Receipt> before, List<Receipt> after) {
        static Story of(long seed) {
            RandomReceipts random = new RandomReceipts(seed);
            SplittableRandom dice = new SplittableRandom(seed);
            List<Receipt> before = random.many(dice.nextInt(15));
            List<Receipt> after = new ArrayList<>(before);
            after.removeIf(r -> dice.nextInt(4) == 0);
            after.addAll(random.many(dice.nextInt(15)));
            return new Story(before, after);
        }
    }

    /** The rows of stages add up to their subproject, each is the sum of the kinds under it, and all link to their receipts. */
    @Test
    void stages_add_up_to_what_stands_at_a_glance_and_open_to_their_receipts() {
        int stages = 0;
        for (long seed = RandomReceipts.SEED; seed < RandomReceipts.SEED + CASES; seed++) {
            List<Receipt> receipts = Story.of(seed).after();
            MoneyWords words = new MoneyWords(report(DEMO, receipts));
            for (MoneyWords.Standing standing : words.standings()) {
                String what = "seed " + seed + ", " + standing;
                Money sum = Cash.ofCents(0, "USD");
                Money kinds = Cash.ofCents(0, "USD");
                for (Forecast.Row row : words.rowsOf(standing.subproject())) {
                    Selected list = listed(receipts, filter(row.of()));
                    assertThat(row.spent()).as(what).isEqualTo(list.spent());
                    assertThat(row.committed()).as(what).isEqualTo(list.committed());
                    if (row.of().kind() == null) {
                        assertThat(kinds).as(what).isEqualTo(sum);
                        sum = sum.add(row.expected());
                        stages++;
                    } else {
                        kinds = kinds.add(row.expected());
                    }
                }
                assertThat(kinds).as(what).isEqualTo(sum);
                assertThat(standing.row().expected()).as(what).isEqualTo(sum);
            }
        }
        assertThat(stages).isGreaterThan(CASES * 5);
    }

    private static ReceiptFilter filter(Forecast.Of of) {
        return ReceiptFilter.ofSubproject(ReceiptFilter.orNobody(of.subproject()))
                .withStage(ReceiptFilter.orNobody(of.stage()))
                .withKind(of.kind());
    }

    @Test
    void the_receipts_of_each_difference_add_up_to_what_is_spent_and_on_order_of_it() {
        int linked = 0;
        int committed = 0;
        for (long seed = RandomReceipts.SEED; seed < RandomReceipts.SEED + CASES; seed++) {
            Story story = Story.of(seed);
            Baseline kept = report(DEMO, story.before()).budget();
            MoneyReport now = report(DEMO, story.after());
            for (BudgetDifference one : BudgetDifference.of(kept, now.budget())) {
                Selected list = listed(story.after(), one.thing().receipts());
                Money none = Cash.ofCents(0, "USD");
                String what = "seed " + seed + ", " + one;
                assertThat(now.bought(one.thing()).map(Bought::spent).orElse(none))
                        .as(what)
                        .isEqualTo(list.spent());
                assertThat(now.bought(one.thing()).map(Bought::committed).orElse(none))
                        .as(what)
                        .isEqualTo(list.committed());
                linked += list.spent().isZero() ? 0 : 1;
                committed += list.committed().isZero() ? 0 : 1;
            }
        }
        assertThat(linked).isGreaterThan(CASES * 5);
        assertThat(committed).isGreaterThan(CASES);
    }

    @Test
    void the_parts_of_each_difference_make_what_is_expected_now() {
        for (long seed = RandomReceipts.SEED; seed < RandomReceipts.SEED + CASES; seed++) {
            Story story = Story.of(seed);
            MoneyReport now = report(DEMO, story.after());
            MadeParts.makeTheWhole(report(DEMO, story.before()).budget(), now, "seed " + seed);
        }
    }

    @Test
    void the_receipts_of_finished_stages_add_up_to_what_they_cost() {
        Homestead begun = finished("water-track", "cabin-holes");
        Set<String> stages = FinishedWork.of(begun).keySet();
        assertThat(stages).contains("water-track", "cabin-holes");
        int spent = 0;
        for (long seed = RandomReceipts.SEED; seed < RandomReceipts.SEED + CASES; seed++) {
            Story story = Story.of(seed);
            Baseline kept = report(DEMO, story.before()).budget();
            MoneyReport now = report(begun, story.after());
            Selected all = listed(story.after(), ReceiptFilter.ofFinished(stages));
            assertThat(now.worth(kept).actual())
                    .as("seed " + seed)
                    .isEqualTo(all.spent().add(all.committed()));
            WorthWords words = new WorthWords(now, kept);
            for (String stage : words.finished()) {
                Forecast.Row cost = words.costOf(stage);
                Selected list = listed(story.after(), ReceiptFilter.ALL.withStage(stage));
                assertThat(cost.spent()).as("seed %d, %s", seed, stage).isEqualTo(list.spent());
                assertThat(cost.committed()).as("seed %d, %s", seed, stage).isEqualTo(list.committed());
                spent += list.spent().isZero() ? 0 : 1;
            }
        }
        assertThat(spent).isGreaterThan(CASES);
    }

    @Test
    void the_stages_of_planned_and_earned_worth_add_up() {
        Homestead begun = finished("water-track", "cabin-holes");
        List<Receipt> receipts = new RandomReceipts(RandomReceipts.SEED).many(20);
        Baseline undated = report(begun, receipts).budget();
        // without a plan nothing has a planned finish: say one for some
        Map<String, LocalDate> days =
                Map.of("water-track", TODAY.minusDays(3), "shop-base", TODAY, "cabin-piers", TODAY.plusDays(1));
        Baseline kept = new Baseline(
                undated.on(),
                undated.currency(),
                undated.items().stream()
                        .map(i -> i.stage() == null
                                ? i
                                : Changed.with(Baseline.Item.class, i, "finish", days.get(i.stage())))
                        .toList(),
                List.of());
        MoneyReport now = report(begun, receipts);
        WorthWords words = new WorthWords(now, kept);
        assertThat(words.planned().rows()).hasSize(3);
        assertThat(column(words.planned().rows(), 2)).isEqualTo(now.worth(kept).planned());
        assertThat(column(words.earned().rows(), 2)).isEqualTo(now.worth(kept).earned());
        assertThat(column(words.earned().rows(), 3).add(column(words.earned().rows(), 4)))
                .isEqualTo(now.worth(kept).actual());
        assertThat(column(words.whole().rows(), 1)).isEqualTo(now.worth(kept).budget());
    }

    /** The sum of all rows but the last, which must say the same. */
    private static Money column(List<List<String>> rows, int column) {
        List<Money> amounts = rows.stream()
                .map(r -> Cash.parse(
                        r.get(column).replace("$", "").replace(",", "").replace("\u2212", "-") + " USD"))
                .toList();
        Money sum = amounts.subList(0, amounts.size() - 1).stream().reduce(Cash.ofCents(0, "USD"), Money::add);
        assertThat(amounts.getLast()).isEqualTo(sum);
        return sum;
    }

    private static Homestead finished(String... keys) {
        List<String> wanted = List.of(keys);
        Progress done = new Progress(TODAY.minusDays(9), Hours.NONE, TODAY.minusDays(2));
        return DEMO.withStages(DEMO.stages().stream()
                .map(s -> wanted.contains(s.key()) ? Changed.with(Stage.class, s, "progress", done) : s)
                .toList());
    }
}
