package org.firmset.plan.explain;

/** What came of planning with one set of changes out of several. */
public sealed interface Trial {

    /** @param effect against the plan before, planned again with the same effort */
    record Planned(Effect effect) implements Trial {}

    /** The planner found no plan. */
    record NoPlan() implements Trial {}

    /** Changes that contradict each other or the rest of the problem, so there was nothing to plan. */
    record Refused() implements Trial {}
}
