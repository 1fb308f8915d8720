package org.firmset.season.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import java.util.UUID;
import org.firmset.season.Seasons;
import org.firmset.season.ask.MorePower;
import org.firmset.season.ask.MorePowerWords;
import org.firmset.season.words.WordTable;

/** What more battery, panels or generator hours would bring the whole season, worked out when it is asked for. */
final class MorePowerPanel extends Section {
    private final Seasons seasons;
    private final UUID homestead;
    private final Div answer = new Div();

    MorePowerPanel(Seasons seasons, UUID homestead) {
        super(
                new H2("What would more power bring?"),
                new Paragraph("The whole season is planned again with more battery, more panels or longer hours of the"
                        + " generator, each alone: how little of it is enough, what it costs and what it saves."));
        this.seasons = seasons;
        this.homestead = homestead;
        addClassNames("fs-block", "fs-no-print");
        answer.addClassName("fs-answer");
        answer.getElement().setAttribute("role", "status");
        answer.getElement().setAttribute("aria-live", "polite");
        Button button = new Button("Work it out", e -> ask());
        // what is found out about a plan that is replaced in a moment would be lost
        button.setEnabled(!seasons.state(homestead).isLooking());
        add(button, answer);
    }

    private void ask() {
        answer.removeAll();
        answer.add(new Paragraph("Planning it again to see ..."));
        UI ui = UI.getCurrent();
        seasons.morePower(homestead, found -> Listener.tell(ui, () -> show(found)));
    }

    private void show(MorePower found) {
        answer.removeAll();
        MorePowerWords.sentences(found).forEach(s -> answer.add(new Paragraph(s)));
        if (found instanceof MorePower.Limiting limiting) {
            WordTable table = MorePowerWords.table(limiting);
            if (!table.rows().isEmpty()) {
                answer.add(new TablePanel(table));
            }
            MorePowerWords.notes(limiting).forEach(n -> {
                Paragraph note = new Paragraph(n);
                note.addClassName("fs-terms");
                answer.add(note);
            });
        }
    }
}
