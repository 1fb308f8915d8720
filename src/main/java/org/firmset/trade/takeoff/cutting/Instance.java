package org.firmset.trade.takeoff.cutting;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A cutting problem as arrays, pieces from the longest to the shortest. Each piece takes its cut with it, and so the stock
 * has one cut more to give: a bar that is used up to its end needs no last cut.
 */
final class Instance {
    final int[] order;
    final long[] sizes;
    final int[] wanted;
    final long[] capacities;
    final long[] costs;
    final int[] available;

    Instance(List<Stock> stocks, List<Demand> demands, long kerf) {
        order = IntStream.range(0, demands.size())
                .boxed()
                .sorted(Comparator.comparingLong((Integer i) -> demands.get(i).length())
                        .reversed())
                .mapToInt(i -> i)
                .toArray();
        sizes = new long[order.length];
        wanted = new int[order.length];
        for (int i = 0; i < order.length; i++) {
            sizes[i] = demands.get(order[i]).length() + kerf;
            wanted[i] = demands.get(order[i]).count();
        }
        capacities = stocks.stream().mapToLong(s -> s.length() + kerf).toArray();
        costs = stocks.stream().mapToLong(Stock::cost).toArray();
        available = stocks.stream().mapToInt(Stock::available).toArray();
    }

    private Instance(Instance of, int[] wanted, long[] capacities, long[] costs, int[] available) {
        order = of.order;
        sizes = of.sizes;
        this.wanted = wanted;
        this.capacities = capacities;
        this.costs = costs;
        this.available = available;
    }

    /** What is still to do. */
    Instance with(int[] stillWanted, int[] stillAvailable) {
        return new Instance(this, stillWanted.clone(), capacities, costs, stillAvailable.clone());
    }

    /** The same with stock lent as a last one, as long as the longest piece: what is there is free, each one lent costs 1. */
    Instance withStockLent() {
        int lent = stocks();
        long[] longer = Arrays.copyOf(capacities, lent + 1);
        longer[lent] = sizes[0];
        long[] free = new long[lent + 1];
        free[lent] = 1;
        int[] more = Arrays.copyOf(available, lent + 1);
        more[lent] = Stock.UNLIMITED;
        return new Instance(this, wanted, longer, free, more);
    }

    /** More than any plan costs that has no needless bar. */
    long moreThanAny() {
        long pieces = Arrays.stream(wanted).sum();
        return pieces * Arrays.stream(costs).max().orElseThrow() + step();
    }

    int kinds() {
        return sizes.length;
    }

    int stocks() {
        return capacities.length;
    }

    long taken(int[] counts) {
        long sum = 0;
        for (int i = 0; i < counts.length; i++) {
            sum += counts[i] * sizes[i];
        }
        return sum;
    }

    /** What all costs are multiples of; 1 when nothing costs anything. */
    long step() {
        long step = 0;
        for (long cost : costs) {
            step = gcd(step, cost);
        }
        return Math.max(1, step);
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /** A cost that a plan can have and that is not less than this. */
    long roundedUp(double cost) {
        long step = step();
        return (long) Math.ceil(cost / step - 1e-7) * step;
    }
}
