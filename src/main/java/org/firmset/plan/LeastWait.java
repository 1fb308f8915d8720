package org.firmset.plan;

import java.time.LocalDate;
import java.util.List;

/** How many calendar days must pass after a finish before the next stage may start. */
public sealed interface LeastWait {

    int daysAfter(LocalDate finish);

    /** The same number of days whenever the finish is. */
    record Days(int days) implements LeastWait {
        public Days {
            Require.notNegative(days, "days", "least wait", "fixed");
        }

        @Override
        public int daysAfter(LocalDate finish) {
            return days;
        }
    }

    /**
     * Days that depend on the date of the finish, as those of a cure do.
     *
     * @param first the first finish date the table knows
     * @param days the wait after a finish on {@code first}, {@code first + 1}, ...
     */
    record ByFinishDate(LocalDate first, List<Integer> days) implements LeastWait {
        public ByFinishDate {
            days = List.copyOf(days);
            Require.that(days.stream().allMatch(d -> d >= 0), "days %s of a least wait must not be negative", days);
        }

        /** @throws IllegalArgumentException for a finish outside the table */
        @Override
        public int daysAfter(LocalDate finish) {
            long index = finish.toEpochDay() - first.toEpochDay();
            Require.that(
                    index >= 0 && index < days.size(),
                    "finish [%s] is outside the table of waits, which runs from [%s] for [%d] days",
                    finish,
                    first,
                    days.size());
            return days.get((int) index);
        }
    }
}
