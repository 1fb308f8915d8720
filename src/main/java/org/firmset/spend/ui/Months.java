package org.firmset.spend.ui;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Dates as these pages show them. */
final class Months {
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d", Locale.ENGLISH);
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);

    private Months() {}

    /** May 2027. */
    static String words(YearMonth month) {
        return MONTH.format(month);
    }

    /** Sat 1. */
    static String day(LocalDate date) {
        return DAY.format(date);
    }

    /** Sat 1 May 2027. */
    static String date(LocalDate date) {
        return DATE.format(date);
    }
}
