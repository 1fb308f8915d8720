package org.firmset.plan.search;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * What the search varies: which stage goes first, which trips are not made, how far materials come ahead.
 *
 * @param priority for each stage; the highest among those that can go next is placed first
 * @param closedTrip trips on which nothing is done
 * @param leastFinish for each stage the epoch day before which it does not finish; raised by the builder where a longest
 *     wait asks for it, and handed on so that the next plan need not learn it again
 * @param lavish whether a limit to what is spent that need not be kept is left aside from the first
 * @param guide what to try first; null for nothing
 */
record Genes(
        double[] priority,
        boolean[] closedTrip,
        Fetching fetching,
        int[] leastFinish,
        boolean lavish,
        @Nullable Guide guide) {
    static final int NO_LEAST = Integer.MIN_VALUE;

    static Genes of(double[] priority, int tripCount, Fetching fetching) {
        int[] leastFinish = new int[priority.length];
        Arrays.fill(leastFinish, NO_LEAST);
        return new Genes(priority.clone(), new boolean[tripCount], fetching, leastFinish, false, null);
    }

    Genes copy() {
        return with(fetching, lavish, guide);
    }

    Genes with(Fetching other) {
        return with(other, lavish, guide);
    }

    Genes lavish(boolean isLavish) {
        return with(fetching, isLavish, guide);
    }

    /** The same, but what the guide suggests is tried first. */
    Genes guidedBy(Guide other) {
        return with(fetching, lavish, other);
    }

    private Genes with(Fetching newFetching, boolean isLavish, @Nullable Guide newGuide) {
        return new Genes(priority.clone(), closedTrip.clone(), newFetching, leastFinish.clone(), isLavish, newGuide);
    }
}
