package org.firmset.homestead;

import java.time.LocalDate;
import java.util.Optional;

/** Days that are free one after the other, as far as they go: what may be one trip, also when it is past or under way. */
public record OpenTrip(LocalDate first, LocalDate last) {
    /** Somebody who lives there is on one long trip, which need not be followed to its end. */
    private static final int MOST_DAYS = 400;

    public boolean holds(LocalDate day) {
        return !day.isBefore(first) && !day.isAfter(last);
    }

    /** The one a day belongs to; empty when that day is not free. */
    public static Optional<OpenTrip> around(OpenDates dates, LocalDate day) {
        return dates.isOpen(day)
                ? Optional.of(new OpenTrip(end(dates, day, -1), end(dates, day, 1)))
                : Optional.empty();
    }

    /** The one that began last, on this day or before it; empty when there was none for more than a year. */
    public static Optional<OpenTrip> latest(OpenDates dates, LocalDate today) {
        for (int back = 0; back < MOST_DAYS; back++) {
            Optional<OpenTrip> trip = around(dates, today.minusDays(back));
            if (trip.isPresent()) {
                return trip;
            }
        }
        return Optional.empty();
    }

    private static LocalDate end(OpenDates dates, LocalDate day, int step) {
        LocalDate end = day;
        for (int i = 0; i < MOST_DAYS && dates.isOpen(end.plusDays(step)); i++) {
            end = end.plusDays(step);
        }
        return end;
    }
}
