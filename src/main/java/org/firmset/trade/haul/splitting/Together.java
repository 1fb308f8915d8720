package org.firmset.trade.haul.splitting;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import org.firmset.trade.takeoff.cutting.OneWorker;
import org.jspecify.annotations.Nullable;

/** CP-SAT's side of splitting: one worker, a fixed seed and work instead of time, so that every machine answers alike. */
final class Together {
    /** In the solver's own units of about a second. */
    private static final double MOST_BOUND_WORK = 0.1;

    private static final int MOST_NUMBERS = 20_000;

    private final Pieces pieces;
    private double workLeft;

    /** @param work how hard to look in all */
    Together(Pieces pieces, double work) {
        this.pieces = pieces;
        workLeft = work;
    }

    /**
     * @param holds the split, empty where none was found
     * @param impossible whether it is proven that there is none
     */
    record Answer(List<Hold> holds, boolean impossible) {}

    /** No split has fewer runs: all runs' rooms taken together, packs whole. 0 when nothing came of it. */
    int bound() {
        CpModel model = new CpModel();
        IntVar runs = model.newIntVar(0, pieces.packs(), "");
        load(model, LinearExpr.newBuilder().add(runs).build(), pieces.packs(), new ArrayList<>(), null);
        model.minimize(runs);
        CpSolver solver = OneWorker.solver(Math.min(MOST_BOUND_WORK, workLeft));
        return switch (solver.solve(model)) {
            case OPTIMAL, FEASIBLE -> (int) Math.ceil(solver.bestObjectiveBound() - 1e-6);
            // numbers too great for the solver, or out of work: the simple bounds still serve
            case UNKNOWN, INFEASIBLE, MODEL_INVALID, UNRECOGNIZED -> 0;
        };
    }

    /**
     * Whether all goes into so many runs.
     *
     * @param part of the work that is left to spend on it at the most, over 0 and up to 1
     */
    Answer inRuns(int runs, double part) {
        if (workLeft <= 0 || (long) pieces.kinds() * pieces.bays() * runs > MOST_NUMBERS) {
            return new Answer(List.of(), false);
        }
        CpModel model = new CpModel();
        List<IntVar[][]> counts = new ArrayList<>();
        LinearExprBuilder[] packed = new LinearExprBuilder[pieces.kinds()];
        for (int k = 0; k < packed.length; k++) {
            packed[k] = LinearExpr.newBuilder();
        }
        for (int run = 0; run < runs; run++) {
            load(model, LinearExpr.constant(1), 1, counts, packed);
        }
        for (int k = 0; k < packed.length; k++) {
            model.addEquality(packed[k], pieces.wanted[k]);
        }
        heaviestFirst(model, counts);
        CpSolver solver = OneWorker.solver(workLeft * part);
        CpSolverStatus status = solver.solve(model);
        workLeft -= solver.response().getDeterministicTime();
        boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        return new Answer(found ? read(solver, counts) : List.of(), status == CpSolverStatus.INFEASIBLE);
    }

    /**
     * Counts of every kind in every bay that keep all rules, of so many times the room.
     *
     * @param packed what to add the packs of each kind to; null to load all that is wanted
     */
    private void load(
            CpModel model,
            LinearExpr times,
            long mostTimes,
            List<IntVar[][]> counts,
            LinearExprBuilder @Nullable [] packed) {
        IntVar[][] own = new IntVar[pieces.kinds()][pieces.bays()];
        counts.add(own);
        Hold empty = new Hold(pieces);
        for (int k = 0; k < own.length; k++) {
            LinearExprBuilder sum = packed == null ? LinearExpr.newBuilder() : packed[k];
            for (int b = 0; b < pieces.bays(); b++) {
                long most = mostTimes * empty.most(k, b);
                own[k][b] = model.newIntVar(
                        0,
                        pieces.lifts() && pieces.goes[k][b] ? pieces.wanted[k] : Math.min(most, pieces.wanted[k]),
                        "");
                sum.add(own[k][b]);
            }
            if (packed == null) {
                model.addEquality(sum, pieces.wanted[k]);
            }
        }
        for (int r = 0; r < pieces.rules(); r++) {
            LinearExprBuilder weight = LinearExpr.newBuilder();
            for (int k = 0; k < own.length; k++) {
                for (int b = 0; b < pieces.bays(); b++) {
                    if (pieces.goes[k][b] && pieces.weights[r][k][b] != 0) {
                        weight.addTerm(own[k][b], pieces.weights[r][k][b]);
                    }
                }
            }
            weight.addTerm(times, -pieces.rooms[r]);
            model.addLessOrEqual(weight, 0);
        }
    }

    /** Runs are alike: of all their orders one is enough. */
    private void heaviestFirst(CpModel model, List<IntVar[][]> counts) {
        for (int run = 1; run < counts.size(); run++) {
            model.addGreaterOrEqual(grams(counts.get(run - 1)), grams(counts.get(run)));
        }
    }

    private LinearExpr grams(IntVar[][] counts) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (int k = 0; k < counts.length; k++) {
            for (IntVar count : counts[k]) {
                sum.addTerm(count, pieces.grams[k]);
            }
        }
        return sum.build();
    }

    private List<Hold> read(CpSolver solver, List<IntVar[][]> counts) {
        List<Hold> holds = new ArrayList<>();
        for (IntVar[][] own : counts) {
            Hold hold = new Hold(pieces);
            for (int k = 0; k < own.length; k++) {
                for (int b = 0; b < own[k].length; b++) {
                    hold.put(k, b, Math.toIntExact(solver.value(own[k][b])));
                }
            }
            holds.add(hold);
        }
        return holds;
    }
}
