package org.firmset.season.ui;

import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextField;
import java.util.LinkedHashMap;
import java.util.Map;
import org.firmset.measure.Dimension;
import org.firmset.measure.Mass;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.measure.UnitsFault;
import org.firmset.season.load.DayChange;
import org.firmset.season.load.LoadChange;
import org.firmset.season.load.TripLoads;
import org.firmset.season.result.PlannedHomestead;
import org.firmset.season.result.SeasonReport;

/** Something came otherwise on the day: what could be had, who rides along, and at once what that means. */
final class DayChangePanel extends Section {
    private final PlannedHomestead planned;
    private final String trip;
    private final Map<String, IntegerField> packs = new LinkedHashMap<>();
    private final Checkbox trailer = new Checkbox("The trailer stays home");
    private final TextField people = new TextField("More people along, their mass");
    private final Div answer = new Div();

    DayChangePanel(PlannedHomestead planned, TripLoads loads) {
        this.planned = planned;
        trip = loads.trip();
        addClassNames("fs-block", "fs-no-print");
        add(
                new H2("Something came otherwise on the day?"),
                new Paragraph(
                        "Say what you could get and who rides along; the loads are shared out anew at once. The plan"
                                + " itself stays as it is."));
        Div form = new Div();
        form.addClassName("fs-day-change");
        loads.own().stream().flatMap(r -> r.about().loads().stream()).forEach(this::addPacks);
        for (IntegerField field : packs.values()) {
            field.addValueChangeListener(e -> tell());
            form.add(field);
        }
        if (loads.own().getFirst().outfit().trailer() != null) {
            form.add(trailer);
        }
        form.add(people);
        people.setHelperText(planned.homestead().units() == UnitSystem.US ? "Such as 180 lb" : "Such as 80 kg");
        trailer.addValueChangeListener(e -> tell());
        people.addValueChangeListener(e -> tell());
        answer.addClassNames("fs-answer", "fs-day-answer");
        answer.getElement().setAttribute("role", "status");
        answer.getElement().setAttribute("aria-live", "polite");
        add(form, answer);
    }

    /** A material that goes in several bays or runs is asked for once. */
    private void addPacks(SeasonReport.LoadPart load) {
        IntegerField known = packs.get(load.material());
        int all = load.packs() + (known == null ? 0 : known.getMax());
        IntegerField field = known == null ? new IntegerField(load.name()) : known;
        field.setMin(0);
        field.setMax(all);
        field.setValue(all);
        field.setStepButtonsVisible(true);
        field.setHelperText("Packs we could get (%s), of %d".formatted(load.pack(), all));
        packs.put(load.material(), field);
    }

    private void tell() {
        answer.removeAll();
        Map<String, Integer> had = new LinkedHashMap<>();
        for (Map.Entry<String, IntegerField> entry : packs.entrySet()) {
            Integer value = entry.getValue().getValue();
            if (value == null || value < 0 || value > entry.getValue().getMax()) {
                answer.add(new Paragraph("Packs are a whole number from 0 to what the plan wants."));
                return;
            }
            if (value < entry.getValue().getMax()) {
                had.put(entry.getKey(), value);
            }
        }
        try {
            show(new DayChange(trip, had, trailer.getValue(), morePeople()));
            people.setInvalid(false);
        } catch (UnitsFault e) {
            people.setInvalid(true);
            people.setErrorMessage(e.getMessage());
        }
    }

    private Mass morePeople() {
        String text = people.getValue().strip();
        Mass mass = text.isEmpty() ? Mass.ofGrams(0) : (Mass) Units.parse(Dimension.MASS, text);
        if (mass.value().signum() < 0) {
            throw new UnitsFault("'" + text + "' is under zero; write what rides along besides, such as 80 kg");
        }
        return mass;
    }

    private void show(DayChange change) {
        UnorderedList list = new UnorderedList();
        LoadChange.of(planned.homestead(), planned.season(), change).words().forEach(w -> list.add(new ListItem(w)));
        answer.add(list);
    }
}
