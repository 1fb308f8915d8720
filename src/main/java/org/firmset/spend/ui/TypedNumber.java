package org.firmset.spend.ui;

import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.textfield.TextFieldVariant;
import com.vaadin.flow.data.value.ValueChangeMode;

/** How numbers are typed on these pages: to the right, with the keys for them on a phone, followed while they are typed. */
final class TypedNumber {
    private static final int WAIT_MS = 400;

    private TypedNumber() {}

    static void allow(TextField field) {
        field.addThemeVariants(TextFieldVariant.LUMO_ALIGN_RIGHT);
        field.getElement().setAttribute("inputmode", "decimal");
        field.setValueChangeMode(ValueChangeMode.LAZY);
        field.setValueChangeTimeout(WAIT_MS);
    }
}
