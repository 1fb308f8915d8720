package org.firmset.homestead;

import java.time.LocalDate;
import java.util.List;
import org.firmset.measure.Described;

@Described("Which dates are free for a trip. Dates that follow each other make one trip.")
public record OpenDates(
        @Described("Rules such as: every Saturday and Sunday from April to October.")
        List<OpenRule> rules,

        @Described("Single dates besides the rules; they win over a rule on the same date.")
        List<AddedDate> added,

        @Described("Dates that are not free after all.") List<LocalDate> removed) {
    public OpenDates {
        rules = List.copyOf(rules);
        added = List.copyOf(added);
        removed = List.copyOf(removed);
    }
}
