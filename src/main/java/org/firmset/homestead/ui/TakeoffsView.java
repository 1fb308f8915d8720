package org.firmset.homestead.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Stage;
import org.firmset.homestead.Takeoff;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.store.Kept;
import org.firmset.homestead.takeoff.Catalogue;
import org.firmset.homestead.takeoff.Needs;
import org.firmset.shell.Frame;
import org.firmset.trade.trace.Kind;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Show;
import org.firmset.trade.trace.Worksheet;

/** What has been worked out for this homestead, and everything that can be worked out. */
@Route(value = HomesteadPages.TAKEOFFS, layout = Frame.class)
@PageTitle("Firmset: takeoffs")
class TakeoffsView extends OpenedPage {

    TakeoffsView(Homesteads homesteads) {
        super(homesteads, "fs-takeoffs");
    }

    @Override
    protected void show(Kept kept, BeforeEnterEvent event) {
        add(
                new H1("Takeoffs"),
                new Paragraph(
                        "Quantities from dimensions, every figure with its formula and source. A takeoff that belongs"
                                + " to a stage gives the stage its materials: change a dimension and the plan follows."));
        Section kinds = kinds();
        kinds.setId("kinds");
        add(new Anchor(HomesteadPages.TAKEOFFS + "#kinds", "Work something out"), ofStages(kept.homestead()), kinds);
    }

    private static Section ofStages(Homestead homestead) {
        Section section = new Section(new H2("Worked out for this homestead"));
        if (homestead.takeoffs().isEmpty()) {
            section.add(new Paragraph("Nothing yet. Choose below what to work out, and keep it."));
            return section;
        }
        for (Stage stage : homestead.stages()) {
            addGroup(
                    section,
                    homestead,
                    new H3(new Anchor(HomesteadPages.stage(stage.key()), stage.name())),
                    t -> stage.key().equals(t.stage()));
        }
        addGroup(section, homestead, new H3("For no stage"), t -> t.stage() == null);
        return section;
    }

    private static void addGroup(Section section, Homestead homestead, H3 title, Predicate<Takeoff> belongs) {
        List<Takeoff> takeoffs = homestead.takeoffs().stream().filter(belongs).toList();
        if (!takeoffs.isEmpty()) {
            UnorderedList list = new UnorderedList();
            list.addClassName("fs-takeoff-list");
            takeoffs.forEach(t -> list.add(line(homestead, t)));
            section.add(title, list);
        }
    }

    private static ListItem line(Homestead homestead, Takeoff takeoff) {
        return new ListItem(
                new Anchor(HomesteadPages.takeoff(takeoff), takeoff.name()), new Span(result(homestead, takeoff)));
    }

    /** What it supplies, or what it answers when it supplies nothing. */
    private static String result(Homestead homestead, Takeoff takeoff) {
        Optional<Worksheet> worksheet = Needs.worksheet(takeoff);
        if (worksheet.isEmpty()) {
            return "cannot be worked out";
        }
        List<Line> supplied = worksheet.get().lines(Line.Role.MATERIAL).stream()
                .filter(l -> takeoff.supplies().stream().anyMatch(s -> s.line().equals(l.key())))
                .toList();
        List<Line> told = supplied.isEmpty()
                ? worksheet.get().lines(Line.Role.ANSWER).stream().limit(2).toList()
                : supplied;
        return told.stream()
                .map(l -> l.name() + ": " + Show.amount(l.amount(), homestead.units()))
                .collect(Collectors.joining(", "));
    }

    private static Section kinds() {
        Section section = new Section(new H2("Work something out"));
        Div shelves = new Div();
        shelves.addClassName("fs-sections");
        Catalogue.shelves().forEach((heading, kinds) -> shelves.add(shelf(heading, kinds)));
        section.add(shelves);
        return section;
    }

    private static Section shelf(String heading, List<Kind<?>> kinds) {
        Section section = new Section(new H2(heading));
        UnorderedList list = new UnorderedList();
        kinds.forEach(k ->
                list.add(new ListItem(new Anchor(HomesteadPages.takeoff(k), k.name()), new Span(": " + k.purpose()))));
        section.add(list);
        return section;
    }
}
