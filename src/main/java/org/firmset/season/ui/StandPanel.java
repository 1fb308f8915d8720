package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Section;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.money.MoneyWords;
import org.firmset.spend.Forecast;
import org.jspecify.annotations.Nullable;

/** Where the money stands: each subproject at a glance, then by stage and by what it was for. */
final class StandPanel extends Div {
    /** Columns whose figures come of receipts: spent and committed. */
    private static final Set<Integer> OF_RECEIPTS = Set.of(1, 2);

    StandPanel(MoneyReport money, Unfolded unfolded) {
        MoneyWords words = new MoneyWords(money);
        add(StandingCard.cards(money), SpendSections.list(words.notes()));
        add(unfolded.details(
                "overview",
                "The subprojects side by side, in figures",
                () -> SpendSections.sums(new TablePanel(words.overview()))));
        add(drill(words, unfolded));
    }

    private static Section drill(MoneyWords words, Unfolded unfolded) {
        Section section = SpendSections.section("Stage by stage");
        for (@Nullable String subproject : words.bearers()) {
            section.add(unfolded.details(
                    "stages of " + subproject, words.name(subproject), () -> stages(words, subproject)));
        }
        return section;
    }

    private static Component stages(MoneyWords words, @Nullable String subproject) {
        List<Forecast.Row> rows = words.rowsOf(subproject);
        TablePanel table = new TablePanel(
                words.drill(subproject),
                (row, column) -> isOfReceipts(rows.get(row), column)
                        ? Optional.of(ReceiptLinks.of(rows.get(row).of()))
                        : Optional.empty());
        table.addClassName("fs-stage-sums");
        return SpendSections.sums(table);
    }

    private static boolean isOfReceipts(Forecast.Row row, int column) {
        return OF_RECEIPTS.contains(column) && !(column == 1 ? row.spent() : row.committed()).isZero();
    }
}
