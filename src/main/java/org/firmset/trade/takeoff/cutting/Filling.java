package org.firmset.trade.takeoff.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Fillings of one bar: the most valuable one, or all that are worth enough. Branch and bound on the most valuable pieces
 * for their length; the bound fills what is left with the best piece that may still be taken.
 */
final class Filling {
    private static final long MOST_NODES = 300_000;
    private static final double EQUAL = 1e-9;

    private final long[] sizes;
    private final int[] most;
    private final double[] values;
    private final long capacity;
    private final int[] order;
    private final int[] counts;

    private int[] bestCounts;
    private double bestValue;
    private long nodes;

    /** @param most how many of each piece; @param values 0 or more */
    Filling(long[] sizes, int[] most, double[] values, long capacity) {
        this.sizes = sizes;
        this.most = most;
        this.values = values;
        this.capacity = capacity;
        order = IntStream.range(0, sizes.length)
                .filter(i -> most[i] > 0 && sizes[i] <= capacity)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> -values[i] / sizes[i])
                        .thenComparingInt(i -> i))
                .mapToInt(i -> i)
                .toArray();
        counts = new int[sizes.length];
        bestCounts = new int[sizes.length];
    }

    /** The most valuable filling found; the most valuable of all when {@link #complete()}. */
    int[] best() {
        search(0, capacity, 0);
        return bestCounts;
    }

    double bestValue() {
        return bestValue;
    }

    /** Whether the search was not cut short. */
    boolean complete() {
        return nodes < MOST_NODES;
    }

    private void search(int depth, long left, double value) {
        if (nodes++ >= MOST_NODES) {
            return;
        }
        if (value > bestValue + EQUAL) {
            bestValue = value;
            bestCounts = counts.clone();
        }
        if (depth == order.length) {
            return;
        }
        int piece = order[depth];
        if (value + left * (values[piece] / sizes[piece]) <= bestValue + EQUAL) {
            return;
        }
        int fits = (int) Math.min(most[piece], left / sizes[piece]);
        for (int n = fits; n >= 0; n--) {
            counts[piece] = n;
            search(depth + 1, left - n * sizes[piece], value + n * values[piece]);
        }
        counts[piece] = 0;
    }

    /** All fillings worth at least so much into which no further piece fits; empty when there are more than allowed. */
    Optional<List<int[]>> worth(double least, int allowed) {
        List<int[]> found = new ArrayList<>();
        boolean whole = gather(0, capacity, 0, least, allowed, found);
        return whole ? Optional.of(found) : Optional.empty();
    }

    private boolean gather(int depth, long left, double value, double least, int allowed, List<int[]> found) {
        if (nodes++ >= MOST_NODES * 4) {
            return false;
        }
        if (depth == order.length) {
            if (value >= least && isFull(left)) {
                found.add(counts.clone());
            }
            return found.size() <= allowed;
        }
        int piece = order[depth];
        if (value + left * (values[piece] / sizes[piece]) < least) {
            return true;
        }
        int fits = (int) Math.min(most[piece], left / sizes[piece]);
        boolean whole = true;
        for (int n = fits; n >= 0 && whole; n--) {
            counts[piece] = n;
            whole = gather(depth + 1, left - n * sizes[piece], value + n * values[piece], least, allowed, found);
        }
        counts[piece] = 0;
        return whole;
    }

    private boolean isFull(long left) {
        for (int piece : order) {
            if (counts[piece] < most[piece] && sizes[piece] <= left) {
                return false;
            }
        }
        return true;
    }
}
