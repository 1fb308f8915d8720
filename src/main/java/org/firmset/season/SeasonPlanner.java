package org.firmset.season;

import java.time.LocalDate;
import java.util.List;
import org.firmset.homestead.Homestead;
import org.firmset.plan.Effort;
import org.firmset.plan.Obstacle;
import org.firmset.plan.Outcome;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Progress;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.firmset.plan.check.Breach;
import org.firmset.plan.check.PlanChecker;
import org.firmset.plan.search.ConstructivePlanner;

/** From a homestead to a plan that the independent checker has passed. Thread-safe. */
public final class SeasonPlanner {

    /** What came of planning a homestead. */
    public sealed interface Result {

        record Planned(PlannedSeason season) implements Result {}

        /** @param obstacles at least one, the most telling first */
        record NoPlan(List<Obstacle> obstacles) implements Result {
            public NoPlan {
                obstacles = List.copyOf(obstacles);
            }
        }
    }

    private final ConstructivePlanner planner = new ConstructivePlanner();

    /**
     * @param homestead one without faults
     * @param statusDate 'today' for the plan
     * @throws BrokenPlan when the planner made a plan that breaks a rule; it is not shown
     */
    public Result plan(Homestead homestead, LocalDate statusDate, Style style, Effort effort) {
        return plan(homestead, statusDate, style, effort, (built, of) -> {}, new Stop());
    }

    /** The same, telling on the way how far it is; what comes of it after a stop is to be thrown away. */
    public Result plan(
            Homestead homestead, LocalDate statusDate, Style style, Effort effort, Progress progress, Stop stop) {
        PlanningProblem problem = ProblemWriter.write(homestead, statusDate, style);
        return switch (planner.plan(problem, effort, progress, stop)) {
            case Outcome.NoPlan noPlan -> new Result.NoPlan(noPlan.obstacles());
            case Outcome.Planned planned -> new Result.Planned(checked(homestead, problem, planned.plan()));
        };
    }

    private static PlannedSeason checked(Homestead homestead, PlanningProblem problem, SeasonPlan plan) {
        List<Breach> breaches = PlanChecker.check(problem, plan.schedule());
        if (!breaches.isEmpty()) {
            throw new BrokenPlan(breaches);
        }
        return new PlannedSeason(problem, plan, ReportWriter.write(homestead, problem, plan));
    }

    /** A plan that the checker refused: a mistake in the planner, never in what a person wrote. */
    public static final class BrokenPlan extends IllegalStateException {
        private static final long serialVersionUID = 1L;

        BrokenPlan(List<Breach> breaches) {
            super("The planner made a plan that breaks a rule, so it is not shown: "
                    + breaches.getFirst().message());
        }
    }
}
