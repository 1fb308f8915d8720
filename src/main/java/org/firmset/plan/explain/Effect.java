package org.firmset.plan.explain;

import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.firmset.plan.SeasonPlan;

/**
 * By how much one plan differs from another.
 *
 * @param days for each subproject that both plans have: calendar days by which it finishes later, negative for sooner
 * @param trips how many more trips are made
 * @param cents how much more it costs
 */
public record Effect(SortedMap<String, Long> days, int trips, long cents) {
    public Effect {
        days = Collections.unmodifiableSortedMap(new TreeMap<>(days));
    }

    static Effect between(SeasonPlan before, SeasonPlan after) {
        SortedMap<String, Long> days = new TreeMap<>();
        before.finishes().forEach((subproject, finish) -> {
            if (after.finishes().containsKey(subproject)) {
                days.put(
                        subproject,
                        ChronoUnit.DAYS.between(finish, after.finishes().get(subproject)));
            }
        });
        return new Effect(
                days,
                after.totals().trips() - before.totals().trips(),
                after.totals().cents() - before.totals().cents());
    }

    /** What is left when another effect is taken away; a subproject that the other does not have keeps its days. */
    public Effect minus(Effect other) {
        SortedMap<String, Long> left = new TreeMap<>();
        days.forEach((subproject, moved) -> left.put(subproject, moved - other.daysOf(subproject)));
        return new Effect(left, trips - other.trips, cents - other.cents);
    }

    /** 0 for a subproject that one of the plans does not have. */
    public long daysOf(String subproject) {
        return days.getOrDefault(subproject, 0L);
    }

    /** Whether no finish, number of trips or cost is another. */
    public boolean isNone() {
        return trips == 0 && cents == 0 && days.values().stream().allMatch(d -> d == 0);
    }
}
