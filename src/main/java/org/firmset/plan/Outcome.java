package org.firmset.plan;

import java.util.List;

/** What came of planning. */
public sealed interface Outcome {

    record Planned(SeasonPlan plan) implements Outcome {}

    /** @param obstacles at least one, the most telling first */
    record NoPlan(List<Obstacle> obstacles) implements Outcome {
        public NoPlan {
            obstacles = List.copyOf(obstacles);
        }
    }
}
