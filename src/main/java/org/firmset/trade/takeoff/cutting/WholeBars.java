package org.firmset.trade.takeoff.cutting;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;

/** The cheapest plan from given patterns in whole bars, by CP-SAT. */
final class WholeBars {
    /** Work, not seconds: the same on every machine. About two seconds. */
    private static final double MOST_WORK = 2;

    /** @param plan one column for each bar; empty when none was found within the limits */
    record Result(List<Column> plan, boolean best) {}

    private WholeBars() {}

    /** @param under only plans that cost less than this count */
    static Result search(Instance instance, List<Column> columns, long under) {
        CpModel model = new CpModel();
        IntVar[] times = new IntVar[columns.size()];
        LinearExprBuilder cost = LinearExpr.newBuilder();
        for (int c = 0; c < times.length; c++) {
            times[c] = model.newIntVar(0, mostTimes(instance, columns.get(c)), "");
            cost.addTerm(times[c], instance.costs[columns.get(c).stock()]);
        }
        cover(model, instance, columns, times);
        keepToStock(model, instance, columns, times);
        model.addLessOrEqual(cost, under - instance.step());
        model.minimize(cost);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1).setMaxDeterministicTime(MOST_WORK);
        CpSolverStatus status = solver.solve(model);
        List<Column> plan = new ArrayList<>();
        if (status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE) {
            for (int c = 0; c < times.length; c++) {
                for (long n = solver.value(times[c]); n > 0; n--) {
                    plan.add(columns.get(c));
                }
            }
        }
        return new Result(plan, status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.INFEASIBLE);
    }

    private static long mostTimes(Instance instance, Column column) {
        long most = 0;
        for (int i = 0; i < instance.kinds(); i++) {
            if (column.counts()[i] > 0) {
                most = Math.max(most, Math.ceilDiv(instance.wanted[i], column.counts()[i]));
            }
        }
        return Math.min(most, instance.available[column.stock()]);
    }

    private static void cover(CpModel model, Instance instance, List<Column> columns, IntVar[] times) {
        for (int i = 0; i < instance.kinds(); i++) {
            LinearExprBuilder made = LinearExpr.newBuilder();
            for (int c = 0; c < times.length; c++) {
                if (columns.get(c).counts()[i] > 0) {
                    made.addTerm(times[c], columns.get(c).counts()[i]);
                }
            }
            model.addGreaterOrEqual(made, instance.wanted[i]);
        }
    }

    private static void keepToStock(CpModel model, Instance instance, List<Column> columns, IntVar[] times) {
        for (int k = 0; k < instance.stocks(); k++) {
            if (instance.available[k] != Stock.UNLIMITED) {
                LinearExprBuilder used = LinearExpr.newBuilder();
                for (int c = 0; c < times.length; c++) {
                    if (columns.get(c).stock() == k) {
                        used.add(times[c]);
                    }
                }
                model.addLessOrEqual(used, instance.available[k]);
            }
        }
    }
}
