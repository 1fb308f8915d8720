package org.firmset.plan.search;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.firmset.plan.Style;
import org.jspecify.annotations.Nullable;

/** What {@link Relaxed} looks for, by the style of the plan. */
final class RelaxedAim {
    private final Model model;
    private final Windows windows;
    private final Style style;
    private final RelaxedWork work;
    private final LaneBound.@Nullable Tight known;
    private final LinearExprBuilder sum = LinearExpr.newBuilder();

    RelaxedAim(Model model, Windows windows, Style style, RelaxedWork work, LaneBound.@Nullable Tight known) {
        this.model = model;
        this.windows = windows;
        this.style = style;
        this.work = work;
        this.known = known;
    }

    /** What decisions change of it; once written. */
    LinearExprBuilder sum() {
        return sum;
    }

    /** Writes the aim; gives back its part that no decision changes. */
    long write(RelaxedLoads loads) {
        return switch (style) {
            case SOONEST -> aimAtFinishes();
            case FEWEST_TRIPS -> {
                Arrays.stream(work.made).forEach(sum::add);
                yield 0;
            }
            case LEAST_MONEY -> {
                for (int t = 0; t < work.made.length; t++) {
                    sum.addTerm(work.made[t], model.trip(t).cents());
                }
                loads.addCosts(sum);
                yield new Bounds(model, windows).leastMaterialCents();
            }
            case LEAST_CHANGE -> {
                aimAtFormerFinishes();
                yield 0;
            }
        };
    }

    /**
     * Days by which stages finish sooner or later than before. That a stage counts as done only later than it is costs
     * nothing, so the sum may be under that of the plan but not over it.
     */
    private void aimAtFormerFinishes() {
        for (int s = 0; s < model.stageCount; s++) {
            int former = model.formerFinish[s];
            if (model.stage(s).finished() || former == Model.NOT_PLANNED) {
                continue;
            }
            for (int d = work.firstDay(s); d <= windows.latestFinishDay(s); d++) {
                BoolVar here = Objects.requireNonNull(work.done[s][d]);
                if (d < windows.latestFinishDay(s)) {
                    int low = model.dayEpoch[d];
                    int high = model.dayEpoch[d + 1];
                    sum.addTerm(here, Math.max(0, Math.min(high, former) - low));
                    sum.addTerm(here.not(), Math.max(0, high - Math.max(low, former)));
                } else {
                    sum.add(Math.max(0, model.dayEpoch[work.firstDay(s)] - former));
                    sum.add(Math.max(0, former - model.dayEpoch[d]));
                }
            }
        }
    }

    /** Each day on which a subproject is not finished yet costs its weight until the next site day. */
    private long aimAtFinishes() {
        long rest = 0;
        @Nullable BoolVar[][] finishedBy = new BoolVar[model.laneIndex.size()][model.dayCount()];
        for (int lane = 0; lane < model.laneIndex.size(); lane++) {
            long weight = model.weight(lane);
            int first = windows.earliestFinishOfLane(lane);
            if (first == Windows.NOTHING_LEFT) {
                continue;
            }
            rest += weight * (model.dayEpoch[first] - model.statusEpoch + 1);
            int last = windows.latestFinishOfLane(lane);
            BoolVar before = null;
            for (int d = first; d <= last; d++) {
                BoolVar finished = work.cp.newBoolVar("");
                finishedBy[lane][d] = finished;
                for (int s = 0; s < model.stageCount; s++) {
                    if (model.laneOf[s] == lane && !model.stage(s).finished() && d < windows.latestFinishDay(s)) {
                        @Nullable BoolVar stage = work.doneBy(s, d);
                        if (stage == null) {
                            work.cp.addEquality(finished, 0);
                        } else {
                            work.cp.addImplication(finished, stage);
                        }
                    }
                }
                if (before != null) {
                    work.cp.addImplication(before, finished);
                }
                if (d < last) {
                    long gap = weight * (model.dayEpoch[d + 1] - model.dayEpoch[d]);
                    sum.addTerm(finished.not(), gap);
                } else {
                    work.cp.addEquality(finished, 1);
                }
                before = finished;
            }
        }
        if (known != null) {
            keepSets(known, finishedBy);
        }
        return rest;
    }

    /** Before the day of a set some subproject of it is not finished. */
    private void keepSets(LaneBound.Tight tight, @Nullable BoolVar[][] finishedBy) {
        for (int set = 1; set < tight.earliestOfSet().length; set++) {
            int day = tight.earliestOfSet()[set] - 1;
            List<Literal> open = new ArrayList<>();
            boolean holds = day < 0;
            for (int i = 0; i < tight.lanes().length && !holds; i++) {
                int lane = tight.lanes()[i];
                if ((set & 1 << i) != 0) {
                    holds = day < windows.earliestFinishOfLane(lane);
                    if (!holds && day < windows.latestFinishOfLane(lane)) {
                        open.add(Objects.requireNonNull(finishedBy[lane][day]).not());
                    }
                }
            }
            if (!holds) {
                work.cp.addBoolOr(open);
            }
        }
    }
}
