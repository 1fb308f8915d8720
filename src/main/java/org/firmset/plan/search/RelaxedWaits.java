package org.firmset.plan.search;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Waits as {@link Relaxed} sees them: least ones by the day, longest ones where lateness is judged. */
final class RelaxedWaits {
    private final Model model;
    private final Windows windows;
    private final RelaxedWork work;

    RelaxedWaits(Model model, Windows windows, RelaxedWork work) {
        this.model = model;
        this.windows = windows;
        this.work = work;
    }

    void write() {
        for (int s = 0; s < model.stageCount; s++) {
            for (Link link : model.before.get(s)) {
                boolean judged = link.hasMost() && model.stage(s).startedOn() == null;
                if (model.stage(s).finished()) {
                    continue;
                }
                if (!link.fromIsDone()) {
                    order(link);
                }
                if (judged && link.fromIsDone()) {
                    work.cp.addBoolOr(worksBy(s, link.latestEpoch(0)));
                } else if (judged) {
                    startInTime(link);
                }
            }
        }
    }

    /** The days on which a stage may work up to a date. */
    private List<Literal> worksBy(int s, int epoch) {
        List<Literal> days = new ArrayList<>();
        for (int d = 0; d < model.dayCount() && model.dayEpoch[d] <= epoch; d++) {
            if (work.works[s][d] != null) {
                days.add(work.works[s][d]);
            }
        }
        return days;
    }

    private void order(Link link) {
        for (int d = 0; d < model.dayCount(); d++) {
            BoolVar here = work.works[link.to][d];
            if (here == null) {
                continue;
            }
            int ready = lastReady(link, d);
            @Nullable BoolVar before = ready < work.firstDay(link.from) ? null : work.doneBy(link.from, ready);
            if (before == null) {
                work.cp.addEquality(here, 0);
            } else {
                work.cp.addImplication(here, before);
            }
        }
    }

    /** The last finish of the stage before after which the stage after can work on a day; a later one may be ready sooner. */
    private int lastReady(Link link, int day) {
        for (int e = Math.min(day, windows.latestFinishDay(link.from)); e >= 0; e--) {
            if (link.readyEpoch(e) <= model.dayEpoch[day]) {
                return e;
            }
        }
        return -1;
    }

    private void startInTime(Link link) {
        for (int d = work.firstDay(link.from); d <= windows.latestFinishDay(link.from); d++) {
            BoolVar finished = work.done[link.from][d];
            if (finished == null) {
                continue;
            }
            exact(link.from, d, finished);
            List<Literal> ways = worksBy(link.to, link.latestEpoch(model.dayEpoch[d]));
            ways.add(finished.not());
            work.cp.addBoolOr(ways);
        }
    }

    /** Where lateness is judged a stage must count as finished as soon as it is: else some of it is done later. */
    private void exact(int s, int day, BoolVar finished) {
        List<Literal> ways = new ArrayList<>();
        ways.add(finished);
        for (int d = day + 1; d <= windows.latestFinishDay(s); d++) {
            if (work.works[s][d] != null) {
                ways.add(work.works[s][d]);
            }
        }
        work.cp.addBoolOr(ways);
    }
}
