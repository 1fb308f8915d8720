package org.firmset.homestead;

import java.time.LocalDate;
import java.util.List;
import org.firmset.measure.Described;
import org.firmset.measure.Hours;

@Described("One free date.")
public record AddedDate(
        @Described("The date.") LocalDate date,

        @Described(value = "Hours of work a whole day on site allows each person.", least = "0.25 h", most = "18 h")
        Hours siteHours,

        @Described(value = "Who comes.", names = "person") List<String> people) {
    public AddedDate {
        people = List.copyOf(people);
    }
}
