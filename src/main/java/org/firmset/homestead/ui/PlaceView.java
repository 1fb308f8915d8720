package org.firmset.homestead.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import java.io.ByteArrayInputStream;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Place;
import org.firmset.homestead.file.HomesteadFile;
import org.firmset.homestead.part.Part;
import org.firmset.homestead.store.Changes;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.store.Kept;
import org.firmset.homestead.store.Listed;
import org.firmset.shell.Frame;

/** Place, climate, open dates, people, vehicles, power, tools, suppliers, prices; the homestead file. */
@Route(value = HomesteadPages.PLACE, layout = Frame.class)
@PageTitle("Firmset: place and kit")
class PlaceView extends OpenedPage {
    /** In the order in which a person describes a place; the rest is on the page of the stages. */
    private static final List<String> PARTS = List.of(
            "place",
            "travel",
            "openDates",
            "people",
            "vehicles",
            "trailers",
            "power",
            "water",
            "storage",
            "tools",
            "materials",
            "suppliers",
            "stock",
            "spendingLimit",
            "budgeting",
            "pins");

    private final Homesteads homesteads;
    private final Changes changes;
    private final Clock clock;

    PlaceView(Homesteads homesteads, Changes changes, Clock clock) {
        super(homesteads, "fs-place");
        this.homesteads = homesteads;
        this.changes = changes;
        this.clock = clock;
    }

    @Override
    protected void show(Kept kept, BeforeEnterEvent event) {
        show(kept);
    }

    private void showAgain(Kept kept) {
        removeAll();
        show(kept);
    }

    private void show(Kept kept) {
        Homestead homestead = kept.homestead();
        add(new H1(homestead.name()));
        Div sections = new Div();
        sections.addClassName("fs-sections");
        PARTS.stream().map(Lists::part).flatMap(Optional::stream).forEach(p -> sections.add(section(p, kept)));
        sections.add(file(homestead), others(kept));
        add(sections);
    }

    private Section section(Part part, Kept kept) {
        Homestead homestead = kept.homestead();
        Section section =
                new Section(new H2(part.label()), new Paragraph(part.described().value()));
        if (part.list()) {
            UnorderedList list = new UnorderedList();
            List<Record> things = Lists.of(homestead, part);
            for (int i = 0; i < things.size(); i++) {
                String item = Lists.key(things.get(i)).orElse(Integer.toString(i));
                list.add(new ListItem(new Anchor(
                        HomesteadPages.edit(part.name(), item),
                        Lists.name(things.get(i), new Surroundings(homestead)))));
            }
            section.add(list, new Anchor(HomesteadPages.add(part.name()), "Add"));
        } else {
            section.add(summary(part, homestead), new Anchor("edit/" + part.name(), "Change"));
        }
        if (part.type() == Place.class) {
            section.add(new SkyImport(
                    changes, kept, clock, () -> homesteads.find(kept.id()).ifPresent(this::showAgain)));
        }
        return section;
    }

    private record Summed(String label, String value) {}

    private static Paragraph summary(Part part, Homestead homestead) {
        Object value = part.valueIn(homestead);
        if (!(value instanceof Record thing)) {
            return new Paragraph("None.");
        }
        return new Paragraph(Part.of(thing.getClass()).stream()
                .filter(p -> p.list() || !p.nested())
                .map(p -> new Summed(p.label(), Lists.shown(p, thing, new Surroundings(homestead))))
                .filter(s -> !s.value().isEmpty())
                .map(s -> s.label() + ": " + s.value())
                .collect(Collectors.joining("; ")));
    }

    private static Section file(Homestead homestead) {
        Anchor export = new Anchor(
                DownloadHandler.fromInputStream(e -> {
                    byte[] bytes = HomesteadFile.bytes(homestead);
                    return new DownloadResponse(
                            new ByteArrayInputStream(bytes), fileName(homestead), "application/json", bytes.length);
                }),
                "Export this homestead");
        return new Section(
                new H2("Homestead file"),
                new Paragraph("The whole place in one file: to keep, to send, to compare. It can be brought in again on"
                        + " any computer."),
                export);
    }

    private static String fileName(Homestead homestead) {
        String name = homestead
                .name()
                .toLowerCase(java.util.Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        return (name.isEmpty() ? "homestead" : name) + ".json";
    }

    private Section others(Kept kept) {
        Section section = new Section(new H2("Other homesteads"));
        for (Listed listed : homesteads.list()) {
            if (!listed.id().equals(kept.id())) {
                Button open = new Button("Open " + listed.name(), e -> {
                    homesteads.open(listed.id());
                    UI.getCurrent().getPage().reload();
                });
                section.add(open);
            }
        }
        section.add(new Anchor(HomesteadPages.START, "Begin another one"));
        return section;
    }
}
