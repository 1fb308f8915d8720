package org.firmset.trade.takeoff.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Plans in no time: longest piece first, into the fullest bar it fits, or each bar filled as well as it can be. */
final class FirstPlans {
    private final Instance instance;

    private FirstPlans(Instance instance) {
        this.instance = instance;
    }

    /** The cheapest of several simple plans, one column for each bar; empty when none was found. */
    static List<Column> best(Instance instance) {
        FirstPlans plans = new FirstPlans(instance);
        List<List<Column>> found = new ArrayList<>();
        for (int stock = 0; stock < instance.stocks(); stock++) {
            found.add(plans.longestFirst(stock));
        }
        found.add(plans.wellFilled());
        return found.stream()
                .filter(plan -> !plan.isEmpty())
                .min((a, b) -> Long.compare(cost(instance, a), cost(instance, b)))
                .orElse(List.of());
    }

    static long cost(Instance instance, List<Column> plan) {
        return plan.stream().mapToLong(c -> instance.costs[c.stock()]).sum();
    }

    /** Opens a bar of the preferred stock when no open one fits, another stock when that is used up or too short. */
    private List<Column> longestFirst(int preferred) {
        List<Column> bars = new ArrayList<>();
        List<Long> left = new ArrayList<>();
        int[] used = new int[instance.stocks()];
        for (int i = 0; i < instance.kinds(); i++) {
            for (int n = 0; n < instance.wanted[i]; n++) {
                int bar = fullestThatFits(left, instance.sizes[i]);
                if (bar < 0) {
                    int stock = stockFor(instance.sizes[i], preferred, used);
                    if (stock < 0) {
                        return List.of();
                    }
                    used[stock]++;
                    bars.add(new Column(stock, new int[instance.kinds()]));
                    left.add(instance.capacities[stock]);
                    bar = bars.size() - 1;
                }
                bars.get(bar).counts()[i]++;
                left.set(bar, left.get(bar) - instance.sizes[i]);
            }
        }
        return bars;
    }

    private static int fullestThatFits(List<Long> left, long size) {
        int best = -1;
        for (int bar = 0; bar < left.size(); bar++) {
            boolean fits = left.get(bar) >= size;
            if (fits && (best < 0 || left.get(bar) < left.get(best))) {
                best = bar;
            }
        }
        return best;
    }

    private int stockFor(long size, int preferred, int[] used) {
        if (instance.capacities[preferred] >= size && used[preferred] < instance.available[preferred]) {
            return preferred;
        }
        int best = -1;
        for (int stock = 0; stock < instance.stocks(); stock++) {
            boolean fits = instance.capacities[stock] >= size && used[stock] < instance.available[stock];
            if (fits && (best < 0 || instance.costs[stock] < instance.costs[best])) {
                best = stock;
            }
        }
        return best;
    }

    /** Takes again and again the stock and filling with the least cost for its length of pieces. */
    private List<Column> wellFilled() {
        int[] open = instance.wanted.clone();
        int[] used = new int[instance.stocks()];
        List<Column> bars = new ArrayList<>();
        while (Arrays.stream(open).anyMatch(n -> n > 0)) {
            Column best = bestFilled(open, used);
            if (best == null) {
                return List.of();
            }
            used[best.stock()]++;
            for (int i = 0; i < open.length; i++) {
                open[i] -= best.counts()[i];
            }
            bars.add(best);
        }
        return bars;
    }

    private @Nullable Column bestFilled(int[] open, int[] used) {
        double[] values = new double[open.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = instance.sizes[i];
        }
        Column best = null;
        double bestRate = Double.POSITIVE_INFINITY;
        for (int stock = 0; stock < instance.stocks(); stock++) {
            if (used[stock] >= instance.available[stock]) {
                continue;
            }
            Filling filling = new Filling(instance.sizes, open, values, instance.capacities[stock]);
            int[] counts = filling.best();
            long taken = instance.taken(counts);
            double rate = taken == 0 ? Double.POSITIVE_INFINITY : (double) instance.costs[stock] / taken;
            if (rate < bestRate) {
                best = new Column(stock, counts);
                bestRate = rate;
            }
        }
        return best;
    }
}
