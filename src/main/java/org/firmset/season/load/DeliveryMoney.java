package org.firmset.season.load;

import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Material;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Run;

/** What a delivery of a plan costs, in cents. */
public final class DeliveryMoney {
    private final PlanningProblem problem;
    private final Map<String, Long> prices;

    public DeliveryMoney(PlanningProblem problem) {
        this.problem = problem;
        prices = problem.materials().stream().collect(Collectors.toMap(Material::id, Material::cents));
    }

    public DeliveryOffer offer(Run run) {
        return problem.offers().stream()
                .filter(o -> o.id().equals(run.offer()))
                .findFirst()
                .orElseThrow();
    }

    /** What its packs are worth. */
    public long goods(Run run) {
        return run.loads().stream()
                .mapToLong(l -> Objects.requireNonNull(prices.get(l.material())) * l.packs())
                .sum();
    }

    /** Its fee, with that for a small order. */
    public long fees(Run run) {
        return offer(run).cents() + offer(run).smallOrderCents(goods(run));
    }
}
