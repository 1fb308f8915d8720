package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import org.firmset.homestead.DayRoutine;
import org.firmset.measure.Hours;
import org.jspecify.annotations.Nullable;

@Embeddable
record RoutineColumns(
        @Column(name = "routine_earliest_hour") int earliestHour,
        @Column(name = "routine_meals_quarter_hours") Hours meals) {

    static @Nullable RoutineColumns of(@Nullable DayRoutine routine) {
        return routine == null ? null : new RoutineColumns(routine.earliestHour(), routine.meals());
    }

    DayRoutine toRecord() {
        return new DayRoutine(earliestHour, meals);
    }
}
