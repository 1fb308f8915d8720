package org.firmset.homestead.file;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.firmset.homestead.AddedDate;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.OpenRule;
import org.firmset.homestead.part.Part;
import org.firmset.homestead.part.Scalars;
import org.jspecify.annotations.Nullable;

/** Moves every date of a homestead by whole weeks, so that an example never looks stale and weekdays stay what they are. */
public final class Redating {
    private static final int WEEKS_IN_YEAR = 52;

    private Redating() {}

    /** The homestead moved forward by whole years of 52 weeks until its first open date is not before {@code date}. */
    public static Homestead toSeasonAfter(Homestead homestead, LocalDate date) {
        return later(homestead, weeks(homestead, date));
    }

    /** The same record with every date in it, and in its parts, moved by whole weeks. */
    public static <R extends Record> R later(R record, int weeks) {
        @SuppressWarnings("unchecked") // a record is moved into one of its own class
        R moved = (R) movedRecord(record, weeks);
        return weeks == 0 ? record : moved;
    }

    /** By how many weeks that moves it. */
    static int weeks(Homestead homestead, LocalDate date) {
        LocalDate first = firstOpenDate(homestead);
        int weeks = 0;
        while (first.plusWeeks(weeks).isBefore(date)) {
            weeks += WEEKS_IN_YEAR;
        }
        return weeks;
    }

    private static LocalDate firstOpenDate(Homestead homestead) {
        return Stream.concat(
                        homestead.openDates().rules().stream().map(OpenRule::from),
                        homestead.openDates().added().stream().map(AddedDate::date))
                .min(LocalDate::compareTo)
                .orElse(LocalDate.MAX);
    }

    private static Object moved(Object value, int weeks) {
        return switch (value) {
            case LocalDate date -> date.plusWeeks(weeks);
            case List<?> list ->
                list.stream().map(element -> moved(element, weeks)).toList();
            case Record part when !Scalars.isScalar(part.getClass()) -> movedRecord(part, weeks);
            default -> value;
        };
    }

    private static Object movedRecord(Record part, int weeks) {
        List<Part> parts = Part.of(part.getClass());
        @Nullable Object[] values = new Object[parts.size()];
        for (int i = 0; i < values.length; i++) {
            @Nullable Object value = parts.get(i).valueIn(part);
            values[i] = value == null ? null : moved(value, weeks);
        }
        return Part.record(part.getClass(), Arrays.asList(values));
    }
}
