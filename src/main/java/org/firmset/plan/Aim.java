package org.firmset.plan;

/**
 * What the owner's style asks for first, and how far this plan could be from the best: weighted days of the finishes for
 * the soonest plan, trips for the fewest, cents for the least money.
 *
 * @param value that of the plan
 * @param bound no plan has less; at most the value
 */
public record Aim(long value, long bound) {
    public Aim {
        Require.that(bound <= value, "bound [%d] of an aim must be at most its value [%d]", bound, value);
    }

    /** Whether no plan is better. */
    public boolean proven() {
        return bound == value;
    }

    /** How much better a plan could be at the most, as a share of this plan's value; 0 when proven. */
    public double gap() {
        return value == 0 ? 0 : (value - bound) / (double) value;
    }
}
