package org.firmset.homestead.ui;

import com.vaadin.flow.component.Component;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** One field of a form: what is seen, and what is read from it. */
record PartField(Optional<Component> component, Supplier<Entered> reading) {

    /** @param value what was entered; null for nothing */
    record Entered(boolean accepted, @Nullable Object value) {
        static final Entered REFUSED = new Entered(false, null);

        static Entered of(@Nullable Object value) {
            return new Entered(true, value);
        }
    }

    static PartField hidden() {
        return new PartField(Optional.empty(), () -> Entered.of(null));
    }

    static PartField of(Component component, Supplier<Entered> reading) {
        return new PartField(Optional.of(component), reading);
    }

    Entered read() {
        return reading.get();
    }
}
