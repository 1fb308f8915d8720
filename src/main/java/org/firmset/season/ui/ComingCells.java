package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import java.util.List;
import java.util.Optional;
import org.firmset.season.money.ComingWords;
import org.firmset.season.money.MoneyReport;
import org.firmset.spend.Forecast;

/** Where figures of a stage lead: what receipts tell to them, what is still to pay to what it is made of. */
final class ComingCells implements Making {
    private static final int SPENT = 1;
    private static final int COMMITTED = 2;
    private static final int STILL_TO_PAY = 3;

    private final List<Forecast.Row> rows;
    private final ComingWords words;

    ComingCells(MoneyReport money, List<Forecast.Row> rows) {
        this.rows = rows;
        words = new ComingWords(money);
    }

    Optional<String> receipts(int row, int column) {
        Forecast.Row figures = rows.get(row);
        if (column == SPENT && !figures.spent().isZero()) {
            return Optional.of(ReceiptLinks.to(ReceiptLinks.of(figures.of())));
        }
        return column == COMMITTED && !figures.committed().isZero()
                ? Optional.of(ReceiptLinks.toOrders(ReceiptLinks.of(figures.of())))
                : Optional.empty();
    }

    @Override
    public boolean opens(int row, int column) {
        return column == STILL_TO_PAY && !rows.get(row).toBuy().isZero();
    }

    @Override
    public Component of(int row) {
        return SpendSections.sums(new TablePanel(words.table(rows.get(row).of())));
    }

    @Override
    public String key(int row) {
        return "still to pay of " + rows.get(row).of();
    }
}
