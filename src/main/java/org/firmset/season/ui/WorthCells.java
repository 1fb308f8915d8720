package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.money.WorthWords;
import org.firmset.spend.Baseline;
import org.firmset.spend.Forecast;
import org.firmset.spend.ReceiptFilter;

/** Where figures of the worth of the work lead: what it cost to receipts, what it was to cost to its stages. */
final class WorthCells implements Making {
    private static final int FIGURE = 2;
    private static final int PLANNED = 0;
    private static final int EARNED = 1;
    private static final int ACTUAL = 2;
    private static final int WHOLE = 3;
    private static final Set<Integer> MADE_OF_STAGES = Set.of(PLANNED, EARNED, WHOLE);
    private static final int SPENT = 3;
    private static final int COMMITTED = 4;

    private final WorthWords words;

    WorthCells(MoneyReport money, Baseline kept) {
        words = new WorthWords(money, kept);
    }

    Optional<String> receipts(int row, int column) {
        Forecast.Row cost = words.cost();
        boolean there = !cost.spent().isZero() || !cost.committed().isZero();
        return row == ACTUAL && column == FIGURE && there
                ? Optional.of(ReceiptLinks.to(ReceiptFilter.ofFinished(Set.copyOf(words.finished()))))
                : Optional.empty();
    }

    /** All others are ratios and differences of these, whose figures stand beside them. */
    @Override
    public boolean opens(int row, int column) {
        return column == FIGURE && MADE_OF_STAGES.contains(row);
    }

    @Override
    public Component of(int row) {
        TablePanel table = switch (row) {
            case PLANNED -> new TablePanel(words.planned());
            case EARNED -> new TablePanel(words.earned(), this::receiptsOfStage);
            default -> new TablePanel(words.whole());
        };
        if (row != WHOLE) {
            table.addClassName("fs-differences");
        }
        return SpendSections.sums(table);
    }

    /** Of all together last. */
    private Optional<String> receiptsOfStage(int row, int column) {
        List<String> finished = words.finished();
        Forecast.Row cost = row < finished.size() ? words.costOf(finished.get(row)) : words.cost();
        boolean there = column == SPENT && !cost.spent().isZero()
                || column == COMMITTED && !cost.committed().isZero();
        return there ? Optional.of(link(row, column == COMMITTED)) : Optional.empty();
    }

    private String link(int row, boolean orders) {
        List<String> finished = words.finished();
        // what a stage cost, whoever bears it
        ReceiptFilter receipts = row == finished.size()
                ? ReceiptFilter.ofFinished(Set.copyOf(finished))
                : ReceiptFilter.ALL.withStage(finished.get(row));
        return orders ? ReceiptLinks.toOrders(receipts) : ReceiptLinks.to(receipts);
    }

    @Override
    public String key(int row) {
        return "term " + row;
    }
}
