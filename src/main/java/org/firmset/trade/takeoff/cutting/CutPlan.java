package org.firmset.trade.takeoff.cutting;

import java.util.Map;

/**
 * How everything is cut.
 *
 * @param uses how often each pattern is cut; together exactly what is wanted
 * @param cost the sum of the costs of the stock used
 * @param bound no plan costs less
 * @param solved whether the solver looked for the best; false when it is not there or was not needed
 */
public record CutPlan(Map<Pattern, Integer> uses, long cost, long bound, boolean solved) {
    public CutPlan {
        uses = Map.copyOf(uses);
    }

    /** Whether no plan can be better. */
    public boolean proven() {
        return cost == bound;
    }

    /** How many of a stock are used. */
    public int used(int stock) {
        return uses.entrySet().stream()
                .filter(use -> use.getKey().stock() == stock)
                .mapToInt(Map.Entry::getValue)
                .sum();
    }
}
