package org.firmset.season.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.firmset.season.money.BudgetDocument;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.store.Baselines;
import org.firmset.season.store.KeptBaseline;
import org.firmset.season.store.KeptBudgets;
import org.firmset.season.words.Dates;
import org.firmset.shell.RemovalButton;

/** Budgets that were kept, and how what is expected now differs from one of them and why. */
final class BudgetPanel extends Section {
    BudgetPanel(
            MoneyReport money,
            KeptBudgets kept,
            Optional<KeptBaseline> chosen,
            Baselines baselines,
            UUID homestead,
            Unfolded unfolded,
            Consumer<UUID> choose) {
        addClassName("fs-block");
        add(new H2(SpendIndex.BUDGET));
        setId(SpendIndex.id(SpendIndex.BUDGET));
        Button keep = new Button(
                "Keep today's budget",
                e -> choose.accept(baselines.keep(homestead, money.budget()).id()));
        Div buttons = new Div();
        buttons.addClassNames("fs-buttons", "fs-no-print");
        if (kept.whole().size() > 1) {
            chosen.ifPresent(c -> buttons.add(choice(money, kept.whole(), c, choose)));
        }
        buttons.add(keep);
        chosen.ifPresentOrElse(c -> add(new ComparedPanel(money, c, unfolded)), () -> nothing(money));
        add(buttons);
        chosen.ifPresent(c -> buttons.add(removal(c.budget().on(), () -> {
            baselines.remove(homestead, c.id());
            choose.accept(c.id());
        })));
        kept.unread()
                .forEach(u -> add(unread(u), removal(u.on(), () -> {
                    baselines.remove(homestead, u.id());
                    choose.accept(chosen.map(KeptBaseline::id).orElse(u.id()));
                })));
    }

    private static Paragraph unread(KeptBudgets.Unread budget) {
        Paragraph told = new Paragraph(
                new BudgetDocument.Unreadable(budget.why()).told("The budget of " + Dates.date(budget.on())));
        told.addClassName("fs-warning");
        return told;
    }

    private void nothing(MoneyReport money) {
        String words =
                "No budget has been kept yet. Today's would be %s, what is spent included. Keep it, and from then"
                        + " on every change is told as price, quantity or something new.";
        add(new Paragraph(words.formatted(money.show(money.budget().whole()))));
    }

    private static Select<KeptBaseline> choice(
            MoneyReport money, List<KeptBaseline> kept, KeptBaseline chosen, Consumer<UUID> choose) {
        Select<KeptBaseline> select = new Select<>();
        select.setLabel("Budget to hold it against");
        select.setWidth("min(100%, 18rem)");
        select.setItems(kept);
        select.setItemLabelGenerator(k -> "%s, %s"
                .formatted(Dates.date(k.budget().on()), money.show(k.budget().whole())));
        select.setValue(chosen);
        select.addValueChangeListener(e -> choose.accept(e.getValue().id()));
        return select;
    }

    private static Button removal(LocalDate on, Runnable remove) {
        Button removal = new RemovalButton("Remove the budget of " + Dates.date(on), remove);
        removal.addClassName("fs-no-print");
        return removal;
    }
}
