package org.firmset.plan.search;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a solution of the relaxed problem suggests to the builder.
 *
 * @param blocks for each stage the blocks to try before its earliest place is looked for; null for none
 * @param closedTrip trips that the solution leaves out
 */
record Guide(@Nullable List<Block>[] blocks, boolean[] closedTrip, Loads loads) {

    /**
     * How much comes when.
     *
     * @param groupOf for each material the group it is counted with; {@link #NO_GROUP} when nothing needs it
     * @param own for each group and trip the grams that the trip's own runs bring
     * @param extraRuns for each trip how many extra runs it makes
     * @param delivered for each group the grams that come, by offer and site day
     */
    record Loads(int[] groupOf, long[][] own, int[] extraRuns, long[][][] delivered) {
        static final int NO_GROUP = -1;
    }
}
