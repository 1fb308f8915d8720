package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import org.firmset.homestead.Subproject;
import org.firmset.season.money.BudgetWords;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.store.KeptBaseline;

/** How what is expected now differs from a kept budget and why, and the worth of the work so far. */
final class ComparedPanel extends Div {
    ComparedPanel(MoneyReport money, KeptBaseline chosen, Unfolded unfolded) {
        BudgetWords words = new BudgetWords(money, chosen.budget());
        add(new Paragraph(words.verdict()));
        add(SpendSections.list(money.homestead().subprojects().stream()
                .map(Subproject::key)
                .map(words::verdict)
                .toList()));
        if (!words.differences().all().isEmpty()) {
            add(unfolded.details(
                    "differences",
                    "What changed since, thing by thing",
                    () -> DifferenceCells.table(money, chosen.budget(), words.differences(), unfolded)));
        }
        add(SpendSections.list(words.worth()));
        add(unfolded.details("terms", "The figures underneath", () -> worth(money, chosen, words, unfolded)));
    }

    private static Component worth(MoneyReport money, KeptBaseline chosen, BudgetWords words, Unfolded unfolded) {
        WorthCells cells = new WorthCells(money, chosen.budget());
        return new TablePanel(words.terms(), cells::receipts, cells, unfolded);
    }
}
