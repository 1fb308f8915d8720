package org.firmset.spend.ui;

import com.vaadin.flow.component.combobox.ComboBox;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * Lets people type a part of a name and go on: the only entry that fits is taken. Where none or several fit the field is
 * emptied and says so, for an entry that stood there before must not bear what was meant for another.
 */
final class TypedChoice {
    private TypedChoice() {}

    /** @param words how the entries are shown, which is what people type a part of */
    static <T> void allow(ComboBox<T> box, List<T> entries, Function<T, String> words) {
        // marks are set here, and stay until something is picked
        box.setManualValidation(true);
        box.setAllowCustomValue(true);
        box.addValueChangeListener(e -> box.setInvalid(false));
        box.addCustomValueSetListener(e -> settle(box, fitting(entries, words, e.getDetail()), e.getDetail()));
    }

    static <T> List<T> fitting(List<T> entries, Function<T, String> words, String typed) {
        String wanted = typed.strip().toLowerCase(Locale.ROOT);
        List<T> whole = entries.stream()
                .filter(e -> words.apply(e).toLowerCase(Locale.ROOT).equals(wanted))
                .toList();
        return whole.isEmpty()
                ? entries.stream()
                        .filter(e -> words.apply(e).toLowerCase(Locale.ROOT).contains(wanted))
                        .toList()
                : whole;
    }

    private static <T> void settle(ComboBox<T> box, List<T> fitting, String typed) {
        if (fitting.size() == 1) {
            box.setValue(fitting.getFirst());
            return;
        }
        box.setValue(null);
        box.setInvalid(true);
        box.setErrorMessage(
                (fitting.isEmpty() ? "Nothing is called \"" : "More than one fits \"") + typed + "\": pick one");
    }
}
