package org.firmset.season.ui;

import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import org.firmset.season.load.LoadWords;
import org.firmset.season.load.SupplyWords;
import org.firmset.season.load.TripLoads;

/** A delivery: what comes on which terms, and what to know of it. */
final class BroughtRunPanel extends Section {
    BroughtRunPanel(TripLoads.BroughtRun run, TripLoads loads, LoadWords words, SupplyWords supplies) {
        addClassName("fs-block");
        Paragraph summary = new Paragraph(words.summary(run));
        summary.addClassName("fs-verdict");
        add(new H2(LoadWords.heading(run.about())), summary);
        UnorderedList notes = new UnorderedList();
        run.about().notes().forEach(n -> notes.add(new ListItem(n)));
        if (!run.about().notes().isEmpty()) {
            add(notes);
        }
        OwnRunPanel.shopping(this, supplies.shopping(run.shopping(), loads));
    }
}
