package org.firmset.homestead.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasHelper;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.combobox.MultiSelectComboBox;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.FieldSet;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.firmset.homestead.part.Part;
import org.firmset.homestead.part.ScalarFault;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** Makes the field that fits a part. */
final class PartFields {
    private static final Locale WEEK_FROM_MONDAY = Locale.UK;

    private PartFields() {}

    static PartField of(Part part, @Nullable Object value, Surroundings surroundings) {
        if (part.list()) {
            return list(part, value == null ? List.of() : (List<?>) value, surroundings);
        }
        if (part.nested()) {
            return part.optional() ? optionalRecord(part, value, surroundings) : record(part, value, surroundings);
        }
        if (part.type() == boolean.class) {
            Checkbox box = new Checkbox(part.label(), Boolean.TRUE.equals(value));
            box.setHelperText(help(part));
            return PartField.of(box, () -> PartField.Entered.of(box.getValue()));
        }
        if (!part.described().names().isEmpty()) {
            return choice(part, value, surroundings.named(part.described().names()));
        }
        if (part.type().isEnum()) {
            return word(part, value);
        }
        return part.type() == LocalDate.class ? date(part, value) : text(part, value, surroundings);
    }

    private static String help(Part part) {
        String limits =
                part.described().least().isEmpty() || part.described().most().isEmpty()
                        ? ""
                        : " From " + part.described().least() + " to "
                                + part.described().most() + ".";
        return part.described().value().replaceAll("; left out.*", part.nested() ? "" : ". May stay empty.") + limits;
    }

    private static <F extends HasValidation & HasHelper> PartField.Entered refused(F field, String message) {
        field.setInvalid(true);
        field.setErrorMessage(message);
        return PartField.Entered.REFUSED;
    }

    private static <F extends HasValidation & HasHelper> PartField.Entered absent(F field, Part part) {
        return part.optional() ? PartField.Entered.of(null) : refused(field, "This is needed");
    }

    private static PartField text(Part part, @Nullable Object value, Surroundings surroundings) {
        String shown = value == null ? "" : Part.editable(value, surroundings.units());
        boolean isLong = part.name().equals("note");
        if (isLong) {
            TextArea area = new TextArea(part.label(), shown, "");
            area.setHelperText(help(part));
            return PartField.of(area, () -> {
                area.setInvalid(false);
                return area.getValue().isBlank() ? absent(area, part) : entered(area, part, area.getValue());
            });
        }
        TextField field = new TextField(part.label(), shown, "");
        field.setHelperText(help(part));
        field.setRequiredIndicatorVisible(!part.optional());
        return PartField.of(field, () -> {
            field.setInvalid(false);
            if (field.getValue().isBlank()) {
                return absent(field, part);
            }
            // an unchanged text gives the same value back, to the last digit
            return field.getValue().equals(shown) && value != null
                    ? PartField.Entered.of(value)
                    : entered(field, part, withUsualUnit(field.getValue(), part, surroundings));
        });
    }

    /** A bare number is in the homestead's currency, or in the unit the field shows. */
    private static String withUsualUnit(String text, Part part, Surroundings surroundings) {
        boolean bare = text.strip().matches("[+-]?\\d+(\\.\\d+)?");
        if (bare && part.type() == Money.class) {
            return text.strip() + " " + surroundings.currency();
        }
        if (bare && part.type() == org.firmset.measure.Hours.class) {
            return text.strip() + " h";
        }
        return text;
    }

    private static <F extends HasValidation & HasHelper> PartField.Entered entered(F field, Part part, String text) {
        try {
            return PartField.Entered.of(part.entered(text));
        } catch (ScalarFault e) {
            return refused(field, "This " + e.problem() + ". " + e.remedy() + ".");
        }
    }

    static DatePicker picker(Part part, @Nullable LocalDate value) {
        DatePicker picker = new DatePicker(part.label(), value);
        picker.setLocale(WEEK_FROM_MONDAY);
        // 5/1 is May in one country and January in the other; this way of writing is the same everywhere
        picker.setI18n(new DatePicker.DatePickerI18n().setDateFormat("yyyy-MM-dd"));
        return picker;
    }

    private static PartField date(Part part, @Nullable Object value) {
        DatePicker picker = picker(part, (LocalDate) value);
        picker.setHelperText(help(part));
        picker.setRequiredIndicatorVisible(!part.optional());
        picker.setClearButtonVisible(part.optional());
        return PartField.of(picker, () -> {
            picker.setInvalid(false);
            return picker.getValue() == null ? absent(picker, part) : PartField.Entered.of(picker.getValue());
        });
    }

    private static PartField word(Part part, @Nullable Object value) {
        ComboBox<Object> box = new ComboBox<>(part.label());
        box.setItems(Arrays.asList((Object[]) part.type().getEnumConstants()));
        box.setItemLabelGenerator(c -> Part.word((Enum<?>) c));
        return chosen(box, part, value);
    }

    private static PartField choice(Part part, @Nullable Object value, Map<String, String> names) {
        ComboBox<Object> box = new ComboBox<>(part.label());
        box.setItems(new ArrayList<Object>(names.keySet()));
        box.setItemLabelGenerator(k -> names.getOrDefault((String) k, (String) k));
        return chosen(box, part, value);
    }

    private static PartField chosen(ComboBox<Object> box, Part part, @Nullable Object value) {
        box.setHelperText(help(part));
        box.setRequiredIndicatorVisible(!part.optional());
        box.setClearButtonVisible(part.optional());
        if (value != null) {
            box.setValue(value);
        }
        return PartField.of(box, () -> {
            box.setInvalid(false);
            return box.getValue() == null ? absent(box, part) : PartField.Entered.of(box.getValue());
        });
    }

    private static PartField record(Part part, @Nullable Object value, Surroundings surroundings) {
        RecordForm form = new RecordForm(part.type().asSubclass(Record.class), (Record) value, surroundings);
        FieldSet set = fieldSet(part.label(), form);
        return PartField.of(set, () -> read(form));
    }

    private static FieldSet fieldSet(String legend, Component... content) {
        FieldSet set = new FieldSet(legend);
        set.add(content);
        return set;
    }

    private static PartField.Entered read(RecordForm form) {
        return form.read().map(PartField.Entered::of).orElse(PartField.Entered.REFUSED);
    }

    private static PartField optionalRecord(Part part, @Nullable Object value, Surroundings surroundings) {
        RecordForm form = new RecordForm(part.type().asSubclass(Record.class), (Record) value, surroundings);
        Checkbox there = new Checkbox(part.described().value().replaceAll("; left out.*", ""), value != null);
        form.setVisible(value != null);
        there.addValueChangeListener(e -> form.setVisible(e.getValue()));
        FieldSet set = fieldSet(part.label(), there, form);
        return PartField.of(set, () -> there.getValue() ? read(form) : PartField.Entered.of(null));
    }

    private static PartField list(Part part, List<?> values, Surroundings surroundings) {
        if (part.nested()) {
            return records(part, values, surroundings);
        }
        if (part.type() == LocalDate.class) {
            return dates(part, values);
        }
        MultiSelectComboBox<Object> box = new MultiSelectComboBox<>(part.label());
        if (part.type().isEnum()) {
            box.setItems(Arrays.asList((Object[]) part.type().getEnumConstants()));
            box.setItemLabelGenerator(c -> Part.word((Enum<?>) c));
        } else {
            Map<String, String> names = surroundings.named(part.described().names());
            box.setItems(new ArrayList<Object>(names.keySet()));
            box.setItemLabelGenerator(k -> names.getOrDefault((String) k, (String) k));
        }
        box.setHelperText(help(part));
        box.setValue(new LinkedHashSet<Object>(values));
        return PartField.of(box, () -> PartField.Entered.of(inOrder(values, new ArrayList<>(box.getValue()))));
    }

    /** What was there before keeps its place, so that saving an unchanged form changes nothing. */
    private static List<Object> inOrder(List<?> before, List<Object> chosen) {
        List<Object> result = new ArrayList<>(before);
        result.retainAll(chosen);
        chosen.stream().filter(c -> !before.contains(c)).forEach(result::add);
        return result;
    }

    private static PartField dates(Part part, List<?> values) {
        TextArea area =
                new TextArea(part.label(), values.stream().map(Object::toString).collect(Collectors.joining(", ")), "");
        area.setHelperText(help(part) + " Write them as 2027-05-01, with commas between.");
        return PartField.of(area, () -> {
            area.setInvalid(false);
            List<Object> dates = new ArrayList<>();
            for (String text : area.getValue().split("[,\\s]+", -1)) {
                PartField.Entered entered = text.isBlank() ? PartField.Entered.of(null) : entered(area, part, text);
                if (!entered.accepted()) {
                    return refused(area, "'" + text + "' is not a date. Write it as 2027-05-01.");
                }
                Optional.ofNullable(entered.value()).ifPresent(dates::add);
            }
            return PartField.Entered.of(dates);
        });
    }

    private static PartField records(Part part, List<?> values, Surroundings surroundings) {
        Class<? extends Record> type = part.type().asSubclass(Record.class);
        List<RecordForm> forms = new ArrayList<>();
        Div rows = new Div();
        rows.addClassName("fs-rows");
        values.forEach(v -> addRow(rows, forms, new RecordForm(type, (Record) v, surroundings)));
        Button add = new Button("Add", e -> addRow(rows, forms, new RecordForm(type, null, surroundings)));
        add.setAriaLabel("Add to " + part.label());
        FieldSet set = fieldSet(part.label(), rows, add);
        return PartField.of(set, () -> {
            List<PartField.Entered> entered =
                    forms.stream().map(PartFields::read).toList();
            return entered.stream().allMatch(PartField.Entered::accepted)
                    ? PartField.Entered.of(entered.stream()
                            .map(e -> Objects.requireNonNull(e.value()))
                            .toList())
                    : PartField.Entered.REFUSED;
        });
    }

    private static void addRow(Div rows, List<RecordForm> forms, RecordForm form) {
        forms.add(form);
        Div row = new Div(form);
        row.addClassName("fs-row");
        Button remove = new Button("Remove", e -> {
            forms.remove(form);
            rows.remove(row);
        });
        remove.addThemeVariants(ButtonVariant.TERTIARY);
        row.add(remove);
        rows.add(row);
    }
}
