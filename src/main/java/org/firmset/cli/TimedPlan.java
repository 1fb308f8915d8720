package org.firmset.cli;

import java.util.Locale;
import java.util.Optional;
import org.firmset.plan.Aim;
import org.firmset.plan.Effort;
import org.firmset.plan.Outcome;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.check.PlanChecker;
import org.firmset.plan.search.ConstructivePlanner;

/** What came of one planning, and how long it took. */
record TimedPlan(PlanningProblem problem, Outcome outcome, double millis) {
    /** Stands for what cannot be measured. */
    static final String NONE = "-";

    static TimedPlan of(PlanningProblem problem, Effort effort) {
        long start = System.nanoTime();
        Outcome outcome = new ConstructivePlanner().plan(problem, effort);
        return new TimedPlan(problem, outcome, (System.nanoTime() - start) / 1e6);
    }

    Optional<SeasonPlan> plan() {
        return outcome instanceof Outcome.Planned planned ? Optional.of(planned.plan()) : Optional.empty();
    }

    Optional<Aim> aim() {
        return plan().map(SeasonPlan::aim);
    }

    boolean proven() {
        return aim().filter(Aim::proven).isPresent();
    }

    boolean breaks() {
        return plan().filter(p -> !PlanChecker.check(problem, p.schedule()).isEmpty())
                .isPresent();
    }

    String aimText() {
        return aim().map(a -> String.format(Locale.ROOT, "%d / %d, %.1f", a.value(), a.bound(), 100 * a.gap()))
                .orElse(NONE);
    }

    /** The time to a plan; looking in vain is no such time. */
    String millisText() {
        return plan().map(p -> String.format(Locale.ROOT, "%.1f", millis)).orElse(NONE);
    }

    String verdict() {
        return plan().map(p -> breaks() ? "BREAKS" : "passes").orElse(NONE);
    }
}
