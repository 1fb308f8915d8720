package org.firmset.season.ui;

import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import java.util.List;
import org.firmset.season.load.LoadWords;
import org.firmset.season.load.SupplyWords;
import org.firmset.season.load.TripLoads;
import org.firmset.season.words.WordTable;
import org.firmset.trade.haul.Bay;

/** One run with a vehicle of one's own: drawn, with its limits, its places and its shopping list. */
final class OwnRunPanel extends Section {
    OwnRunPanel(TripLoads.OwnRun run, TripLoads loads, LoadWords words, SupplyWords supplies) {
        addClassName("fs-block");
        add(new H2(LoadWords.heading(run.about())));
        Paragraph verdict = new Paragraph(words.summary(run));
        verdict.addClassName("fs-verdict");
        add(verdict);
        words.tongue(run.placement().sheet()).map(Paragraph::new).ifPresent(this::add);
        words.toMind(run).forEach(w -> add(heed(w)));
        add(Drawn.frame(new RigDrawing(run, words).svg(), "From the side"));
        add(key());
        for (Bay bay : run.outfit().bays()) {
            if (run.items().stream().anyMatch(i -> i.cargo().bay().equals(bay.id()))) {
                add(new H3(bay.name() + " from above, front to the left"));
                add(Drawn.frame(new FloorDrawing(run, bay, words).svg(), bay.name() + " from above"));
            }
        }
        table(words.items(run));
        table(words.limits(run.placement().sheet()));
        shopping(this, supplies.shopping(run.shopping(), loads));
    }

    static Paragraph heed(String text) {
        Paragraph heed = new Paragraph(text);
        heed.addClassName("fs-warning");
        return heed;
    }

    private static Paragraph key() {
        Paragraph key = new Paragraph(
                "Boxes are as high as their zone is full; above each stands its mass, in it the numbers of"
                        + " the table. Bars are filled as far as a rating is used. Rings are tie-downs, one on either side.");
        key.addClassName("fs-terms");
        return key;
    }

    private void table(WordTable table) {
        add(new H3(table.title()), new TablePanel(table));
    }

    /** Stop by stop, in the order in which the homestead names its suppliers. */
    static void shopping(Section section, List<WordTable> stops) {
        for (WordTable stop : stops) {
            section.add(new H3("Buy: " + stop.title()), new TablePanel(stop));
        }
    }
}
