package org.firmset.trade.takeoff.cutting;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The cutting problem with fractions of bars allowed, by columns made as they are needed (Gilmore and Gomory 1961). Its
 * value is a bound on every plan, its prices say which patterns a better plan could still use.
 */
final class Relaxation {
    private static final int MOST_ROUNDS = 2_000;
    private static final double EQUAL = 1e-7;

    private final Instance instance;
    private final Map<Column, MPVariable> columns = new LinkedHashMap<>();
    private final MPSolver solver = MPSolver.createSolver("GLOP");
    private final MPConstraint[] rows;
    private final MPConstraint[] limits;
    private final Map<Column, Double> uses = new LinkedHashMap<>();
    private double[] prices = new double[0];
    private double[] rents = new double[0];
    private double bound;

    private Relaxation(Instance instance) {
        this.instance = instance;
        rows = new MPConstraint[instance.kinds()];
        limits = new MPConstraint[instance.stocks()];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = solver.makeConstraint(instance.wanted[i], MPSolver.infinity());
        }
        for (int k = 0; k < limits.length; k++) {
            double most = instance.available[k] == Stock.UNLIMITED ? MPSolver.infinity() : instance.available[k];
            limits[k] = solver.makeConstraint(-MPSolver.infinity(), most);
        }
        solver.objective().setMinimization();
    }

    /** @param first a plan whose columns to begin with; empty when it could not be solved to the end */
    static Optional<Relaxation> solve(Instance instance, List<Column> first) {
        Relaxation relaxation = new Relaxation(instance);
        first.forEach(relaxation::add);
        return relaxation.run() ? Optional.of(relaxation) : Optional.empty();
    }

    /** No plan costs less. */
    double bound() {
        return bound;
    }

    List<Column> columns() {
        return List.copyOf(columns.keySet());
    }

    /** How often each pattern is used, fractions allowed. */
    Map<Column, Double> uses() {
        return uses;
    }

    private boolean add(Column column) {
        if (columns.containsKey(column)) {
            return false;
        }
        MPVariable variable = solver.makeNumVar(0, MPSolver.infinity(), "");
        columns.put(column, variable);
        MPObjective objective = solver.objective();
        objective.setCoefficient(variable, instance.costs[column.stock()]);
        limits[column.stock()].setCoefficient(variable, 1);
        for (int i = 0; i < rows.length; i++) {
            if (column.counts()[i] > 0) {
                rows[i].setCoefficient(variable, column.counts()[i]);
            }
        }
        return true;
    }

    private boolean run() {
        for (int round = 0; round < MOST_ROUNDS; round++) {
            if (solver.solve() != MPSolver.ResultStatus.OPTIMAL) {
                return false;
            }
            prices = values(rows);
            rents = values(limits);
            Pricing pricing = price();
            if (!pricing.complete()) {
                return false;
            }
            if (!pricing.better()) {
                bound = dualValue() + pricing.slip();
                columns.forEach((column, variable) -> uses.put(column, variable.solutionValue()));
                return true;
            }
        }
        return false;
    }

    /**
     * @param better whether a new pattern was added
     * @param slip what rounding of the prices may have promised too much, 0 or less
     */
    private record Pricing(boolean complete, boolean better, double slip) {}

    private Pricing price() {
        boolean better = false;
        double slip = 0;
        for (int stock = 0; stock < instance.stocks(); stock++) {
            Filling filling = new Filling(instance.sizes, instance.wanted, prices, instance.capacities[stock]);
            int[] counts = filling.best();
            if (!filling.complete()) {
                return new Pricing(false, false, 0);
            }
            double reduced = instance.costs[stock] - rents[stock] - filling.bestValue();
            double scale = Math.max(1, instance.costs[stock]);
            if (reduced < -EQUAL * scale && add(new Column(stock, counts))) {
                better = true;
            } else {
                slip += Math.min(0, reduced) * mostBars(stock);
            }
        }
        return new Pricing(true, better, slip);
    }

    private double mostBars(int stock) {
        long pieces = 0;
        for (int wanted : instance.wanted) {
            pieces += wanted;
        }
        return Math.min(pieces, instance.available[stock]);
    }

    private double dualValue() {
        double sum = 0;
        for (int i = 0; i < prices.length; i++) {
            sum += prices[i] * instance.wanted[i];
        }
        for (int k = 0; k < rents.length; k++) {
            sum += rents[k] == 0 ? 0 : rents[k] * instance.available[k];
        }
        return sum;
    }

    private static double[] values(MPConstraint[] constraints) {
        double[] values = new double[constraints.length];
        for (int i = 0; i < values.length; i++) {
            // prices are 0 or more, rents 0 or less; what is nearly 0 is 0
            double value = constraints[i].dualValue();
            values[i] = Math.abs(value) < 1e-12 ? 0 : value;
        }
        return values;
    }

    /** Every pattern that a plan of at most this cost can use; empty when they are too many. */
    Optional<List<Column>> within(long cost, int allowed) {
        List<Column> found = new ArrayList<>();
        for (int stock = 0; stock < instance.stocks(); stock++) {
            double gap = cost - bound + EQUAL * Math.max(1, cost);
            double least = instance.costs[stock] - rents[stock] - gap;
            Filling filling = new Filling(instance.sizes, instance.wanted, prices, instance.capacities[stock]);
            Optional<List<int[]>> fillings = filling.worth(least, allowed - found.size());
            if (fillings.isEmpty()) {
                return Optional.empty();
            }
            for (int[] counts : fillings.get()) {
                found.add(new Column(stock, counts));
            }
        }
        return Optional.of(found);
    }

    void close() {
        solver.delete();
    }
}
