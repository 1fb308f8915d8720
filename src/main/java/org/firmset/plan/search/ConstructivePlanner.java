package org.firmset.plan.search;

import java.util.List;
import org.firmset.plan.Effort;
import org.firmset.plan.Obstacle;
import org.firmset.plan.Outcome;
import org.firmset.plan.Planner;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Progress;
import org.firmset.plan.Rule;
import org.firmset.plan.Stage;
import org.firmset.plan.Stop;

/**
 * Plans a season: builds many plans by serial placement of stages, keeps the best, and tells its reasons. The same
 * problem and effort always give the same plan. Thread-safe; get one by {@code new}.
 */
public final class ConstructivePlanner implements Planner {

    @Override
    public Outcome plan(PlanningProblem problem, Effort effort, Progress progress, Stop stop) {
        Reckoning reckoning = new Reckoning(problem);
        Model asked = new Model(reckoning.withFewRuns());
        List<Obstacle> found = new Obstacles(asked, new Windows(asked)).find();
        Reckoning sums = new Reckoning(asked.problem);
        if (found.isEmpty()) {
            found = sums.tooMuch();
        }
        if (!found.isEmpty()) {
            return new Outcome.NoPlan(found);
        }
        if (stop.isStopped()) {
            return stopped(asked);
        }
        PlanningProblem within = sums.withinReach();
        Model model = within == asked.problem ? asked : new Model(within);
        boolean canProve = reckoning.looksAtAllRuns() && sums.fitsSolver();
        return plan(model, canProve ? effort : effort.withProof(0), progress, stop);
    }

    private static Outcome plan(Model model, Effort effort, Progress progress, Stop stop) {
        Windows windows = new Windows(model);
        Genes genes = Champion.find(model, windows, effort, progress, stop);
        if (stop.isStopped()) {
            return stopped(model);
        }
        Prover.Result proven = Prover.prove(model, windows.sharing(), genes, effort, stop);
        if (stop.isStopped()) {
            return stopped(model);
        }
        Builder builder = new Builder(model);
        Draft best = builder.build(proven.genes());
        if (proven.aim() == null) {
            return new Outcome.NoPlan(new NoPlace(model).of(best, builder, proven.genes(), proven.impossible()));
        }
        return new Outcome.Planned(new PlanWriter(windows, best, builder, proven.genes()).write(proven.aim()));
    }

    /** Nobody waits for it any more, so no time is spent on a plan and its reasons. */
    private static Outcome stopped(Model model) {
        List<String> stages = model.problem.stages().stream()
                .filter(s -> !s.finished())
                .map(Stage::id)
                .toList();
        return new Outcome.NoPlan(
                List.of(new Obstacle(Rule.LABOUR, stages, false, "The planning was stopped before it found a plan.")));
    }
}
