package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.firmset.season.money.BudgetDifference;
import org.firmset.season.money.DifferenceWords;
import org.firmset.season.money.MadeWords;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.money.Thing;
import org.firmset.season.words.WordTable;
import org.firmset.spend.Baseline;

/**
 * Where figures of what changed since a budget lead: what receipts tell to them, all others to how they were made, and
 * what is told together to its rows.
 */
final class DifferenceCells implements Making {
    private static final Set<Integer> DIFFERENCES = Set.of(2, 3, 4, 5);
    private static final int NAME = 0;
    private static final int SPENT = 6;
    private static final int COMMITTED = 7;
    private static final int AMOUNT = 3;

    private final MoneyReport money;
    private final Baseline kept;
    private final List<BudgetDifference> shown;
    private final List<List<String>> rows;
    private final Optional<Supplier<Component>> folded;

    /** @param folded what the row behind those that are shown opens to */
    private DifferenceCells(
            MoneyReport money,
            Baseline kept,
            List<BudgetDifference> shown,
            WordTable table,
            Optional<Supplier<Component>> folded) {
        this.money = money;
        this.kept = kept;
        this.shown = shown;
        this.rows = table.rows();
        this.folded = folded;
    }

    /** The greatest differences, and one row that opens to all smaller ones. */
    static TablePanel table(MoneyReport money, Baseline kept, DifferenceWords words, Unfolded unfolded) {
        Optional<Supplier<Component>> small = Optional.of(words.smallTable())
                .filter(table -> !table.rows().isEmpty())
                .map(table -> () -> table(
                        table, new DifferenceCells(money, kept, words.small(), table, Optional.empty()), unfolded));
        WordTable table = words.greatTable();
        return table(table, new DifferenceCells(money, kept, words.great(), table, small), unfolded);
    }

    private static TablePanel table(WordTable table, DifferenceCells cells, Unfolded unfolded) {
        TablePanel panel = new TablePanel(table, cells::receipts, cells, unfolded);
        panel.addClassName("fs-differences");
        return SpendSections.sums(panel);
    }

    private Optional<String> receipts(int row, int column) {
        if (row >= shown.size()) {
            return Optional.empty();
        }
        Thing thing = shown.get(row).thing();
        return money.bought(thing)
                .filter(b -> column == SPENT
                        || (column == COMMITTED && !b.committed().isZero()))
                .map(b ->
                        column == SPENT ? ReceiptLinks.to(thing.receipts()) : ReceiptLinks.toOrders(thing.receipts()));
    }

    /** A sum of the rows above it opens to nothing more than these. */
    @Override
    public boolean opens(int row, int column) {
        boolean figure =
                DIFFERENCES.contains(column) && !rows.get(row).get(column).equals(WordTable.NONE);
        return isFolded(row) ? column == NAME || figure : row < shown.size() && figure;
    }

    private boolean isFolded(int row) {
        return row == shown.size() && folded.isPresent();
    }

    @Override
    public Component of(int row) {
        if (isFolded(row)) {
            return folded.orElseThrow().get();
        }
        MadeWords words = new MadeWords(money, kept);
        BudgetDifference one = shown.get(row);
        List<MadeWords.Part> parts = words.parts(one);
        TablePanel table = new TablePanel(
                words.table(one),
                (r, column) -> column == AMOUNT && parts.get(r).ofReceipts()
                        ? Optional.of(ReceiptLinks.to(one.thing().receipts()))
                        : Optional.empty());
        return new Div(SpendSections.sums(table), SpendSections.list(words.sums(one)));
    }

    @Override
    public String key(int row) {
        return row < shown.size()
                ? "difference of " + shown.get(row).thing()
                : isFolded(row) ? "smaller differences" : "differences in all";
    }
}
