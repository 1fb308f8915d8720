package org.firmset.trade.haul.splitting;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.firmset.trade.takeoff.cutting.OneWorker;

/**
 * All full loads that one run can have, where a run takes so few packs that they can be counted, and the fewest of them that
 * carry all. Proves where runs one by one leave the solver too many ways that are alike.
 */
final class Patterns {
    private static final int MOST_PATTERNS = 3_000;
    private static final int MOST_STEPS = 100_000;

    private final Pieces pieces;
    private final Map<List<Integer>, Hold> full = new LinkedHashMap<>();
    private int steps;

    private Patterns(Pieces pieces) {
        this.pieces = pieces;
    }

    /** Empty when there are too many, or when packs that lift an axle would make part loads forbidden that full ones allow. */
    static Optional<Patterns> of(Pieces pieces) {
        Patterns patterns = new Patterns(pieces);
        boolean all = !pieces.lifts() && patterns.collect(new Hold(pieces), 0);
        return all ? Optional.of(patterns) : Optional.empty();
    }

    /** Every count of every kind in every bay, the places in a row. */
    private boolean collect(Hold hold, int place) {
        if (++steps > MOST_STEPS || full.size() > MOST_PATTERNS) {
            return false;
        }
        if (place == pieces.kinds() * pieces.bays()) {
            if (isFull(hold)) {
                full.putIfAbsent(packs(hold), hold.copy());
            }
            return true;
        }
        int kind = place / pieces.bays();
        int bay = place % pieces.bays();
        int most = Math.min(hold.most(kind, bay), pieces.wanted[kind] - hold.counts.of(kind));
        for (int n = most; n >= 0; n--) {
            hold.put(kind, bay, n);
            boolean all = collect(hold, place + 1);
            hold.put(kind, bay, -n);
            if (!all) {
                return false;
            }
        }
        return true;
    }

    private boolean isFull(Hold hold) {
        for (int k = 0; k < pieces.kinds(); k++) {
            for (int b = 0; hold.counts.of(k) < pieces.wanted[k] && b < pieces.bays(); b++) {
                if (hold.most(k, b) > 0) {
                    return false;
                }
            }
        }
        return true;
    }

    private List<Integer> packs(Hold hold) {
        List<Integer> packs = new ArrayList<>();
        for (int k = 0; k < pieces.kinds(); k++) {
            packs.add(hold.counts.of(k));
        }
        return packs;
    }

    /**
     * @param holds empty when no split with fewer runs was found
     * @param least no split has fewer
     */
    record Answer(List<Hold> holds, int least) {}

    /**
     * @param least fewer are proven impossible
     * @param runs of the best split known
     */
    Answer fewest(int least, int runs, double work) {
        List<Hold> loads = List.copyOf(full.values());
        CpModel model = new CpModel();
        IntVar[] times = new IntVar[loads.size()];
        for (int p = 0; p < times.length; p++) {
            times[p] = model.newIntVar(0, runs, "");
        }
        for (int k = 0; k < pieces.kinds(); k++) {
            LinearExprBuilder carried = LinearExpr.newBuilder();
            for (int p = 0; p < times.length; p++) {
                carried.addTerm(times[p], loads.get(p).counts.of(k));
            }
            model.addGreaterOrEqual(carried, pieces.wanted[k]);
        }
        LinearExpr sum = LinearExpr.sum(times);
        model.addLinearConstraint(sum, least, runs - 1L);
        model.minimize(sum);
        CpSolver solver = OneWorker.solver(work);
        CpSolverStatus status = solver.solve(model);
        return switch (status) {
            case INFEASIBLE -> new Answer(List.of(), runs);
            case OPTIMAL, FEASIBLE ->
                new Answer(clipped(solver, times, loads), (int) Math.ceil(solver.bestObjectiveBound() - 1e-6));
            case UNKNOWN, MODEL_INVALID, UNRECOGNIZED -> new Answer(List.of(), least);
        };
    }

    /** Full loads may carry more than is wanted: what is too much stays. */
    private List<Hold> clipped(CpSolver solver, IntVar[] times, List<Hold> loads) {
        int[] open = pieces.wanted.clone();
        List<Hold> holds = new ArrayList<>();
        for (int p = 0; p < times.length; p++) {
            for (long n = solver.value(times[p]); n > 0; n--) {
                Hold hold = new Hold(pieces);
                for (int k : loads.get(p).counts.present()) {
                    for (int b = 0; b < pieces.bays(); b++) {
                        int put = Math.min(open[k], loads.get(p).counts.of(k, b));
                        hold.put(k, b, put);
                        open[k] -= put;
                    }
                }
                holds.add(hold);
            }
        }
        return holds.stream().filter(hold -> !hold.isEmpty()).toList();
    }
}
