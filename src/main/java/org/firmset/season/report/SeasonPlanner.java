package org.firmset.season.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firmset.homestead.Homestead;
import org.firmset.plan.Effort;
import org.firmset.plan.Former;
import org.firmset.plan.Obstacle;
import org.firmset.plan.Outcome;
import org.firmset.plan.Planner;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Progress;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.firmset.plan.check.Breach;
import org.firmset.plan.check.PlanChecker;
import org.firmset.plan.explain.Clash;
import org.firmset.plan.search.ConstructivePlanner;
import org.firmset.season.problem.ProblemWriter;
import org.firmset.season.result.PlannedSeason;

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

    private final Planner planner = new ConstructivePlanner();

    /**
     * @param homestead one without faults
     * @param statusDate 'today' for the plan
     * @throws BrokenPlan when the planner made a plan that breaks a rule; it is not shown
     */
    public Result plan(Homestead homestead, LocalDate statusDate, Style style, Effort effort) {
        return plan(homestead, statusDate, style, List.of(), effort, (built, of) -> {}, new Stop());
    }

    /**
     * The same, telling on the way how far it is; what comes of it after a stop is to be thrown away.
     *
     * @param former where the plan before had the stages; ids that the homestead does not have any more are left out
     */
    public Result plan(
            Homestead homestead,
            LocalDate statusDate,
            Style style,
            List<Former> former,
            Effort effort,
            Progress progress,
            Stop stop) {
        PlanningProblem written = ProblemWriter.write(homestead, statusDate, style);
        PlanningProblem problem = written.withFormer(former.stream()
                .filter(f -> written.stages().stream().anyMatch(s -> s.id().equals(f.stage()) && !s.finished()))
                .toList());
        return switch (planner.plan(problem, effort, progress, stop)) {
            case Outcome.NoPlan noPlan -> new Result.NoPlan(explained(problem, noPlan.obstacles(), effort, stop));
            case Outcome.Planned planned -> new Result.Planned(checked(homestead, problem, planned.plan()));
        };
    }

    /** Where nothing plainer is proven and there is an effort for proofs, the rules that clash are told first. */
    private List<Obstacle> explained(PlanningProblem problem, List<Obstacle> found, Effort effort, Stop stop) {
        Obstacle first = found.getFirst();
        boolean plain = first.proven() && !first.isSummary();
        Optional<Clash> clash =
                plain || effort.proof() == 0 ? Optional.empty() : Clash.of(planner, problem, Clash.EFFORT, stop);
        if (clash.isEmpty()) {
            return found;
        }
        List<Obstacle> result = new ArrayList<>();
        new RuleWords(problem)
                .clash(clash.get())
                .forEach(sentence -> result.add(new Obstacle(first.rule(), first.stages(), true, sentence)));
        found.stream().filter(o -> !o.isSummary()).forEach(result::add);
        return result;
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

        public BrokenPlan(List<Breach> breaches) {
            super("The planner made a plan that breaks a rule, so it is not shown: "
                    + breaches.getFirst().message());
        }
    }
}
