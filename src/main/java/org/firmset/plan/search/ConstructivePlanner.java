package org.firmset.plan.search;

import java.util.List;
import org.firmset.plan.Effort;
import org.firmset.plan.Obstacle;
import org.firmset.plan.Outcome;
import org.firmset.plan.Planner;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Progress;
import org.firmset.plan.Stop;

/**
 * Plans a season: builds many plans by serial placement of stages, keeps the best, and tells its reasons. The same
 * problem and effort always give the same plan. Thread-safe; get one by {@code new}.
 */
public final class ConstructivePlanner implements Planner {

    @Override
    public Outcome plan(PlanningProblem problem, Effort effort, Progress progress, Stop stop) {
        Model model = new Model(problem);
        Windows windows = new Windows(model);
        Obstacles obstacles = new Obstacles(model, windows);
        List<Obstacle> found = obstacles.find();
        if (!found.isEmpty()) {
            return new Outcome.NoPlan(found);
        }
        Genes genes = Champion.find(model, windows, effort, progress, stop);
        Prover.Result proven = Prover.prove(model, windows, genes, effort, stop);
        Builder builder = new Builder(model);
        Draft best = builder.build(proven.genes());
        if (proven.aim() == null) {
            return new Outcome.NoPlan(obstacles.unplaced(best, builder, proven.genes(), proven.impossible()));
        }
        return new Outcome.Planned(new PlanWriter(windows, best, builder, proven.genes()).write(proven.aim()));
    }
}
