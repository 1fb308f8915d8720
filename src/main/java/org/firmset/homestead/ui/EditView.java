package org.firmset.homestead.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouteParameters;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.part.Part;
import org.firmset.homestead.store.Changes;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.store.Kept;
import org.firmset.measure.Described;
import org.firmset.shell.Frame;
import org.jspecify.annotations.Nullable;

/** Changes one part of the homestead: a thing of a list, or one of the parts it has only once. */
@Route(value = "edit/:part/:item?", layout = Frame.class)
@PageTitle("Firmset: change")
class EditView extends OpenedPage {
    static final String NEW = "new";

    private final Homesteads homesteads;
    private final Changes changes;
    private final FaultList faults = new FaultList();
    private String partName = "";
    private String shownOn = "";

    EditView(Homesteads homesteads, Changes changes) {
        super(homesteads, "fs-edit");
        this.homesteads = homesteads;
        this.changes = changes;
    }

    @Override
    protected void show(Kept kept, BeforeEnterEvent event) {
        RouteParameters parameters = event.getRouteParameters();
        Part part = parameters
                .get("part")
                .flatMap(Lists::part)
                .orElseThrow(() -> new NotFoundException("There is no such part of a homestead"));
        faults.clear();
        partName = part.name();
        shownOn = HomesteadPages.shownOn(partName, parameters.get("item").orElse(NEW));
        if (part.list()) {
            openItem(kept, part, parameters.get("item").orElse(NEW));
        } else {
            Record value = (Record) part.valueIn(kept.homestead());
            show(kept, part.label(), part, value, changed -> h -> Lists.with(h, part, changed));
            if (part.optional() && value != null) {
                add(removal("Remove " + part.label(), kept, h -> Lists.with(h, part, null)));
            }
        }
    }

    private void openItem(Kept kept, Part part, String item) {
        List<Record> things = Lists.of(kept.homestead(), part);
        if (item.equals(NEW)) {
            show(kept, "Add to " + part.label().toLowerCase(java.util.Locale.ROOT), part, null, changed -> h -> {
                List<Record> more = new ArrayList<>(Lists.of(h, part));
                more.add(changed);
                return Lists.with(h, part, more);
            });
            return;
        }
        int index = Lists.find(things, item)
                .orElseThrow(() -> new NotFoundException("There is no '" + item + "' in " + part.label()));
        Record thing = things.get(index);
        String name = Lists.name(thing, new Surroundings(kept.homestead()));
        show(kept, name, part, thing, changed -> h -> {
            List<Record> others = new ArrayList<>(Lists.of(h, part));
            others.set(index, changed);
            return Lists.with(h, part, others);
        });
        add(removal("Remove " + name, kept, h -> {
            List<Record> others = new ArrayList<>(Lists.of(h, part));
            others.remove(index);
            return Lists.with(h, part, others);
        }));
    }

    /** How a changed record changes the homestead. */
    private interface Putting {
        UnaryOperator<Homestead> put(Record changed);
    }

    private void show(Kept kept, String title, Part part, @Nullable Record value, Putting putting) {
        Class<? extends Record> type = part.type().asSubclass(Record.class);
        RecordForm form = new RecordForm(type, value, new Surroundings(kept.homestead()));
        Button save = new Button(
                "Save",
                e -> form.read()
                        .ifPresentOrElse(
                                changed -> store(kept.id(), kept.version(), putting.put(changed)),
                                () -> faults.show("Some fields are not right yet; nothing was stored.")));
        save.addThemeVariants(ButtonVariant.PRIMARY);
        Button cancel = new Button("Leave as it was", e -> back());
        Div buttons = new Div(save, cancel);
        buttons.addClassName("fs-buttons");
        add(
                new H1(title),
                new Paragraph(Objects.requireNonNull(type.getAnnotation(Described.class))
                        .value()),
                form,
                faults,
                buttons);
    }

    private Button removal(String text, Kept kept, UnaryOperator<Homestead> how) {
        Button remove = new Button(text, e -> {
            shownOn = HomesteadPages.shownOn(partName, NEW);
            store(kept.id(), kept.version(), how);
        });
        remove.addThemeVariants(ButtonVariant.TERTIARY);
        return remove;
    }

    private Homestead base(UUID id) {
        return homesteads.find(id).orElseThrow().homestead();
    }

    private void store(UUID id, long version, UnaryOperator<Homestead> how) {
        switch (changes.change(id, version, how)) {
            case Changes.Change.Stored stored -> back();
            case Changes.Change.Refused refused ->
                faults.show(
                        "This does not fit with the rest; nothing was stored.", refused.faults(), how.apply(base(id)));
            case Changes.Change.Outdated outdated -> faults.show(outdated.message());
        }
    }

    /** Where the changed thing is shown. */
    private void back() {
        UI.getCurrent().navigate(shownOn);
    }
}
