package org.firmset.plan.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.firmset.plan.Effort;
import org.firmset.plan.Outcome;
import org.firmset.plan.Planner;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Stop;
import org.jspecify.annotations.Nullable;

/** Plans again and again to see what each change does. */
final class CauseFinder {
    private final Planner planner;
    private final Effort effort;
    private final Stop stop;
    private final Pair pair;
    private final List<ProblemChange> changes;
    private final Map<PlanningProblem, Optional<SeasonPlan>> planned = new HashMap<>();

    CauseFinder(Planner planner, Effort effort, PlanningProblem before, PlanningProblem after, Stop stop) {
        this.planner = planner;
        this.effort = effort;
        this.stop = stop;
        pair = Pair.of(before, after);
        changes = ProblemChanges.between(pair);
    }

    /**
     * A change must not seem to move what only another effort or style moves. So each is held against the problem before
     * as planned here, not against the plan that was kept of it.
     */
    Causes find(SeasonPlan planBefore) {
        SeasonPlan reference = plan(pair.start()).orElse(planBefore);
        Effect again = Effect.between(planBefore, reference);
        @Nullable
        Effect whole =
                plan(pair.after()).map(p -> Effect.between(planBefore, p)).orElse(null);
        List<ProblemChange> toTry = new ArrayList<>(changes);
        toTry.sort(Comparator.comparing(ProblemChange::kind));
        List<Cause> causes = new ArrayList<>();
        while (causes.size() < Math.min(toTry.size(), Causes.MOST_TRIED) && !stop.isStopped()) {
            Cause cause = cause(toTry.get(causes.size()), reference);
            if (stop.isStopped()) {
                break;
            }
            causes.add(cause);
        }
        List<ProblemChange> notTried = toTry.subList(causes.size(), toTry.size());
        return new Causes(again, whole, whole == null ? null : together(whole, again, causes), causes, notTried);
    }

    private static Effect together(Effect whole, Effect again, List<Cause> causes) {
        Effect left = whole.minus(again);
        for (Cause cause : causes) {
            if (cause.alone() instanceof Trial.Planned alone) {
                left = left.minus(alone.effect());
            }
        }
        return left;
    }

    private Cause cause(ProblemChange change, SeasonPlan reference) {
        return new Cause(change, trial(change.tryOn(pair.start()), reference), trial(without(change), reference));
    }

    private Optional<PlanningProblem> without(ProblemChange left) {
        Optional<PlanningProblem> problem = Optional.of(pair.start());
        for (ProblemChange change : changes) {
            if (!change.equals(left)) {
                problem = problem.flatMap(change::tryOn);
            }
        }
        return problem;
    }

    private Trial trial(Optional<PlanningProblem> problem, SeasonPlan reference) {
        if (problem.isEmpty() || !Alike.tablesReach(problem.get())) {
            return new Trial.Refused();
        }
        return plan(problem.get())
                .<Trial>map(p -> new Trial.Planned(Effect.between(reference, p)))
                .orElseGet(Trial.NoPlan::new);
    }

    /** Empty when there is no plan, and when it was stopped: what a planner says after that is worth nothing. */
    private Optional<SeasonPlan> plan(PlanningProblem problem) {
        if (stop.isStopped()) {
            return Optional.empty();
        }
        Optional<SeasonPlan> known = planned.get(problem);
        if (known == null) {
            known = planNow(problem);
            planned.put(problem, known);
        }
        return known;
    }

    private Optional<SeasonPlan> planNow(PlanningProblem problem) {
        Outcome outcome = planner.plan(problem, effort, (built, of) -> {}, stop);
        return !stop.isStopped() && outcome instanceof Outcome.Planned made
                ? Optional.of(made.plan())
                : Optional.empty();
    }
}
