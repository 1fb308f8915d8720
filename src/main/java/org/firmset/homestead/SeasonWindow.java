package org.firmset.homestead;

import java.time.MonthDay;
import org.firmset.measure.Described;

@Described("A part of every year, both ends included; it may run over the new year.")
public record SeasonWindow(
        @Described("First day.") MonthDay from,
        @Described("Last day.") MonthDay to) {
    public boolean holds(MonthDay day) {
        boolean overNewYear = from.isAfter(to);
        return overNewYear ? !day.isBefore(from) || !day.isAfter(to) : !day.isBefore(from) && !day.isAfter(to);
    }
}
