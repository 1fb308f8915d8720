package org.firmset.homestead.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouteParameters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Takeoff;
import org.firmset.homestead.store.Changes;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.store.Kept;
import org.firmset.homestead.takeoff.Catalogue;
import org.firmset.homestead.takeoff.Inputs;
import org.firmset.homestead.takeoff.PlaceInputs;
import org.firmset.homestead.takeoff.Worked;
import org.firmset.shell.Frame;
import org.firmset.trade.trace.Kind;
import org.jspecify.annotations.Nullable;

/** One calculator: its inputs, what it comes to with every step, and what the homestead keeps of it. */
@Route(value = HomesteadPages.TAKEOFFS + "/:kind/:takeoff?", layout = Frame.class)
@PageTitle("Firmset: takeoff")
class TakeoffView extends OpenedPage {
    private final Changes changes;
    private final FaultList faults = new FaultList();

    TakeoffView(Homesteads homesteads, Changes changes) {
        super(homesteads, "fs-takeoff");
        this.changes = changes;
    }

    @Override
    protected void show(Kept kept, BeforeEnterEvent event) {
        RouteParameters parameters = event.getRouteParameters();
        Kind<?> kind = parameters
                .get("kind")
                .flatMap(Catalogue::find)
                .orElseThrow(() -> new NotFoundException("There is no such kind of takeoff"));
        @Nullable
        Takeoff takeoff = parameters
                .get("takeoff")
                .map(key -> find(kept.homestead(), key))
                .orElse(null);
        faults.clear();
        show(kept, kind, takeoff);
    }

    private static Takeoff find(Homestead homestead, String key) {
        return homestead.takeoffs().stream()
                .filter(t -> t.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new NotFoundException("There is no takeoff '" + key + "'"));
    }

    private void show(Kept kept, Kind<?> kind, @Nullable Takeoff takeoff) {
        Homestead homestead = kept.homestead();
        Map<String, String> texts = takeoff == null ? PlaceInputs.of(homestead, kind) : Inputs.texts(takeoff.given());
        Div result = new Div();
        result.addClassName("fs-worked");
        result.getElement().setAttribute("aria-live", "polite");
        KeepForm keep = new KeepForm(homestead, kind, takeoff);
        TakeoffForm form = new TakeoffForm(kind, texts, homestead.units());
        form.onChange(() -> work(form, kind, homestead, result, keep));
        Section inputs = new Section(new H2("Inputs"), form);
        inputs.addClassName("fs-takeoff-inputs");
        Section keeping = new Section(new H2("Keep it"), keep, faults, buttons(kept, kind, takeoff, form, keep));
        keeping.addClassName("fs-takeoff-keep");
        Div columns = new Div(inputs, result, keeping);
        columns.addClassName("fs-takeoff-columns");
        add(
                new Anchor(HomesteadPages.TAKEOFFS, "All takeoffs"),
                new H1(takeoff == null ? kind.name() : takeoff.name()),
                new Paragraph(kind.purpose()),
                columns);
        work(form, kind, homestead, result, keep);
    }

    private static void work(TakeoffForm form, Kind<?> kind, Homestead homestead, Div result, KeepForm keep) {
        result.removeAll();
        form.clearFaults();
        switch (Inputs.work(kind, form.texts())) {
            case Worked.Done done -> {
                keep.offer(done.worksheet());
                if (form.texts().equals(PlaceInputs.of(homestead, kind))) {
                    Paragraph example = new Paragraph("These are example values until you enter your own.");
                    example.addClassName("fs-warning");
                    result.add(example);
                }
                result.add(new WorksheetPanel(done.worksheet(), homestead.units()));
            }
            case Worked.Refused refused -> {
                keep.offerNothing();
                boolean begun = !form.texts().isEmpty();
                if (begun) {
                    form.show(refused.faults());
                }
                result.add(new H2("Result"), new Paragraph("Fill in what is needed; the result appears here at once."));
                refused.faults().stream()
                        .filter(f -> begun && !f.value().isEmpty() || f.input().isEmpty())
                        .forEach(f -> result.add(new Paragraph(f.line())));
            }
        }
    }

    private Div buttons(Kept kept, Kind<?> kind, @Nullable Takeoff takeoff, TakeoffForm form, KeepForm keep) {
        Button save = new Button(
                "Keep this takeoff",
                e -> keep.read(form.given())
                        .ifPresentOrElse(
                                wanted -> store(kept.id(), kept.version(), h -> put(h, wanted)),
                                () -> faults.show("Give it a name first; nothing was stored.")));
        save.addThemeVariants(ButtonVariant.PRIMARY);
        Div buttons = new Div(save);
        if (takeoff != null) {
            Button remove = new Button(
                    "Remove " + takeoff.name(),
                    e -> store(
                            kept.id(),
                            kept.version(),
                            h -> h.withTakeoffs(h.takeoffs().stream()
                                    .filter(t -> !t.key().equals(takeoff.key()))
                                    .toList())));
            remove.addThemeVariants(ButtonVariant.TERTIARY);
            buttons.add(remove);
        }
        buttons.addClassName("fs-buttons");
        return buttons;
    }

    private static Homestead put(Homestead homestead, Takeoff wanted) {
        List<Takeoff> takeoffs = new ArrayList<>(homestead.takeoffs());
        for (int i = 0; i < takeoffs.size(); i++) {
            if (takeoffs.get(i).key().equals(wanted.key())) {
                takeoffs.set(i, wanted);
                return homestead.withTakeoffs(takeoffs);
            }
        }
        takeoffs.add(wanted);
        return homestead.withTakeoffs(takeoffs);
    }

    private void store(UUID id, long version, UnaryOperator<Homestead> how) {
        switch (changes.change(id, version, how)) {
            case Changes.Change.Stored stored -> UI.getCurrent().navigate(HomesteadPages.TAKEOFFS);
            case Changes.Change.Refused refused ->
                faults.show("This does not fit with the rest; nothing was stored.", refused.faults());
            case Changes.Change.Outdated outdated -> faults.show(outdated.message());
        }
    }
}
