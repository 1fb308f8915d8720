package org.firmset.season.ask;

import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Map;
import java.util.stream.Collectors;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Subproject;
import org.firmset.plan.Totals;

/**
 * What a plan is worth in its style where power is asked for; the smaller is the better. What breaks the last ties is left
 * out, and so is fuel: a plan in which work draws nothing burns none, and no battery could be as good.
 */
record PowerRank(long first, long second) implements Comparable<PowerRank> {
    private static final Comparator<PowerRank> ORDER =
            Comparator.comparingLong(PowerRank::first).thenComparingLong(PowerRank::second);

    static PowerRank of(PlanningProblem problem, SeasonPlan plan) {
        long finishes = finishes(problem, plan);
        Totals totals = plan.totals();
        return switch (plan.style()) {
            case SOONEST -> new PowerRank(finishes, totals.trips());
            case FEWEST_TRIPS -> new PowerRank(totals.trips(), finishes);
            case LEAST_MONEY -> new PowerRank(totals.cents() - totals.generatorCents(), finishes);
            case LEAST_CHANGE -> new PowerRank(plan.aim().value(), finishes);
        };
    }

    /** Days of the finishes, each as often as its subproject counts. */
    private static long finishes(PlanningProblem problem, SeasonPlan plan) {
        Map<String, Integer> weights =
                problem.subprojects().stream().collect(Collectors.toMap(Subproject::id, Subproject::weight));
        return plan.finishes().entrySet().stream()
                .mapToLong(f ->
                        ChronoUnit.DAYS.between(plan.statusDate(), f.getValue()) * weights.getOrDefault(f.getKey(), 0))
                .sum();
    }

    boolean isBetterThan(PowerRank other) {
        return compareTo(other) < 0;
    }

    @Override
    public int compareTo(PowerRank other) {
        return ORDER.compare(this, other);
    }
}
