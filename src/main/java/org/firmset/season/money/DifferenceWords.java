package org.firmset.season.money;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.firmset.season.words.WordTable;
import org.firmset.spend.Baseline;
import org.firmset.spend.Difference;
import org.javamoney.moneta.Money;

/** What changed since a budget was kept, thing by thing, in tables: beside each difference what receipts tell of it. */
public final class DifferenceWords {
    private static final List<String> HEADINGS = List.of(
            "Stage", "What", "By price", "By quantity", "By what is new or gone", "In all", "Spent so far", "On order");

    private final MoneyReport report;
    private final Names names;
    private final List<BudgetDifference> all;
    private final DifferenceCut cut;

    DifferenceWords(MoneyReport report, Baseline kept) {
        this.report = report;
        names = new Names(report.homestead());
        all = BudgetDifference.of(kept, report.budget());
        cut = DifferenceCut.of(all, kept.whole());
    }

    /** The largest first. */
    public List<BudgetDifference> all() {
        return all;
    }

    /** Those of {@link #all} that count. */
    public List<BudgetDifference> great() {
        return cut.great();
    }

    /** The others, which are little against the budget or too many; empty when they are few. */
    public List<BudgetDifference> small() {
        return cut.small();
    }

    /** The rows of {@link #all}, and last the sum of all. */
    public WordTable table() {
        return table("What changed since", all, List.of(sumRow("All together", all)));
    }

    /** The rows of {@link #great}, one of all that are in {@link #small} when there are any, and last the sum of all. */
    public WordTable greatTable() {
        List<List<String>> sums = new ArrayList<>();
        if (!small().isEmpty()) {
            sums.add(sumRow(small().size() + " smaller differences together", small()));
        }
        sums.add(sumRow("All together", all));
        return table("What changed since, the greatest first", great(), sums);
    }

    /** The rows of {@link #small}, and last their sum. */
    public WordTable smallTable() {
        return table("The smaller differences", small(), List.of(sumRow("All these together", small())));
    }

    private WordTable table(String title, List<BudgetDifference> some, List<List<String>> sums) {
        List<List<String>> rows = new ArrayList<>();
        for (BudgetDifference one : some) {
            Thing thing = one.thing();
            rows.add(row(
                    names.subproject(thing.subproject()) + ": " + names.stage(thing.stage()),
                    thing.material() == null ? MoneyWords.kind(thing.kind()) : names.material(thing.material()),
                    one.difference(),
                    report.bought(thing).map(b -> report.show(b.spent())).orElse(WordTable.NONE),
                    report.bought(thing).map(b -> report.show(b.committed())).orElse(WordTable.NONE)));
        }
        if (!rows.isEmpty()) {
            rows.addAll(sums);
        }
        return new WordTable(title, HEADINGS, rows);
    }

    private List<String> sumRow(String name, List<BudgetDifference> some) {
        return row(name, "", sum(some), "", "");
    }

    private static List<String> row(String name, String what, Difference difference, String spent, String committed) {
        return List.of(
                name,
                what,
                part(difference.price()),
                part(difference.quantity()),
                part(difference.scope()),
                MoneyWords.overUnder(difference.sum()),
                spent,
                committed);
    }

    private static String part(Money amount) {
        return amount.isZero() ? WordTable.NONE : MoneyWords.overUnder(amount);
    }

    /** Of some together. */
    Difference sum(Predicate<BudgetDifference> which) {
        return sum(all.stream().filter(which).toList());
    }

    private Difference sum(List<BudgetDifference> some) {
        Money none = report.budget().sum(i -> false);
        return some.stream()
                .map(BudgetDifference::difference)
                .reduce(new Difference(none, none, none), Difference::plus);
    }
}
