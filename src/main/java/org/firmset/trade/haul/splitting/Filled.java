package org.firmset.trade.haul.splitting;

import java.util.List;

/**
 * What goes into a given number of runs when not all may go.
 *
 * @param runs at most as many as are allowed
 * @param left what has to stay, by line, though a run could carry it
 * @param unfit what no run can carry
 */
public record Filled(List<RunLoad> runs, List<Cargo> left, List<Unfit> unfit) {
    public Filled {
        runs = List.copyOf(runs);
        left = List.copyOf(left);
        unfit = List.copyOf(unfit);
    }
}
