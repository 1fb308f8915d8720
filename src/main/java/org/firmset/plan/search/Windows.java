package org.firmset.plan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import org.firmset.plan.Layout;

/**
 * The earliest and latest each stage could lie if it had every site day to itself: waits, seasons, crews, pins and the
 * hours of single days are kept, sharing is not. No plan can be earlier than this.
 */
final class Windows {
    static final int NONE = Integer.MAX_VALUE;
    /** Of a subproject: all its stages are finished. */
    static final int NOTHING_LEFT = -1;

    private final Model model;
    private final int[] earliestFinishDay;
    private final int[] earliestEpoch;
    private final int[] latestStartDay;
    private final int[] latestFinishDay;
    private final int[] lastDayOfLane;
    private final List<Integer> order = new ArrayList<>();

    Windows(Model model) {
        this(model, lastDay(model));
    }

    private static int[] lastDay(Model model) {
        int[] last = new int[model.laneIndex.size()];
        Arrays.fill(last, model.dayCount() - 1);
        return last;
    }

    /** @param lastDayOfLane for each subproject the last site day on which it may be finished */
    Windows(Model model, int[] lastDayOfLane) {
        this.model = model;
        this.lastDayOfLane = lastDayOfLane.clone();
        earliestFinishDay = new int[model.stageCount];
        earliestEpoch = new int[model.stageCount];
        orderStages();
        for (int s : order) {
            earliestEpoch[s] = firstEpoch(s);
            earliestFinishDay[s] = model.stage(s).finished() ? -1 : earliestFinish(s);
        }
        latestStartDay = new int[model.stageCount];
        latestFinishDay = new int[model.stageCount];
        for (int s : order.reversed()) {
            latestFinishDay[s] = latestFinish(s);
            latestStartDay[s] = latestStart(s, latestFinishDay[s]);
        }
    }

    /** Number of the last site day on which a stage can finish so that all behind it still can; -1 when there is none. */
    int latestFinishDay(int s) {
        return latestFinishDay[s];
    }

    /** The earliest site day on which a subproject could be finished; {@link #NOTHING_LEFT} when it is. */
    int earliestFinishOfLane(int lane) {
        int latest = NOTHING_LEFT;
        for (int s = 0; s < model.stageCount; s++) {
            if (model.laneOf[s] == lane && !model.stage(s).finished()) {
                latest = Math.max(latest, earliestFinishDay[s]);
            }
        }
        return latest;
    }

    /** Stages of some subprojects, and before those that are left all that must come first. */
    boolean[] andAllBefore(IntPredicate lanes) {
        boolean[] wanted = new boolean[model.stageCount];
        for (int s : order.reversed()) {
            wanted[s] |= lanes.test(model.laneOf[s]);
            if (wanted[s] && !model.stage(s).finished()) {
                model.before.get(s).forEach(link -> wanted[link.from] = true);
            }
        }
        return wanted;
    }

    /** The last site day on which a subproject may be finished. */
    int latestFinishOfLane(int lane) {
        return lastDayOfLane[lane];
    }

    /** Whether some stage has no place left. */
    boolean areEmpty() {
        for (int s = 0; s < model.stageCount; s++) {
            boolean open = !model.stage(s).finished();
            if (open && (earliestFinishDay[s] == NONE || earliestFinishDay[s] > latestFinishDay[s])) {
                return true;
            }
        }
        return false;
    }

    /** Number of the last site day on which a stage can start so that all behind it still can; -1 when there is none. */
    int latestStartDay(int s) {
        return latestStartDay[s];
    }

    private int latestFinish(int s) {
        int latest = lastDayOfLane[model.laneOf[s]];
        for (Link link : model.after.get(s)) {
            if (!link.fromIsDone() && !model.stage(link.to).finished()) {
                int start = latestStartDay[link.to];
                while (latest >= 0 && (start < 0 || link.readyEpoch(latest) > model.dayEpoch[start])) {
                    latest--;
                }
            }
        }
        return latest;
    }

    private int latestStart(int s, int finish) {
        int least = model.stage(s).layout() == Layout.IN_ONE_GO ? model.stage(s).labourQuarters() : 1;
        int left = model.stage(s).labourQuarters();
        for (int d = finish; d >= 0; d--) {
            int takes = takes(s, d);
            left -= takes >= least ? takes : 0;
            if (left <= 0) {
                return d;
            }
        }
        return -1;
    }

    /** Stages, each after all stages before it; those on a circle are left out. */
    List<Integer> order() {
        return order;
    }

    private void orderStages() {
        int[] open = new int[model.stageCount];
        for (int s = 0; s < model.stageCount; s++) {
            open[s] = model.before.get(s).size();
            if (open[s] == 0) {
                order.add(s);
            }
        }
        for (int i = 0; i < order.size(); i++) {
            for (Link link : model.after.get(order.get(i))) {
                if (--open[link.to] == 0) {
                    order.add(link.to);
                }
            }
        }
    }

    /** Number of the earliest site day on which a stage could finish; {@link #NONE} when there is none. */
    int earliestFinishDay(int s) {
        return earliestFinishDay[s];
    }

    /** The earliest date on which a stage could start; {@link #NONE} when a stage before it has no place. */
    int earliestEpoch(int s) {
        return earliestEpoch[s];
    }

    private int firstEpoch(int s) {
        int from = model.statusEpoch;
        for (Link link : model.before.get(s)) {
            if (link.fromIsDone()) {
                from = Math.max(from, link.readyEpoch(0));
            } else if (earliestFinishDay[link.from] == NONE) {
                return NONE;
            } else {
                from = Math.max(from, soonestReady(link, earliestFinishDay[link.from]));
            }
        }
        return from;
    }

    /** A later finish may be ready sooner, when the days get warmer. */
    private int soonestReady(Link link, int finishDay) {
        int soonest = link.readyEpoch(finishDay);
        for (int d = finishDay + 1; d < model.dayCount() && model.dayEpoch[d] < soonest; d++) {
            soonest = Math.min(soonest, link.readyEpoch(d));
        }
        return soonest;
    }

    private int earliestFinish(int s) {
        int from = earliestEpoch(s);
        return from == NONE ? NONE : finishAlone(s, model.dayFrom(from));
    }

    /** Whether the stage after can start before the longest wait is over, for some finish of the stage before. */
    boolean canStartInTime(Link link) {
        int earliest = earliestEpoch(link.to);
        if (link.fromIsDone()) {
            return startsWithin(link.to, earliest, link.latestEpoch(0));
        }
        for (int d = earliestFinishDay[link.from]; d < model.dayCount(); d++) {
            int from = Math.max(earliest, link.readyEpoch(d));
            if (startsWithin(link.to, from, link.latestEpoch(model.dayEpoch[d]))) {
                return true;
            }
        }
        return false;
    }

    private boolean startsWithin(int s, int fromEpoch, int untilEpoch) {
        for (int d = model.dayFrom(fromEpoch); d < model.dayCount() && model.dayEpoch[d] <= untilEpoch; d++) {
            if (takes(s, d) > 0) {
                return true;
            }
        }
        return false;
    }

    /** When a stage would finish that starts on or after a site day and has all days to itself. */
    int finishAlone(int s, int fromDay) {
        for (int start = fromDay; start < model.dayCount(); start++) {
            if (takes(s, start) > 0) {
                int finish = finishFrom(s, start);
                if (finish != NONE) {
                    return finish;
                }
            }
        }
        return NONE;
    }

    private int finishFrom(int s, int start) {
        var stage = model.stage(s);
        int left = stage.labourQuarters();
        for (int d = start; d < model.dayCount(); d++) {
            int takes = takes(s, d);
            switch (stage.layout()) {
                case IN_ONE_GO -> {
                    return takes >= left ? d : NONE;
                }
                case UNBROKEN_DAYS -> {
                    boolean broken = takes == 0 || (d > start && model.dayEpoch[d] != model.dayEpoch[d - 1] + 1);
                    if (broken) {
                        return NONE;
                    }
                    left -= takes;
                }
                case SPLITTABLE -> left -= takes;
            }
            if (left <= 0) {
                return d;
            }
        }
        return NONE;
    }

    /** The most a stage can take of a day that it has to itself. */
    int takes(int s, int d) {
        var stage = model.stage(s);
        int most = Math.min(stage.mostBlockQuarters(), model.days.get(d).labourQuarters());
        return model.allowed[s][d] && most >= stage.effectiveLeastBlock() ? most : 0;
    }
}
