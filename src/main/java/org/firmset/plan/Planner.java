package org.firmset.plan;

/**
 * Plans a season. The same problem and effort always give the same outcome, on every machine. Thread-safe.
 */
public interface Planner {

    /**
     * A plan that keeps every hard rule, with a bound on what any plan can reach, or what stands in the way.
     *
     * @param problem what to plan, and the style that says what is better
     * @param effort how hard to look
     * @param progress hears on the way how far it is, and of each better plan or bound
     * @param stop ends the planning early; what comes of it then is to be thrown away
     */
    Outcome plan(PlanningProblem problem, Effort effort, Progress progress, Stop stop);

    /** The same for somebody who neither listens nor stops it. */
    default Outcome plan(PlanningProblem problem, Effort effort) {
        return plan(problem, effort, (built, of) -> {}, new Stop());
    }
}
