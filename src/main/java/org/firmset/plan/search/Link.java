package org.firmset.plan.search;

import org.firmset.plan.LeastWait;
import org.firmset.plan.Stage;
import org.firmset.plan.Wait;

/** A wait by number, its least days looked up once for every site day where they depend on the date. */
final class Link {
    /** In place of a date: after every date there is. One less than {@link Windows#NONE}, which says something else. */
    static final int NEVER = Integer.MAX_VALUE - 1;

    final int wait;
    final int from;
    final int to;
    final Wait source;
    private final Model model;
    private final int[] readyEpoch;
    private final int fixedDays;
    private final boolean done;
    private final int readyAfterDone;
    private final int doneEpoch;

    Link(int wait, Wait source, Model model) {
        this.wait = wait;
        this.source = source;
        this.model = model;
        from = model.stageIndex.of(source.from());
        to = model.stageIndex.of(source.to());
        Stage before = model.stage(from);
        done = before.finishedOn() != null;
        doneEpoch = before.finishedOn() == null ? -1 : Model.epoch(before.finishedOn());
        readyAfterDone = done ? ready(doneEpoch, source.least()) : -1;
        fixedDays = source.least() instanceof LeastWait.Days fixed ? fixed.days() : -1;
        readyEpoch = new int[done || fixedDays >= 0 ? 0 : model.dayCount()];
        for (int d = 0; d < readyEpoch.length; d++) {
            readyEpoch[d] = ready(model.dayEpoch[d], source.least());
        }
    }

    /** A finish that the table of waits says nothing of is followed by no start. */
    private static int ready(int finishEpoch, LeastWait least) {
        return switch (least) {
            case LeastWait.Days fixed -> later(finishEpoch, fixed.days());
            case LeastWait.ByFinishDate table -> {
                long row = finishEpoch - table.first().toEpochDay();
                boolean known = row >= 0 && row < table.days().size();
                yield known ? later(finishEpoch, table.days().get((int) row)) : NEVER;
            }
        };
    }

    private static int later(int epoch, int days) {
        return (int) Math.min((long) epoch + days, NEVER);
    }

    /** When the stage after may start, if the stage before finishes on this site day, or has been finished long since. */
    int readyEpoch(int finishDay) {
        if (done) {
            return readyAfterDone;
        }
        return fixedDays >= 0 ? later(model.dayEpoch[finishDay], fixedDays) : readyEpoch[finishDay];
    }

    /** The last date on which the stage after may start. */
    int latestEpoch(int finishEpoch) {
        long latest = (long) (done ? doneEpoch : finishEpoch) + source.mostDays();
        return (int) Math.min(latest, Integer.MAX_VALUE);
    }

    boolean fromIsDone() {
        return done;
    }

    /** Whether it takes the same days whenever the stage before finishes. */
    boolean isFixed() {
        return fixedDays >= 0;
    }

    int fixedDays() {
        return fixedDays;
    }

    boolean hasMost() {
        return source.hasMost();
    }
}
