package org.firmset.homestead.ui;

import com.vaadin.flow.component.AbstractField;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.FieldSet;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.firmset.homestead.Given;
import org.firmset.homestead.part.Part;
import org.firmset.homestead.part.Words;
import org.firmset.homestead.takeoff.InputFault;
import org.firmset.homestead.takeoff.Inputs;
import org.firmset.measure.UnitSystem;
import org.firmset.trade.trace.Kind;
import org.jspecify.annotations.Nullable;

/** The inputs of a calculator. What people write stays as they wrote it; an empty field means the usual value. */
final class TakeoffForm extends Div {
    private final UnitSystem units;
    private final Map<String, Supplier<String>> readings = new LinkedHashMap<>();
    private final Map<String, HasValidation> fields = new LinkedHashMap<>();
    private final List<HasValue<?, ?>> watched = new ArrayList<>();

    /** @param units those of the person, for the allowed ranges */
    TakeoffForm(Kind<?> kind, Map<String, String> texts, UnitSystem units) {
        this.units = units;
        Shelf first = new Shelf();
        Shelf more = new Shelf();
        for (Inputs.Input input : Inputs.of(kind)) {
            String text = texts.getOrDefault(input.part().name(), "");
            boolean seen = !text.isEmpty() || isInFront(input);
            (seen ? first : more).add(input.group(), field(input.part(), text));
        }
        add(first);
        if (!more.isEmpty()) {
            Details details = new Details("More inputs, as usual until changed", more);
            add(details);
        }
    }

    /** Dimensions and choices stand in front; rates, waste, bags and what is mostly nothing can be unfolded. */
    private static boolean isInFront(Inputs.Input input) {
        Part part = input.part();
        boolean needed = part.usual() == null && !part.optional();
        boolean folded = List.of("Mix", "Embedded").contains(input.group())
                || part.optional()
                || part.type() == boolean.class
                || part.described().usual().matches("(0|0 .*|none)")
                || part.name().matches(".*(PerHour|PerMinute|Hours|wastePercent|kerf)");
        return needed || part.type().isEnum() || input.group().equals("Wall") || !folded;
    }

    /** Fields one after the other, those of a group in a frame. */
    private static final class Shelf extends Div {
        private final Map<String, FieldSet> groups = new LinkedHashMap<>();

        Shelf() {
            addClassName("fs-form");
        }

        void add(String group, Component field) {
            if (group.isEmpty()) {
                add(field);
            } else {
                groups.computeIfAbsent(group, this::frame).add(field);
            }
        }

        private FieldSet frame(String label) {
            FieldSet set = new FieldSet(label);
            add(set);
            return set;
        }

        boolean isEmpty() {
            return getComponentCount() == 0;
        }
    }

    private Component field(Part part, String text) {
        if (part.type() == boolean.class) {
            return truth(part, text);
        }
        if (part.type() == LocalDate.class) {
            return date(part, text);
        }
        return part.type().isEnum() ? choice(part, text) : written(part, text);
    }

    private Component truth(Part part, String text) {
        Object before = text.isBlank() ? part.usual() : part.entered(text);
        Checkbox box = new Checkbox(part.label(), Boolean.TRUE.equals(before));
        box.setHelperText(part.described().value());
        watch(part, box, () -> box.getValue().equals(part.usual()) ? "" : box.getValue() ? "yes" : "no");
        return box;
    }

    private Component choice(Part part, String text) {
        ComboBox<Object> box = new ComboBox<>(part.label());
        box.setItems(Arrays.asList((Object[]) part.type().getEnumConstants()));
        box.setItemLabelGenerator(c -> Part.word((Enum<?>) c));
        box.setHelperText(part.described().value());
        @Nullable Object value = text.isBlank() ? part.usual() : part.entered(text);
        if (value != null) {
            box.setValue(value);
        }
        fields.put(part.name(), box);
        watch(
                part,
                box,
                () -> box.getValue() == null || box.getValue().equals(part.usual())
                        ? ""
                        : Words.ofEnum((Enum<?>) box.getValue()));
        return box;
    }

    private Component date(Part part, String text) {
        DatePicker picker = PartFields.picker(part, text.isBlank() ? null : (LocalDate) part.entered(text));
        picker.setHelperText(part.described().value());
        fields.put(part.name(), picker);
        watch(
                part,
                picker,
                () -> picker.getValue() == null ? "" : picker.getValue().toString());
        return picker;
    }

    private Component written(Part part, String text) {
        TextField field = new TextField(part.label(), text, "");
        field.setPlaceholder(part.described().usual());
        field.setHelperText(help(part));
        field.setRequiredIndicatorVisible(part.usual() == null && !part.optional());
        fields.put(part.name(), field);
        watch(part, field, field::getValue);
        return field;
    }

    private String help(Part part) {
        return (part.described().value() + " " + part.range(units)).strip();
    }

    private <C extends AbstractField<C, ?>> void watch(Part part, C field, Supplier<String> reading) {
        readings.put(part.name(), reading);
        watched.add(field);
    }

    /** Runs after every change of a field. */
    void onChange(Runnable action) {
        watched.forEach(field -> field.addValueChangeListener(e -> action.run()));
    }

    /** What was entered, by input; what is as usual is left out. */
    Map<String, String> texts() {
        Map<String, String> texts = new LinkedHashMap<>();
        readings.forEach((name, reading) -> {
            String text = reading.get().strip();
            if (!text.isEmpty()) {
                texts.put(name, text);
            }
        });
        return texts;
    }

    List<Given> given() {
        return texts().entrySet().stream()
                .map(e -> new Given(e.getKey(), e.getValue()))
                .toList();
    }

    void clearFaults() {
        fields.values().forEach(f -> f.setInvalid(false));
    }

    /** Marks the fields that are filled in wrongly; what is still missing is not called wrong yet. */
    void show(List<InputFault> faults) {
        for (InputFault fault : faults) {
            @Nullable HasValidation field = fields.get(fault.input());
            if (field != null && !fault.value().isEmpty()) {
                field.setErrorMessage("This " + fault.problem() + ". " + fault.remedy() + ".");
                field.setInvalid(true);
            }
        }
    }
}
