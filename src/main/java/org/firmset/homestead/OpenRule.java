package org.firmset.homestead;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import org.firmset.measure.Described;
import org.firmset.measure.Hours;

@Described("Weekdays that are free from one date to another.")
public record OpenRule(
        @Described(value = "Key of the rule.", key = true) String key,
        @Described("The weekdays.") List<DayOfWeek> weekdays,
        @Described("First date.") LocalDate from,
        @Described("Last date.") LocalDate to,

        @Described(value = "Hours of work a whole day on site allows each person.", least = "0.25 h", most = "18 h")
        Hours siteHours,

        @Described(value = "Who comes.", names = "person") List<String> people) {
    public OpenRule {
        weekdays = List.copyOf(weekdays);
        people = List.copyOf(people);
    }

    boolean covers(LocalDate date) {
        return !date.isBefore(from) && !date.isAfter(to) && weekdays.contains(date.getDayOfWeek());
    }
}
