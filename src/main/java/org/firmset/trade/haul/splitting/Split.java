package org.firmset.trade.haul.splitting;

import java.util.List;

/**
 * Cargo over runs of a rig.
 *
 * @param runs in the order in which they are made: what is needed first comes with the first ones
 * @param least no split has fewer runs
 * @param unfit what no run can carry; all else is in the runs
 * @param withSolver whether the solver could be asked; false where its library is not there or not wanted, and then
 *     {@code least} is from the simple bounds
 */
public record Split(List<RunLoad> runs, int least, List<Unfit> unfit, boolean withSolver) {
    public Split {
        runs = List.copyOf(runs);
        unfit = List.copyOf(unfit);
    }

    /** Whether no split has fewer runs than this one. */
    public boolean proven() {
        return runs.size() == least;
    }
}
