package org.firmset.plan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntBinaryOperator;
import java.util.function.IntPredicate;
import org.firmset.plan.Layout;
import org.jspecify.annotations.Nullable;

/**
 * The earliest and latest each stage could lie if it had every site day to itself: waits, seasons, crews, pins and the
 * hours of single days are kept, sharing is not, unless {@link #sharing()} asks for it along chains. No plan can be
 * earlier than this.
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
    private final List<Integer> order;
    private final @Nullable SharedHours shared;

    /** Without sharing of hours. */
    Windows(Model model) {
        this.model = model;
        order = inOrder(model);
        shared = null;
        earliestFinishDay = new int[model.stageCount];
        earliestEpoch = new int[model.stageCount];
        lastDayOfLane = lastDay(model);
        latestStartDay = new int[model.stageCount];
        latestFinishDay = new int[model.stageCount];
        forward();
        backward();
    }

    private Windows(Windows from, @Nullable SharedHours shared, boolean earliestIsKnown, int[] lastDayOfLane) {
        this.model = from.model;
        this.order = from.order;
        this.shared = shared;
        this.lastDayOfLane = lastDayOfLane.clone();
        earliestFinishDay = earliestIsKnown ? from.earliestFinishDay : new int[model.stageCount];
        earliestEpoch = earliestIsKnown ? from.earliestEpoch : new int[model.stageCount];
        latestStartDay = new int[model.stageCount];
        latestFinishDay = new int[model.stageCount];
        if (!earliestIsKnown) {
            forward();
        }
        backward();
    }

    /** The same, where what must come before a stage or after it takes hours as well. */
    Windows sharing() {
        return new Windows(this, new SharedHours(model, order), false, lastDayOfLane);
    }

    /** @param lastDays for each subproject the last site day on which it may be finished */
    Windows until(int[] lastDays) {
        return new Windows(this, shared, true, lastDays);
    }

    private static int[] lastDay(Model model) {
        int[] last = new int[model.laneIndex.size()];
        Arrays.fill(last, model.dayCount() - 1);
        return last;
    }

    private void forward() {
        int[] firstDay = new int[model.stageCount];
        int[] taken = new int[model.stageCount];
        for (int s : order) {
            earliestEpoch[s] = firstEpoch(s);
            int from = earliestEpoch[s] == NONE ? model.dayCount() : model.dayFrom(earliestEpoch[s]);
            SharedHours hours = model.stage(s).finished() || from == model.dayCount() ? null : shared;
            if (hours != null) {
                from = Math.max(from, hours.earliest(s, firstDay, 0));
                earliestEpoch[s] = from < model.dayCount() ? Math.max(earliestEpoch[s], model.dayEpoch[from]) : NONE;
            }
            firstDay[s] = Math.min(from, model.dayCount() - 1);
            earliestFinishDay[s] = model.stage(s).finished() ? -1 : earliestFinish(s);
            if (hours != null && earliestFinishDay[s] != NONE) {
                shareForward(hours, s, from, firstDay, taken);
            }
        }
    }

    /** The stages of a chain that work on the same day share its hours. */
    private void shareForward(SharedHours hours, int s, int from, int[] firstDay, int[] taken) {
        int before = 0;
        for (Link link : model.before.get(s)) {
            boolean sameDay = !link.fromIsDone()
                    && earliestFinishDay[link.from] == from
                    && soonestReady(link, from) <= model.dayEpoch[from];
            before = Math.max(before, sameDay ? taken[link.from] : 0);
        }
        int left = model.stage(s).labourQuarters();
        boolean whole = model.stage(s).layout() == Layout.IN_ONE_GO;
        int d = from;
        while (d < model.dayCount()) {
            int most = Math.min(takes(s, d), model.days.get(d).labourQuarters() - before);
            if (most >= left) {
                break;
            }
            left -= whole ? 0 : Math.max(0, most);
            before = 0;
            d++;
        }
        int byLabour = hours.earliest(s, firstDay, model.stage(s).labourQuarters());
        int day = Math.max(earliestFinishDay[s], Math.max(d, byLabour));
        taken[s] = day == d ? before + left : 0;
        earliestFinishDay[s] = day >= model.dayCount() ? NONE : day;
    }

    private void backward() {
        int[] taken = new int[model.stageCount];
        for (int s : order.reversed()) {
            latestFinishDay[s] = latestFinish(s);
            SharedHours hours = model.stage(s).finished() ? null : shared;
            if (hours != null) {
                latestFinishDay[s] = Math.min(latestFinishDay[s], hours.latest(s, latestFinishDay, 0));
            }
            latestStartDay[s] = latestStart(s, latestFinishDay[s]);
            if (hours != null && latestStartDay[s] >= 0) {
                shareBackward(hours, s, taken);
            }
        }
    }

    private void shareBackward(SharedHours hours, int s, int[] taken) {
        int until = latestFinishDay[s];
        int after = 0;
        for (Link link : model.after.get(s)) {
            boolean sameDay = !model.stage(link.to).finished()
                    && latestStartDay[link.to] == until
                    && link.readyEpoch(until) <= model.dayEpoch[until];
            after = Math.max(after, sameDay ? taken[link.to] : 0);
        }
        int left = model.stage(s).labourQuarters();
        boolean whole = model.stage(s).layout() == Layout.IN_ONE_GO;
        int d = until;
        while (d >= 0) {
            int most = Math.min(takes(s, d), model.days.get(d).labourQuarters() - after);
            if (most >= left) {
                break;
            }
            left -= whole ? 0 : Math.max(0, most);
            after = 0;
            d--;
        }
        int byLabour = hours.latest(s, latestFinishDay, model.stage(s).labourQuarters());
        int day = Math.min(latestStartDay[s], Math.min(d, byLabour));
        taken[s] = day == d ? after + left : 0;
        latestStartDay[s] = day;
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

    /** Over all stages, how many site days each may work on. */
    long places() {
        long places = 0;
        for (int s = 0; s < model.stageCount; s++) {
            if (!model.stage(s).finished() && earliestEpoch[s] != NONE) {
                places += Math.max(0, latestFinishDay[s] - model.dayFrom(earliestEpoch[s]) + 1);
            }
        }
        return places;
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

    private static List<Integer> inOrder(Model model) {
        List<Integer> order = new ArrayList<>();
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
        return order;
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
        return finish(s, fromDay, this::takes);
    }

    /** The same on any days as if power had no end. */
    int finishAloneByHours(int s) {
        return finish(s, 0, this::takesByHours);
    }

    private int finish(int s, int fromDay, IntBinaryOperator taking) {
        for (int start = fromDay; start < model.dayCount(); start++) {
            if (taking.applyAsInt(s, start) > 0) {
                int finish = finishFrom(s, start, taking);
                if (finish != NONE) {
                    return finish;
                }
            }
        }
        return NONE;
    }

    private int finishFrom(int s, int start, IntBinaryOperator taking) {
        var stage = model.stage(s);
        int left = stage.labourQuarters();
        for (int d = start; d < model.dayCount(); d++) {
            int takes = taking.applyAsInt(s, d);
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
        int most = takesByHours(s, d);
        if (most == 0 || model.stage(s).wattHoursPerHour() == 0) {
            return most;
        }
        int powered = model.alone.most(s, d, Math.min(most, model.stage(s).labourQuarters()));
        return powered >= model.stage(s).effectiveLeastBlock() ? Math.min(most, powered) : 0;
    }

    /** The same as if power had no end. */
    int takesByHours(int s, int d) {
        var stage = model.stage(s);
        int most = Math.min(stage.mostBlockQuarters(), model.days.get(d).quartersFor(stage));
        return model.allowed[s][d] && most >= stage.effectiveLeastBlock() ? most : 0;
    }
}
