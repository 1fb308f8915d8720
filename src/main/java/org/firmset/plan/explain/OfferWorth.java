package org.firmset.plan.explain;

import java.util.Optional;
import org.firmset.plan.Effort;
import org.firmset.plan.Planner;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Stop;

/**
 * What the deliveries of a supplier are good for: the plan that would be made without them.
 *
 * @param without the best plan found without them; empty when none was found
 * @param proven whether it is certain that there is none without them
 */
public record OfferWorth(Optional<SeasonPlan> without, boolean proven) {

    /** @param offer id of a delivery offer of the problem */
    public static OfferWorth of(Planner planner, PlanningProblem problem, String offer, Effort effort, Stop stop) {
        PlanningProblem less = problem.withOffers(
                problem.offers().stream().filter(o -> !o.id().equals(offer)).toList());
        Asking.Reply reply = new Asking(planner, effort, stop).ask(less);
        return new OfferWorth(reply.plan(), reply.proven());
    }
}
