package org.firmset.plan.explain;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;

/**
 * The finish of one subproject in two plans.
 *
 * @param before null when the subproject had no stages in the plan before
 * @param after null when it has none any more
 */
public record FinishMove(
        String subproject,
        @Nullable LocalDate before,
        @Nullable LocalDate after) {

    /** Calendar days by which it finishes later, negative for sooner; empty when one of the plans does not have it. */
    public OptionalLong days() {
        return between(before, after);
    }

    static OptionalLong between(@Nullable LocalDate before, @Nullable LocalDate after) {
        return before == null || after == null
                ? OptionalLong.empty()
                : OptionalLong.of(ChronoUnit.DAYS.between(before, after));
    }
}
