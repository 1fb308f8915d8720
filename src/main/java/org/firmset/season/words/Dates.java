package org.firmset.season.words;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.Collection;
import java.util.Locale;
import java.util.stream.Collectors;

/** Dates as people say them. */
public final class Dates {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEE d", Locale.ENGLISH);
    private static final DateTimeFormatter PLAIN = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    private Dates() {}

    /** Sat 1 May. */
    public static String day(LocalDate date) {
        return DAY.format(date);
    }

    /** Sat 1 May 2027. */
    public static String date(LocalDate date) {
        return DATE.format(date);
    }

    /** Sat 1. */
    public static String weekday(LocalDate date) {
        return WEEKDAY.format(date);
    }

    /** 1-2 May, 31 Jul-1 Aug, 1 May. */
    public static String span(LocalDate from, LocalDate to) {
        if (from.equals(to)) {
            return PLAIN.format(from);
        }
        return from.getMonth() == to.getMonth()
                ? from.getDayOfMonth() + "–" + PLAIN.format(to)
                : PLAIN.format(from) + " – " + PLAIN.format(to);
    }

    /** February, March: in the order of the year. */
    public static String months(Collection<Month> months) {
        return months.stream()
                .sorted()
                .map(m -> m.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
                .collect(Collectors.joining(", "));
    }
}
