package org.firmset.season;

import java.util.List;
import org.firmset.homestead.Homestead;
import org.firmset.plan.Obstacle;
import org.firmset.season.result.SeasonReport;
import org.jspecify.annotations.Nullable;

/** Where the plan of a homestead stands. */
public sealed interface SeasonState {

    /** The plan that is shown; null when there is none yet. */
    @Nullable
    SeasonReport report();

    /** A plan is being made. */
    record Planning(@Nullable SeasonReport report, int percent) implements SeasonState {}

    /**
     * The plan is the one for the homestead as it is.
     *
     * @param moved what is different from the plan before, in sentences
     * @param last whether this is the plan of the longer look; until then a better one may come
     * @param percent how far the longer look is, 0 to 100
     */
    record Planned(SeasonReport report, Homestead homestead, List<String> moved, boolean last, int percent)
            implements SeasonState {
        public Planned {
            moved = List.copyOf(moved);
        }
    }

    /** A plan is shown and a better one may come. */
    default boolean isLooking() {
        return this instanceof Planned planned && !planned.last();
    }

    /**
     * There is no plan for the homestead as it is.
     *
     * @param report the last plan there was, which no longer holds
     */
    record NoPlan(@Nullable SeasonReport report, List<Obstacle> obstacles) implements SeasonState {
        public NoPlan {
            obstacles = List.copyOf(obstacles);
        }
    }

    /** Planning failed by a mistake of the program; nothing that is stored was touched. */
    record Failed(@Nullable SeasonReport report, String message) implements SeasonState {}
}
