package org.firmset.homestead.ui;

import com.vaadin.flow.component.html.Div;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firmset.homestead.part.Part;
import org.jspecify.annotations.Nullable;

/** A form for any record of the homestead, made from the descriptions of its parts. */
final class RecordForm extends Div {
    private final Class<? extends Record> type;
    private final @Nullable Record initial;
    private final Surroundings surroundings;
    private final List<PartField> fields = new ArrayList<>();

    /** @param initial what the fields show at first; null for a new thing */
    RecordForm(Class<? extends Record> type, @Nullable Record initial, Surroundings surroundings) {
        this.type = type;
        this.initial = initial;
        this.surroundings = surroundings;
        addClassName("fs-form");
        for (Part part : Part.of(type)) {
            PartField field =
                    part.described().key() ? PartField.hidden() : PartFields.of(part, value(part), surroundings);
            fields.add(field);
            field.component().ifPresent(this::add);
        }
    }

    private @Nullable Object value(Part part) {
        return initial == null ? part.list() || part.isGroup() ? null : part.usual() : part.valueIn(initial);
    }

    /** The record as entered; empty when a field does not accept what stands in it, which the field then says. */
    Optional<Record> read() {
        List<Part> parts = Part.of(type);
        List<@Nullable Object> values = new ArrayList<>();
        boolean accepted = true;
        for (int i = 0; i < parts.size(); i++) {
            PartField.Entered entered = fields.get(i).read();
            accepted &= entered.accepted();
            values.add(entered.value());
        }
        if (!accepted) {
            return Optional.empty();
        }
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).described().key()) {
                values.set(i, key(parts, values));
            }
        }
        return Optional.of(Part.record(type, values));
    }

    /** The key it has, or a new one made of its name; once given it stays, whatever the name becomes. */
    private String key(List<Part> parts, List<@Nullable Object> values) {
        if (initial != null) {
            return Lists.key(initial).orElseThrow();
        }
        String name = type.getSimpleName();
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).name().equals("name")) {
                name = String.valueOf(values.get(i));
            }
        }
        return Keys.of(name, "thing", surroundings.named(Part.kindOf(type)).keySet());
    }
}
