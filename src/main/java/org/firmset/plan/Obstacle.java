package org.firmset.plan;

import java.util.List;

/**
 * Why there is no plan.
 *
 * @param rule which hard rule stands in the way
 * @param stages ids of the stages concerned, the most telling first
 * @param proven true when no plan at all can exist because of this; false when only the search ended here
 * @param message one plain sentence with names, numbers and dates, and what could be done about it
 */
public record Obstacle(Rule rule, List<String> stages, boolean proven, String message) {
    /** Said when it is proven that there is no plan and nothing more is known of why. */
    public static final String SUMMARY =
            "It is proven that no plan keeps every rule: the stages, waits, hours, power, tools, loads and money of this"
                    + " homestead clash.";

    public Obstacle {
        stages = List.copyOf(stages);
    }

    /** Whether it names no cause. */
    public boolean isSummary() {
        return message.equals(SUMMARY);
    }
}
