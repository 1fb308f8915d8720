package org.firmset.season.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.firmset.homestead.SpendingLimit;
import org.firmset.season.Seasons;
import org.firmset.season.ask.Against;
import org.firmset.season.ask.Compared;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.money.TimeWords;
import org.firmset.season.result.PlannedHomestead;
import org.firmset.season.result.SeasonReport;
import org.firmset.spend.table.Numbers;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** What if a month may take so much at the most: planned again and set beside the plan now. */
final class MonthLimitPanel extends Div {
    private final Seasons seasons;
    private final UUID homestead;
    private final Function<PlannedHomestead, MoneyReport> reckon;
    private String currency = "";
    private @Nullable SeasonReport plan;
    private final TextField amount = new TextField("At most in a month");
    private final Checkbox firm = new Checkbox("Whatever it takes: no plan may spend more");
    private final Button ask = new Button("What would that mean?", e -> ask());
    private final Div result = new Div();

    /** @param reckon the money of another plan of the homestead */
    MonthLimitPanel(Seasons seasons, UUID homestead, Function<PlannedHomestead, MoneyReport> reckon) {
        this.seasons = seasons;
        this.homestead = homestead;
        this.reckon = reckon;
        addClassNames("fs-ask", "fs-no-print");
        result.getElement().setAttribute("role", "status");
        result.getElement().setAttribute("aria-live", "polite");
        Div fields = new Div(amount, firm, ask);
        fields.addClassName("fs-asking");
        add(fields, result);
    }

    /** Asks about this plan; what was typed stays, and so does the answer while the plan is the same. */
    void show(MoneyReport money, SeasonReport shown) {
        currency = money.currency();
        amount.setHelperText("Such as 900 " + currency);
        // what is found out about a plan that is replaced in a moment would be lost
        ask.setEnabled(!seasons.state(homestead).isLooking());
        if (!shown.equals(plan)) {
            result.removeAll();
        }
        plan = shown;
    }

    private void ask() {
        Optional<Money> most = Numbers.amount(amount.getValue(), currency);
        amount.setInvalid(most.isEmpty());
        amount.setErrorMessage("Write an amount of zero or more, such as 900 " + currency);
        most.ifPresent(m -> {
            result.removeAll();
            result.add(new Paragraph("Planning it again to see ..."));
            UI ui = UI.getCurrent();
            SpendingLimit limit = new SpendingLimit(m, Boolean.TRUE.equals(firm.getValue()));
            seasons.compare(homestead, new Against.Limited(limit), found -> Listener.tell(ui, () -> show(found)));
        });
    }

    /** First what was asked: whether it can be afforded. */
    private void months(PlannedHomestead limited) {
        TimeWords words = new TimeWords(reckon.apply(limited));
        result.add(new Paragraph(words.affordable()));
        result.add(SpendSections.sums(new TablePanel(words.months())));
    }

    private void show(Compared found) {
        result.removeAll();
        switch (found) {
            case Compared.Nothing nothing -> result.add(new Paragraph(nothing.why()));
            case Compared.Plans plans -> {
                plans.limited().ifPresent(this::months);
                result.add(new SideBySidePanel(plans));
            }
        }
    }
}
