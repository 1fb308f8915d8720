package org.firmset.plan.search;

import org.firmset.plan.LeastWait;
import org.firmset.plan.Stage;
import org.firmset.plan.Wait;

/** A wait by number, its least days looked up once for every site day. */
final class Link {
    final int wait;
    final int from;
    final int to;
    final Wait source;
    private final int[] readyEpoch;
    private final int readyAfterDone;
    private final int doneEpoch;

    Link(int wait, Wait source, Model model) {
        this.wait = wait;
        this.source = source;
        from = model.stageIndex.of(source.from());
        to = model.stageIndex.of(source.to());
        Stage before = model.stage(from);
        LeastWait least = source.least();
        if (before.finishedOn() != null) {
            doneEpoch = Model.epoch(before.finishedOn());
            readyAfterDone = doneEpoch + least.daysAfter(before.finishedOn());
            readyEpoch = new int[0];
        } else {
            doneEpoch = -1;
            readyAfterDone = -1;
            readyEpoch = new int[model.dayCount()];
            for (int d = 0; d < readyEpoch.length; d++) {
                readyEpoch[d] =
                        model.dayEpoch[d] + least.daysAfter(model.days.get(d).date());
            }
        }
    }

    /** When the stage after may start, if the stage before finishes on this site day, or has been finished long since. */
    int readyEpoch(int finishDay) {
        return readyEpoch.length == 0 ? readyAfterDone : readyEpoch[finishDay];
    }

    /** The last date on which the stage after may start. */
    int latestEpoch(int finishEpoch) {
        long latest = (long) (readyEpoch.length == 0 ? doneEpoch : finishEpoch) + source.mostDays();
        return (int) Math.min(latest, Integer.MAX_VALUE);
    }

    boolean fromIsDone() {
        return readyEpoch.length == 0;
    }

    boolean hasMost() {
        return source.hasMost();
    }
}
