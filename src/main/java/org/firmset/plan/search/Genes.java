package org.firmset.plan.search;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the search varies: which stage goes first, which trips are not made, how far materials come ahead.
 *
 * @param priority for each stage; the highest among those that can go next is placed first
 * @param closedTrip trips on which nothing is done
 * @param leastFinish for each stage the epoch day before which it does not finish; raised by the builder where a longest
 *     wait asks for it, and handed on so that the next plan need not learn it again
 * @param given for each stage the blocks to try before the earliest place is looked for; null for none
 */
record Genes(
        double[] priority,
        boolean[] closedTrip,
        Fetching fetching,
        int[] leastFinish,
        @Nullable List<Block> @Nullable [] given) {
    static final int NO_LEAST = Integer.MIN_VALUE;

    static Genes of(double[] priority, int tripCount, Fetching fetching) {
        int[] leastFinish = new int[priority.length];
        Arrays.fill(leastFinish, NO_LEAST);
        return new Genes(priority.clone(), new boolean[tripCount], fetching, leastFinish, null);
    }

    Genes copy() {
        return with(fetching);
    }

    Genes with(Fetching other) {
        return new Genes(
                priority.clone(), closedTrip.clone(), other, leastFinish.clone(), given == null ? null : given.clone());
    }

    /** The same, but these blocks are tried first. */
    Genes trying(@Nullable List<Block>[] blocks) {
        return new Genes(priority.clone(), closedTrip.clone(), fetching, leastFinish.clone(), blocks);
    }

    /** The same, but every stage goes to its earliest place. */
    Genes free() {
        return new Genes(priority.clone(), closedTrip.clone(), fetching, leastFinish.clone(), null);
    }
}
