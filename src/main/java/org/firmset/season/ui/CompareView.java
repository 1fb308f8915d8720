package org.firmset.season.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.store.Homesteads;
import org.firmset.plan.Style;
import org.firmset.season.Seasons;
import org.firmset.season.ask.Against;
import org.firmset.season.ask.Compared;
import org.firmset.season.ask.Comparing;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.words.StyleWords;
import org.firmset.shell.Frame;

/** The plan now beside the plan before the last change, or beside that of another style. */
@Route(value = "season/compare", layout = Frame.class)
@PageTitle("Firmset: two plans side by side")
class CompareView extends SeasonPage {
    private Against chosen = new Against.PlanBefore();

    CompareView(Homesteads homesteads, Seasons seasons) {
        super(homesteads, seasons);
        addClassName("fs-compare");
    }

    @Override
    void show(Homestead homestead, SeasonReport report) {
        add(new H1("Two plans side by side"), new Paragraph(new Anchor("season", "Back to the season")));
        opened().ifPresent(id -> {
            Div result = new Div();
            result.getElement().setAttribute("role", "status");
            result.getElement().setAttribute("aria-live", "polite");
            Button compare = new Button("Set side by side", e -> compare(id, result));
            // what is found out about a plan that is replaced in a moment would be lost
            compare.setEnabled(!seasons().state(id).isLooking());
            add(choice(report.style()), compare, result);
        });
    }

    private RadioButtonGroup<Against> choice(Style now) {
        RadioButtonGroup<Against> group = new RadioButtonGroup<>("The plan now, beside");
        List<Against> all = new ArrayList<>(List.of(new Against.PlanBefore()));
        Arrays.stream(Style.values())
                .filter(s -> s != now)
                .map(Against.OtherStyle::new)
                .forEach(all::add);
        group.setItems(all);
        group.setItemLabelGenerator(CompareView::words);
        chosen = all.contains(chosen) ? chosen : all.getFirst();
        group.setValue(chosen);
        group.addValueChangeListener(e -> chosen = e.getValue());
        return group;
    }

    private static String words(Against against) {
        return switch (against) {
            case Against.PlanBefore before -> "the plan before the last change";
            case Against.OtherStyle other -> "another style: " + StyleWords.of(other.style());
            case Against.Limited limited -> Comparing.words(limited.limit());
        };
    }

    private void compare(UUID id, Div result) {
        result.removeAll();
        result.add(new Paragraph("Working it out ..."));
        UI ui = UI.getCurrent();
        seasons().compare(id, chosen, compared -> Listener.tell(ui, () -> show(result, compared)));
    }

    private static void show(Div result, Compared compared) {
        result.removeAll();
        switch (compared) {
            case Compared.Nothing nothing -> result.add(new Paragraph(nothing.why()));
            case Compared.Plans plans -> result.add(new SideBySidePanel(plans));
        }
    }
}
