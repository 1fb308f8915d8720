package org.firmset.plan;

import java.time.LocalDate;
import java.util.Set;

/** The owners' decision that a stage works on these dates only. */
public record Pin(String stage, Set<LocalDate> dates, String why) {
    public Pin {
        dates = Set.copyOf(dates);
        Require.that(!dates.isEmpty(), "dates [] of pin for stage [%s] must not be empty", stage);
    }
}
