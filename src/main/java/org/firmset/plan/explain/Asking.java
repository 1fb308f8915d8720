package org.firmset.plan.explain;

import java.util.Optional;
import org.firmset.plan.Effort;
import org.firmset.plan.Outcome;
import org.firmset.plan.Planner;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Stop;
import org.firmset.plan.check.PlanChecker;

/** Asks a planner whether a problem has a plan. What it says is believed only when the checker passes it. */
final class Asking {
    /** @param proven there is certainly no plan; only without one */
    record Reply(Optional<SeasonPlan> plan, boolean proven) {
        boolean isPossible() {
            return plan.isPresent();
        }
    }

    private static final int HARDER = 4;

    private final Planner planner;
    private final Effort effort;
    private final Stop stop;

    Asking(Planner planner, Effort effort, Stop stop) {
        this.planner = planner;
        this.effort = effort;
        this.stop = stop;
    }

    /** Asks again, and harder, where the first look neither found a plan nor ruled it out. */
    Reply insist(PlanningProblem problem) {
        Reply reply = ask(problem, effort);
        return reply.isPossible() || reply.proven()
                ? reply
                : ask(problem, Effort.forAny(HARDER * effort.plans(), effort.seed() + 1, HARDER * effort.proof()));
    }

    Reply ask(PlanningProblem problem) {
        return ask(problem, effort);
    }

    private Reply ask(PlanningProblem problem, Effort effort) {
        if (stop.isStopped()) {
            return new Reply(Optional.empty(), false);
        }
        return switch (planner.plan(problem, effort, (built, of) -> {}, stop)) {
            case Outcome.Planned planned
            when PlanChecker.check(problem, planned.plan().schedule()).isEmpty() ->
                new Reply(Optional.of(planned.plan()), false);
            case Outcome.Planned broken ->
                throw new IllegalStateException("the planner made a plan that breaks a rule");
            case Outcome.NoPlan none ->
                new Reply(Optional.empty(), none.obstacles().stream().anyMatch(o -> o.proven()));
        };
    }
}
