package org.firmset.trade.takeoff.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Cuts wanted pieces from stock at the least cost, with a bound that no plan can beat. Simple plans first; where these do
 * not reach the bound, columns made as needed (Gilmore and Gomory 1961) give a sharper bound and a plan made whole step by
 * step; where a gap is left, CP-SAT chooses among all patterns that a better plan could use. The same input gives the same plan on every machine. Thread-safe.
 */
public final class CuttingStock {
    private static final int MOST_COLUMNS = 60_000;

    private CuttingStock() {}

    /**
     * The cheapest plan found.
     *
     * @param kerf width of a cut in whole units, 0 or more
     * @return empty when the pieces cannot all be cut: one is longer than all stock, or limited stock runs out; also when
     *     the one way that limited stock leaves was not found
     */
    public static Optional<CutPlan> plan(List<Stock> stocks, List<Demand> demands, long kerf) {
        if (kerf < 0 || stocks.isEmpty() || demands.isEmpty()) {
            throw new IllegalArgumentException("kerf [" + kerf + "] must be 0 or more, stocks [" + stocks.size()
                    + "] and demands [" + demands.size() + "] at least one");
        }
        Instance instance = new Instance(stocks, demands, kerf);
        List<Column> plan = FirstPlans.best(instance);
        long bound = simpleBound(instance);
        boolean enough = !plan.isEmpty() && FirstPlans.cost(instance, plan) == bound;
        if (enough || !SolverLibrary.isThere() || !fitsAtAll(instance)) {
            return plan.isEmpty() ? Optional.empty() : Optional.of(told(instance, plan, bound, false));
        }
        return improved(instance, plan, bound);
    }

    private static boolean fitsAtAll(Instance instance) {
        for (long size : instance.sizes) {
            boolean fits = false;
            for (long capacity : instance.capacities) {
                fits |= size <= capacity;
            }
            if (!fits) {
                return false;
            }
        }
        return true;
    }

    /** Every bit of length at the cheapest rate, limited stock taken for unlimited. */
    private static long simpleBound(Instance instance) {
        double cheapest = Double.POSITIVE_INFINITY;
        for (int k = 0; k < instance.stocks(); k++) {
            cheapest = Math.min(cheapest, (double) instance.costs[k] / instance.capacities[k]);
        }
        return instance.roundedUp(cheapest * instance.taken(instance.wanted));
    }

    private static Optional<CutPlan> improved(Instance instance, List<Column> first, long simple) {
        List<Column> start = first.isEmpty() ? withinStock(instance) : first;
        Optional<Relaxation> solved = start.isEmpty() ? Optional.empty() : Relaxation.solve(instance, start);
        if (solved.isEmpty()) {
            return first.isEmpty() ? Optional.empty() : Optional.of(told(instance, first, simple, true));
        }
        Relaxation relaxation = solved.get();
        try {
            return wholeBars(instance, first, Math.max(simple, instance.roundedUp(relaxation.bound())), relaxation);
        } finally {
            relaxation.close();
        }
    }

    /**
     * Patterns that make everything out of the stock that is there, fractions allowed, where no simple plan came out: first
     * stock is lent, and then as little as can be. Empty when some is needed for good.
     */
    private static List<Column> withinStock(Instance instance) {
        int lent = instance.stocks();
        List<Column> alone = new ArrayList<>();
        for (int i = 0; i < instance.kinds(); i++) {
            int[] counts = new int[instance.kinds()];
            counts[i] = 1;
            alone.add(new Column(lent, counts));
        }
        Optional<Relaxation> solved = Relaxation.solve(instance.withStockLent(), alone);
        if (solved.isEmpty()) {
            return List.of();
        }
        Relaxation relaxation = solved.get();
        try {
            double needed = relaxation.uses().entrySet().stream()
                    .filter(use -> use.getKey().stock() == lent)
                    .mapToDouble(Map.Entry::getValue)
                    .sum();
            return needed > 1e-6
                    ? List.of()
                    : relaxation.columns().stream()
                            .filter(c -> c.stock() != lent)
                            .toList();
        } finally {
            relaxation.close();
        }
    }

    private static Optional<CutPlan> wholeBars(
            Instance instance, List<Column> first, long bound, Relaxation relaxation) {
        Dive.Result dive = Dive.from(instance, relaxation);
        List<Column> plan = cheaper(instance, first, dive.plan());
        long proven = bound;
        if (costOrMore(instance, plan) > bound) {
            plan = cheaper(
                    instance,
                    plan,
                    WholeBars.search(instance, dive.seen(), costOrMore(instance, plan))
                            .plan());
            long cost = costOrMore(instance, plan);
            Optional<List<Column>> all =
                    cost > bound ? relaxation.within(cost - instance.step(), MOST_COLUMNS) : Optional.empty();
            if (all.isPresent()) {
                WholeBars.Result whole = WholeBars.search(instance, all.get(), cost);
                plan = cheaper(instance, plan, whole.plan());
                proven = whole.best() ? FirstPlans.cost(instance, plan) : bound;
            }
        }
        return plan.isEmpty() ? Optional.empty() : Optional.of(told(instance, plan, proven, true));
    }

    /** The cost of a plan; of none more than any can have. */
    private static long costOrMore(Instance instance, List<Column> plan) {
        return plan.isEmpty() ? instance.moreThanAny() : FirstPlans.cost(instance, plan);
    }

    private static List<Column> cheaper(Instance instance, List<Column> one, List<Column> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.isEmpty() ? other : one;
        }
        return FirstPlans.cost(instance, other) < FirstPlans.cost(instance, one) ? other : one;
    }

    /** Patterns may make more than is wanted: what is too much is not cut. */
    private static CutPlan told(Instance instance, List<Column> plan, long bound, boolean solved) {
        int[] open = instance.wanted.clone();
        Map<Pattern, Integer> uses = new LinkedHashMap<>();
        long cost = 0;
        for (Column column : plan) {
            Integer[] pieces = new Integer[instance.kinds()];
            boolean any = false;
            for (int i = 0; i < pieces.length; i++) {
                int cut = Math.min(open[i], column.counts()[i]);
                open[i] -= cut;
                pieces[instance.order[i]] = cut;
                any |= cut > 0;
            }
            if (any) {
                uses.merge(new Pattern(column.stock(), List.of(pieces)), 1, Integer::sum);
                cost += instance.costs[column.stock()];
            }
        }
        return new CutPlan(uses, cost, Math.min(bound, cost), solved);
    }
}
