package org.firmset.homestead;

import java.time.LocalDate;
import java.util.List;
import org.firmset.measure.Described;

@Described("A decision the plan must keep: the stage works on these dates only.")
public record Pin(
        @Described(value = "The stage.", names = "stage") String stage,
        @Described("The dates.") List<LocalDate> dates,
        @Described("Why, to read next to it.") String why) {
    public Pin {
        dates = List.copyOf(dates);
    }
}
