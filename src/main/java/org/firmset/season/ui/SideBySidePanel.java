package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Html;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import org.firmset.season.ask.Compared;
import org.firmset.season.ask.SideBySide;
import org.firmset.season.ask.SideBySideWords;
import org.firmset.season.words.WordTable;

/** Two plans: the difference in a sentence, in tables and drawn. */
final class SideBySidePanel extends Div {

    SideBySidePanel(Compared.Plans compared) {
        addClassName("fs-side-by-side");
        SideBySide plans = compared.plans();
        SideBySideWords words = new SideBySideWords(plans);
        Paragraph price = new Paragraph(words.price());
        price.addClassName("fs-proof");
        add(price);
        for (WordTable table : words.tables()) {
            if (!table.rows().isEmpty()) {
                add(new Section(new H2(table.title()), new TablePanel(table)));
            }
        }
        List<String> kept = words.kept();
        if (!kept.isEmpty()) {
            add(new Details(
                    kept.size() == 1 ? "1 stage did not move" : kept.size() + " stages did not move", list(kept)));
        }
        words.trips().forEach(t -> add(new Paragraph(t)));
        if (!plans.moved().isEmpty()) {
            add(drawn(plans));
        }
        if (!compared.notes().isEmpty()) {
            add(new Section(new H2("Why, and how sure"), list(compared.notes())));
        }
    }

    private static Component drawn(SideBySide plans) {
        Paragraph key =
                new Paragraph(("Above each line, outlined: where a stage lies in '%s'. Below it, filled: where it"
                                + " lies in '%s'. Ticks on the line are trips with work for the subproject. The numbers are"
                                + " those of the table.")
                        .formatted(plans.first().name(), plans.second().name()));
        Div frame = new Div(new Html(new MovesDrawing(plans).svg()));
        frame.addClassName("fs-drawing-frame");
        frame.getElement().setAttribute("tabindex", "0");
        return new Section(new H2("Where the stages lie"), key, frame);
    }

    private static UnorderedList list(List<String> sentences) {
        UnorderedList list = new UnorderedList();
        sentences.forEach(s -> list.add(new ListItem(s)));
        return list;
    }
}
