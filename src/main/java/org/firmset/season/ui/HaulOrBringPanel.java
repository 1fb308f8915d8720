package org.firmset.season.ui;

import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.firmset.season.Seasons;
import org.firmset.season.ask.Question;
import org.firmset.season.load.HaulOrBring;
import org.firmset.season.load.TripLoads;
import org.firmset.season.result.PlannedSeason;
import org.firmset.season.result.SeasonReport;

/** Whether to fetch or to have it brought: of every supplier who brings something that this trip carries. */
final class HaulOrBringPanel extends Section {
    private final boolean words;

    HaulOrBringPanel(Seasons seasons, UUID homestead, PlannedSeason season, TripLoads loads) {
        addClassName("fs-block");
        add(new H2("Fetch it or have it brought?"));
        List<String> carried = Stream.concat(
                        loads.own().stream().map(TripLoads.OwnRun::about),
                        loads.brought().stream().map(TripLoads.BroughtRun::about))
                .flatMap(run -> run.loads().stream())
                .map(SeasonReport.LoadPart::material)
                .distinct()
                .toList();
        List<HaulOrBring> choices = HaulOrBring.of(season).stream()
                .filter(h -> h.goods().stream().anyMatch(g -> carried.contains(g.material())))
                .toList();
        words = !choices.isEmpty();
        for (HaulOrBring choice : choices) {
            add(new Paragraph(choice.sentence()));
            boolean comes = loads.brought().stream().anyMatch(b -> b.supplier().equals(choice.supplier()));
            if (comes) {
                add(new AskPanel(
                        seasons,
                        homestead,
                        "What would be without deliveries of " + choice.name() + "?",
                        new Question.Deliveries(choice.supplier())));
            }
        }
    }

    boolean hasWords() {
        return words;
    }
}
