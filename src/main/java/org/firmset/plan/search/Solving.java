package org.firmset.plan.search;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.util.function.Function;
import org.firmset.plan.Stop;

/**
 * One call of CP-SAT: one worker with a fixed seed and a measure of work instead of time, so that the same question has
 * the same answer on every machine.
 */
record Solving(CpModel asked, CpSolver solver, CpSolverStatus status) {

    /** @param work how hard to look, in the solver's own units of about a second */
    static Solving of(CpModel asked, double work, Stop stop) {
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setNumWorkers(1)
                .setRandomSeed(1)
                .setMaxDeterministicTime(work)
                .setSymmetryLevel(0)
                .setCpModelProbingLevel(1)
                .setMaxPresolveIterations(1);
        stop.endBy(solver::stopSearch);
        CpSolverStatus status = solver.solve(asked);
        stop.endBy(null);
        return new Solving(asked, solver, status);
    }

    /**
     * @param rest the part of the aim that the model does not hold
     * @param guide reads the solution
     */
    Answer answer(long limit, long rest, Function<CpSolver, Guide> guide) {
        return switch (status) {
            case INFEASIBLE -> Answer.impossible(limit);
            case OPTIMAL, FEASIBLE -> new Answer(rest + bound(), guide.apply(solver));
            case UNKNOWN -> new Answer(Math.min(limit + 1, rest + Math.max(0, bound())), null);
            case MODEL_INVALID, UNRECOGNIZED ->
                throw new IllegalStateException("the solver refused its model: " + asked.validate());
        };
    }

    private long bound() {
        double bound = solver.bestObjectiveBound();
        return Double.isFinite(bound) && Math.abs(bound) < 1e15 ? (long) Math.ceil(bound - 1e-6) : 0;
    }
}
