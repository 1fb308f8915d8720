package org.firmset.plan.explain;

import java.util.Optional;
import org.firmset.plan.Effort;
import org.firmset.plan.Planner;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Stop;

/**
 * What a trip is good for: the plan that would be made if it were not possible.
 *
 * @param without the best plan found without the trip; empty when none was found
 * @param proven whether it is certain that there is none without it
 */
public record TripWorth(Optional<SeasonPlan> without, boolean proven) {

    /** @param trip id of a trip of the problem */
    public static TripWorth of(Planner planner, PlanningProblem problem, String trip, Effort effort, Stop stop) {
        PlanningProblem less = problem.withTrips(
                problem.trips().stream().filter(t -> !t.id().equals(trip)).toList());
        Asking.Reply reply = new Asking(planner, effort, stop).ask(less);
        return new TripWorth(reply.plan(), reply.proven());
    }
}
