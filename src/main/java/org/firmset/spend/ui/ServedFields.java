package org.firmset.spend.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firmset.measure.Hours;
import org.firmset.measure.Mass;
import org.firmset.measure.UnitSystem;
import org.firmset.spend.TripCost;
import org.firmset.spend.ui.Bearers.Bearer;
import org.jspecify.annotations.Nullable;

/** What a trip served: stages and subprojects, with the hours worked on each or the mass brought for it. */
final class ServedFields extends Div {
    private final Bearers bearers;
    private final TripCost.Rule rule;
    private final String massUnit;
    private final Runnable changed;
    private final Div list = new Div();
    private final List<Row> rows = new ArrayList<>();

    private record Row(ComboBox<Bearer> bearer, EntryField size, Button remove, Div frame) {}

    /**
     * @param rule decides what is asked beside each
     * @param likely those offered to begin with
     */
    ServedFields(Bearers bearers, TripCost.Rule rule, UnitSystem units, List<Bearer> likely, Runnable changed) {
        this.bearers = bearers;
        this.rule = rule;
        this.changed = changed;
        massUnit = units == UnitSystem.US ? "lb" : "kg";
        addClassNames("fs-shares", "fs-served");
        likely.forEach(this::addRow);
        if (likely.isEmpty()) {
            addRow(null);
        }
        Button more =
                new Button("It served another, too", e -> addRow(null).bearer().focus());
        more.addThemeVariants(ButtonVariant.TERTIARY, ButtonVariant.SMALL);
        add(list, more);
    }

    private Row addRow(@Nullable Bearer chosen) {
        ComboBox<Bearer> bearer = BearerBox.of(bearers, chosen);
        EntryField size = rule == TripCost.Rule.BY_MASS
                ? new EntryField("Brought, " + massUnit, "mass", massUnit, "")
                : new EntryField("Worked, h", "hours", "h", "");
        Button remove = new Button("Not for this");
        remove.addThemeVariants(ButtonVariant.TERTIARY, ButtonVariant.SMALL);
        Div frame = new Div(bearer, size, remove);
        frame.addClassName("fs-share");
        Row row = new Row(bearer, size, remove, frame);
        remove.addClickListener(e -> remove(row));
        bearer.addValueChangeListener(e -> changed.run());
        size.addValueChangeListener(e -> {
            if (bearer.getValue() == null) {
                // what was asked of the hours is asked anew when they are saved
                bearer.setInvalid(false);
            }
            changed.run();
        });
        rows.add(row);
        list.add(frame);
        offerRemovals();
        return row;
    }

    private void remove(Row row) {
        rows.remove(row);
        list.remove(row.frame());
        offerRemovals();
        changed.run();
    }

    private void offerRemovals() {
        rows.forEach(r -> r.remove().setVisible(rows.size() > 1));
    }

    /** As far as they can be read; a row that names nobody counts as not there. */
    List<TripCost.Part> peek() {
        return rows.stream().map(this::part).flatMap(Optional::stream).toList();
    }

    private Optional<TripCost.Part> part(Row row) {
        Optional<Bearer> bearer = Optional.ofNullable(row.bearer().getValue());
        if (rule == TripCost.Rule.BY_MASS) {
            long grams = row.size().peek(Mass.class).map(ServedFields::grams).orElse(0L);
            return bearer.map(b -> new TripCost.Part(b.subproject(), b.stage(), 0, grams));
        }
        long quarters = row.size().peek(Hours.class).map(Hours::quarters).orElse(0);
        return bearer.map(b -> new TripCost.Part(b.subproject(), b.stage(), quarters, 0));
    }

    private static long grams(Mass mass) {
        return mass.value()
                .movePointRight(3)
                .setScale(0, RoundingMode.HALF_EVEN)
                .longValueExact();
    }

    /** Whether all of them can be used; marks the fields that cannot. */
    boolean check() {
        boolean sound = true;
        for (Row row : rows) {
            sound &= row.size().check(false) & !row.bearer().isInvalid() & isNamed(row);
        }
        return sound;
    }

    /** Hours that nobody bears would be lost without a word. */
    private static boolean isNamed(Row row) {
        boolean named = row.bearer().getValue() != null || row.size().getValue().isBlank();
        if (!named) {
            row.bearer().setInvalid(true);
            row.bearer().setErrorMessage("What was it for?");
        }
        return named;
    }
}
