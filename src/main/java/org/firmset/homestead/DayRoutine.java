package org.firmset.homestead;

import org.firmset.measure.Described;
import org.firmset.measure.Hours;

@Described("How a site day runs.")
public record DayRoutine(
        @Described(
                value = "The hour of the day, 0 to 23, before which nobody works.",
                least = "0",
                most = "23",
                usual = "7")
        int earliestHour,

        @Described(value = "Eating and resting in a day.", least = "0 h", most = "12 h", usual = "0 h")
        Hours meals) {
    /** What is meant when nothing is said. */
    public static final DayRoutine USUAL = new DayRoutine(7, Hours.NONE);
}
