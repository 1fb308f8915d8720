package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.firmset.season.money.BudgetDifference;
import org.firmset.season.money.BudgetWords;
import org.firmset.season.money.MadeWords;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.money.Thing;
import org.firmset.season.words.WordTable;
import org.firmset.spend.Baseline;

/** Where figures of what changed since a budget lead: what receipts tell to them, all others to how they were made. */
final class DifferenceCells implements Making {
    private static final Set<Integer> DIFFERENCES = Set.of(2, 3, 4, 5);
    private static final int SPENT = 6;
    private static final int COMMITTED = 7;
    private static final int AMOUNT = 3;

    private final MoneyReport money;
    private final Baseline kept;
    private final List<BudgetDifference> all;
    private final List<List<String>> rows;

    DifferenceCells(MoneyReport money, Baseline kept, BudgetWords words) {
        this.money = money;
        this.kept = kept;
        all = words.all();
        rows = words.differences().rows();
    }

    Optional<String> receipts(int row, int column) {
        if (row >= all.size()) {
            return Optional.empty();
        }
        Thing thing = all.get(row).thing();
        return money.bought(thing)
                .filter(b -> column == SPENT
                        || (column == COMMITTED && !b.committed().isZero()))
                .map(b -> column == SPENT ? ReceiptLinks.of(thing) : ReceiptLinks.ordersOf(thing));
    }

    /** A sum of the rows above it opens to nothing more than these. */
    @Override
    public boolean opens(int row, int column) {
        return row < all.size()
                && DIFFERENCES.contains(column)
                && !rows.get(row).get(column).equals(WordTable.NONE);
    }

    @Override
    public Component of(int row) {
        MadeWords words = new MadeWords(money, kept);
        BudgetDifference one = all.get(row);
        List<MadeWords.Part> parts = words.parts(one);
        TablePanel table = new TablePanel(
                words.table(one),
                (r, column) -> column == AMOUNT && parts.get(r).ofReceipts()
                        ? Optional.of(ReceiptLinks.of(one.thing()))
                        : Optional.empty());
        return new Div(SpendSections.sums(table), SpendSections.list(words.sums(one)));
    }

    @Override
    public String key(int row) {
        return row < all.size() ? "difference of " + all.get(row).thing() : "differences in all";
    }
}
