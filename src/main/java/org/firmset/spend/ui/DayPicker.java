package org.firmset.spend.ui;

import com.vaadin.flow.component.datepicker.DatePicker;
import java.time.LocalDate;
import java.util.Locale;

/** Fields for days, alike on all of these pages: 5/1 is May in one country and January in the other. */
final class DayPicker {
    private DayPicker() {}

    static DatePicker of(String label, LocalDate day) {
        DatePicker picker = new DatePicker(label, day);
        picker.setLocale(Locale.UK);
        picker.setI18n(new DatePicker.DatePickerI18n().setDateFormat("yyyy-MM-dd"));
        return picker;
    }
}
