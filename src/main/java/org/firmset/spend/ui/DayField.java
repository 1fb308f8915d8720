package org.firmset.spend.ui;

import com.vaadin.flow.component.datepicker.DatePicker;
import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** A day as these pages have it typed: 2026-10-17. */
class DayField extends DatePicker {
    static final String SUCH_AS = "Write it such as 2026-10-17";

    /** @param day null for an empty field */
    DayField(String label, @Nullable LocalDate day) {
        super(label);
        setLocale(Locale.UK);
        setI18n(new DatePickerI18n().setDateFormat("yyyy-MM-dd").setBadInputErrorMessage(SUCH_AS));
        // who types a day and goes on with Tab would be caught in the calendar
        setAutoOpen(false);
        setValue(day);
    }
}
