package org.firmset.plan.explain;

import java.util.List;
import java.util.Optional;
import org.firmset.plan.Effort;
import org.firmset.plan.Planner;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Stop;
import org.jspecify.annotations.Nullable;

/**
 * Which changes made the plan another. Found by planning with each change alone, and with all but each.
 *
 * @param again what planning the problem before again does, in the style and with the effort and former plan of now: none of
 *     the changes has a part in it
 * @param whole the plan after against the plan before; null when there is none, or the planning was stopped
 * @param together what of the whole neither {@code again} nor any change alone explains. Changes that only act together are
 *     in it, and so, with the opposite sign, is what several changes would each have done; also whatever the changes did
 *     that were not tried or gave no plan alone. Null when {@code whole} is
 * @param causes one for each change that was tried, in the order of their kinds
 * @param notTried changes beyond the first {@value #MOST_TRIED}, or for which there was no time before the stop
 */
public record Causes(
        Effect again,
        @Nullable Effect whole,
        @Nullable Effect together,
        List<Cause> causes,
        List<ProblemChange> notTried) {
    public static final int MOST_TRIED = 40;

    public Causes {
        causes = List.copyOf(causes);
        notTried = List.copyOf(notTried);
    }

    /**
     * Plans up to {@code 2 + 2 * MOST_TRIED} times.
     *
     * @param planBefore that of {@code before}
     * @param stop asked before each change; what was found by then is kept
     */
    public static Causes of(
            Planner planner,
            Effort effort,
            PlanningProblem before,
            SeasonPlan planBefore,
            PlanningProblem after,
            Stop stop) {
        return new CauseFinder(planner, effort, before, after, stop).find(planBefore);
    }

    /** What the change has added to the whole at the last: the plan after against that without the change. */
    public Optional<Effect> addedBy(Cause cause) {
        return whole != null && cause.without() instanceof Trial.Planned without
                ? Optional.of(whole.minus(again).minus(without.effect()))
                : Optional.empty();
    }
}
