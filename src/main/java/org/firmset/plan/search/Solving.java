package org.firmset.plan.search;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.time.Duration;
import java.util.function.Function;
import org.firmset.plan.Stop;
import org.firmset.trade.takeoff.cutting.OneWorker;

/** One call of CP-SAT that can be stopped. */
record Solving(CpSolver solver, CpSolverStatus status) {
    private static final Duration LOOK_EVERY = Duration.ofMillis(50);

    /** @param work how hard to look, in the solver's own units of about a second */
    static Solving of(CpModel asked, double work, Stop stop) {
        CpSolver solver = OneWorker.solver(work);
        if (stop.isStopped()) {
            return new Solving(solver, CpSolverStatus.MODEL_INVALID);
        }
        Thread watch = Thread.ofPlatform().daemon().start(() -> endWhenStopped(solver, stop));
        try {
            stop.endBy(solver::stopSearch);
            return new Solving(solver, solver.solve(asked));
        } finally {
            stop.endBy(null);
            watch.interrupt();
        }
    }

    /** Asked to stop before it has begun, the solver would forget it. */
    private static void endWhenStopped(CpSolver solver, Stop stop) {
        try {
            while (true) {
                Thread.sleep(LOOK_EVERY);
                if (stop.isStopped()) {
                    solver.stopSearch();
                }
            }
        } catch (InterruptedException e) {
            // it is done
        }
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
            // numbers too great for the solver prove nothing; the plan and the simple bounds still serve
            case MODEL_INVALID, UNRECOGNIZED -> Answer.NONE;
        };
    }

    private long bound() {
        double bound = solver.bestObjectiveBound();
        return Double.isFinite(bound) && Math.abs(bound) < 1e15 ? (long) Math.ceil(bound - 1e-6) : 0;
    }
}
