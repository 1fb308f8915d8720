package org.firmset.plan.explain;

import org.firmset.plan.PlanningProblem;

/**
 * Two problems and what lies between them.
 *
 * @param start the problem before, as far as possible in the way in which the one after is written
 * @param aged the start when time has gone on
 * @param goal the problem after; the same as {@code after} but for what is {@link ChangeKind#WRITTEN_OTHERWISE}
 */
record Pair(
        PlanningProblem before,
        PlanningProblem after,
        PlanningProblem start,
        PlanningProblem aged,
        PlanningProblem goal) {

    static Pair of(PlanningProblem before, PlanningProblem after) {
        Alike alike = new Alike(before, after);
        PlanningProblem start = alike.start();
        PlanningProblem goal = alike.goal();
        return new Pair(before, after, start, aged(start, goal), goal);
    }

    private static PlanningProblem aged(PlanningProblem start, PlanningProblem goal) {
        if (start.statusDate().equals(goal.statusDate())) {
            return start;
        }
        PlanningProblem.Parts draft = new PlanningProblem.Parts(start);
        new Passing(draft, new PlanningProblem.Parts(start), new PlanningProblem.Parts(goal)).apply();
        return draft.build();
    }
}
