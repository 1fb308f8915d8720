package org.firmset.spend.ui;

import com.vaadin.flow.component.textfield.TextField;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.firmset.homestead.part.Part;
import org.firmset.homestead.part.ScalarFault;

/**
 * One {@link TripEntry} as people type it: "186", "186 mi", "8,5". A bare number is in the unit that stands in the label.
 * What cannot be read is marked at once.
 */
final class EntryField extends TextField {
    private static final Pattern BARE = Pattern.compile("[+-]?\\d+(?:\\.\\d+)?");
    /** Three digits behind a comma could be thousands, so they are left for the fault. */
    private static final Pattern COMMA = Pattern.compile("(?<=\\d),(?=\\d{1,2}(?!\\d))");

    private static final Set<String> MONEY = Set.of("rate", "price");
    /** Stands before an amount of money, as amounts of receipts may have it. */
    private static final Pattern SIGN = Pattern.compile("^\\p{Sc}\\s*");

    private final Part part;
    private final String unit;

    /**
     * @param name of the component of {@link TripEntry}
     * @param unit of a bare number; empty when it has none
     */
    EntryField(String label, String name, String unit, String value) {
        super(label);
        this.unit = unit;
        part = Part.of(TripEntry.class).stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("nothing typed of a trip is called [" + name + "]"));
        setValue(value);
        TypedNumber.allow(this);
        setManualValidation(true);
        addValueChangeListener(e -> check(false));
    }

    /** What stands there, nothing said about what does not fit; empty for an empty field too. */
    <T> Optional<T> peek(Class<T> type) {
        try {
            return getValue().isBlank() ? Optional.empty() : Optional.of(type.cast(part.entered(written())));
        } catch (ScalarFault e) {
            return Optional.empty();
        }
    }

    private String written() {
        String bare = MONEY.contains(part.name())
                ? SIGN.matcher(getValue().strip()).replaceFirst("")
                : getValue().strip();
        String text = COMMA.matcher(bare).replaceAll(".");
        return !unit.isEmpty() && BARE.matcher(text).matches() ? text + " " + unit : text;
    }

    /** Whether it can be used; marks the field when not. */
    boolean check(boolean needed) {
        Optional<String> fault = fault(needed);
        setInvalid(fault.isPresent());
        setErrorMessage(fault.orElse(""));
        return fault.isEmpty();
    }

    private Optional<String> fault(boolean needed) {
        if (getValue().isBlank()) {
            return needed ? Optional.of("This is needed") : Optional.empty();
        }
        try {
            part.entered(written());
            return Optional.empty();
        } catch (ScalarFault e) {
            return Optional.of("This " + e.problem() + ". " + e.remedy() + ".");
        }
    }
}
