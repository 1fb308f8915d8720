package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Section;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.money.MoneyWords;
import org.jspecify.annotations.Nullable;

/** Where the money stands: each subproject at a glance, then by stage and by what it was for. */
final class StandPanel extends Div {
    StandPanel(MoneyReport money, Unfolded unfolded) {
        MoneyWords words = new MoneyWords(money);
        add(StandingCard.cards(money), SpendSections.list(words.notes()));
        add(unfolded.details(
                "overview",
                "The subprojects side by side, in figures",
                () -> SpendSections.sums(new TablePanel(words.overview()))));
        add(drill(money, words, unfolded));
    }

    private static Section drill(MoneyReport money, MoneyWords words, Unfolded unfolded) {
        Section section = SpendSections.section(SpendIndex.STAGES);
        for (@Nullable String subproject : words.bearers()) {
            section.add(unfolded.details(
                    "stages of " + subproject,
                    words.name(subproject),
                    () -> stages(money, words, subproject, unfolded)));
        }
        return section;
    }

    private static Component stages(
            MoneyReport money, MoneyWords words, @Nullable String subproject, Unfolded unfolded) {
        ComingCells cells = new ComingCells(money, words.rowsOf(subproject));
        TablePanel table = new TablePanel(words.drill(subproject), cells::receipts, cells, unfolded);
        table.addClassName("fs-stage-sums");
        return SpendSections.sums(table);
    }
}
