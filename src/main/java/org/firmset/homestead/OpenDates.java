package org.firmset.homestead;

import java.time.LocalDate;
import java.util.List;
import org.firmset.measure.Described;
import org.jspecify.annotations.Nullable;

@Described("Which dates are free for a trip. Dates that follow each other make one trip.")
public record OpenDates(
        @Described("Rules such as: every Saturday and Sunday from April to October.")
        List<OpenRule> rules,

        @Described("Single dates besides the rules; they win over a rule on the same date.")
        List<AddedDate> added,

        @Described("Dates that are not free after all.") List<LocalDate> removed,

        @Described("How a site day runs; left out when work may begin at 7 and nothing is lost to meals.") @Nullable
        DayRoutine routine) {
    public OpenDates {
        rules = List.copyOf(rules);
        added = List.copyOf(added);
        removed = List.copyOf(removed);
    }

    /** Whether this date is free for a trip. */
    public boolean isOpen(LocalDate date) {
        return added.stream().anyMatch(a -> a.date().equals(date))
                || (!removed.contains(date) && rules.stream().anyMatch(r -> r.covers(date)));
    }

    /** The routine as written, or the usual one. */
    public DayRoutine day() {
        return routine == null ? DayRoutine.USUAL : routine;
    }
}
