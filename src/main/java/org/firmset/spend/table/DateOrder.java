package org.firmset.spend.table;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** In which order a column writes day, month and year. */
public enum DateOrder {
    /** 2026-10-17 or 2026/10/17, a time behind it is passed over (ISO 8601). */
    YEAR_FIRST("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})(?:[T ].*)?", 1, 2, 3),
    /** 10/17/2026, as in the United States. */
    MONTH_FIRST("(\\d{1,2})[-/.](\\d{1,2})[-/.](\\d{4}|\\d{2})", 3, 1, 2),
    /** 17/10/2026 or 17.10.2026. */
    DAY_FIRST("(\\d{1,2})[-/.](\\d{1,2})[-/.](\\d{4}|\\d{2})", 3, 2, 1);

    private static final int LONGEST = 40;
    private final Pattern pattern;
    private final int year;
    private final int month;
    private final int day;

    DateOrder(String pattern, int year, int month, int day) {
        this.pattern = Pattern.compile(pattern);
        this.year = year;
        this.month = month;
        this.day = day;
    }

    /** The date a cell holds in this order; two digits of a year are of this century. */
    Optional<LocalDate> read(String cell) {
        if (cell.length() > LONGEST) {
            return Optional.empty();
        }
        Matcher matcher = pattern.matcher(cell);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        try {
            int written = Integer.parseInt(matcher.group(year));
            return Optional.of(LocalDate.of(
                    written < 100 ? 2000 + written : written,
                    Integer.parseInt(matcher.group(month)),
                    Integer.parseInt(matcher.group(day))));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
