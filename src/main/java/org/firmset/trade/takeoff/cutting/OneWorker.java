package org.firmset.trade.takeoff.cutting;

import com.google.ortools.sat.CpSolver;

/**
 * CP-SAT with one worker, a fixed seed and a measure of work instead of time, so that the same question has the same answer
 * on every machine; with little presolve, which would take most of the time.
 */
public final class OneWorker {
    private OneWorker() {}

    /** @param work how hard to look, in the solver's own units of about a second */
    public static CpSolver solver(double work) {
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setNumWorkers(1)
                .setRandomSeed(1)
                .setMaxDeterministicTime(work)
                .setSymmetryLevel(0)
                .setCpModelProbingLevel(1)
                .setMaxPresolveIterations(1);
        return solver;
    }
}
