package org.firmset.plan.search;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.List;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.jspecify.annotations.Nullable;

/**
 * The planning problem with its loads only as {@link RelaxedLoads} sees them: labour, days, waits, crews, seasons, pins,
 * tools and power by the hard rules. Every plan keeps these, so what CP-SAT proves of them holds of every plan; the
 * solution it finds is a guide for the builder, which knows single packs.
 *
 * <p>Variables exist only inside the windows that a plan better than the best one known must keep.
 */
final class Relaxed {
    /** Beyond that a solver only costs memory: the bound that needs none still holds. */
    private static final int MOST_PLACES = 40_000;

    /** Waits times days, and for longest waits times days once more. */
    private static final long MOST_WAITS = 400_000;

    /** Parts of longest waits are as quick to write as one in so many of the others. */
    private static final long MOST_WAITS_SHARE = 10;

    /** Parts of all sums of energy; those that would come after them are left out, which makes no plan impossible. */
    private static final long MOST_DRAWS = 3_000_000;

    private final Model model;
    private final Style style;
    private final Windows windows;
    private final boolean careful;
    private final LaneBound.@Nullable Tight known;
    private final RelaxedWork work;

    /**
     * @param windows those of plans that are better than the best one known
     * @param known of the finishes of all plans that are asked for, of which the solver sees little by itself; null for
     *     nothing
     * @param careful to keep a pack's room to spare on runs and under roof: its solutions can be built more often, but
     *     its bound holds of no plan
     */
    Relaxed(Model model, Windows windows, Style style, LaneBound.@Nullable Tight known, boolean careful) {
        this.known = known;
        this.careful = careful;
        this.model = model;
        this.windows = windows;
        this.style = style;
        work = new RelaxedWork(model, windows);
    }

    /** How many places for work it would have. */
    boolean isTooLarge() {
        return windows.places() > MOST_PLACES || waits() > MOST_WAITS;
    }

    private long waits() {
        long days = 0;
        for (int s = 0; s < model.stageCount; s++) {
            for (Link link : model.before.get(s)) {
                if (!link.fromIsDone() && !model.stage(s).finished()) {
                    long before = Math.max(0, windows.latestFinishDay(link.from) - work.firstDay(link.from) + 1);
                    days += Math.max(0, windows.latestFinishDay(s) - work.firstDay(s) + 1);
                    days += link.hasMost() ? before * before / MOST_WAITS_SHARE : 0;
                }
            }
        }
        return days;
    }

    /**
     * Looks for the best solution of a value within a limit.
     *
     * @param effort how hard to look, in the solver's own units: the same on every machine
     */
    Answer upTo(long limit, double effort, Stop stop) {
        for (int s = 0; s < model.stageCount && !work.isImpossible(); s++) {
            if (stop.isStopped()) {
                return Answer.NONE;
            }
            if (!model.stage(s).finished()) {
                work.place(s);
            }
        }
        if (work.isImpossible()) {
            return Answer.impossible(limit);
        }
        RelaxedLoads loads = new RelaxedLoads(model, windows, work, careful);
        List<Runnable> parts = List.of(
                new RelaxedWaits(model, windows, work)::write,
                () -> fillDays(loads),
                this::power,
                this::shareTools,
                loads::write);
        for (Runnable part : parts) {
            if (stop.isStopped()) {
                return Answer.NONE;
            }
            part.run();
        }
        RelaxedAim aim = new RelaxedAim(model, windows, style, work, known);
        long rest = aim.write(loads);
        if (limit < Answer.NO_LIMIT) {
            work.cp.addLessOrEqual(aim.sum(), limit - rest);
            work.cp.minimize(aim.sum());
        }
        return solve(limit, rest, effort, stop, loads);
    }

    private void fillDays(RelaxedLoads loads) {
        for (int d = 0; d < model.dayCount(); d++) {
            LinearExprBuilder sum = LinearExpr.newBuilder();
            for (int s = 0; s < model.stageCount; s++) {
                if (work.amount[s][d] != null) {
                    sum.add(work.amount[s][d]);
                }
            }
            int trip = model.tripOfDay[d];
            if (d == model.firstDayOfTrip[trip]) {
                sum.addTerm(loads.extraRuns(trip), model.trip(trip).extraRunQuarters());
            }
            int quarters = model.days.get(d).labourQuarters();
            if (style == Style.SOONEST || style == Style.LEAST_CHANGE) {
                work.cp.addLessOrEqual(sum, quarters);
            } else {
                // a trip half made would be half the price
                sum.addTerm(work.made[trip], -quarters);
                work.cp.addLessOrEqual(sum, 0);
            }
        }
    }

    /** Over any days of a trip no more energy than a full battery and what comes in: in quarters of a watt-hour. */
    private void power() {
        long draws = 0;
        for (int t = 0; t < model.tripCount(); t++) {
            for (int i = model.firstDayOfTrip[t]; i <= model.lastDayOfTrip[t]; i++) {
                LinearExprBuilder used = LinearExpr.newBuilder();
                long there = model.usableWattHours;
                long parts = 0;
                for (int j = i; j <= model.lastDayOfTrip[t] && draws <= MOST_DRAWS; j++) {
                    there += model.broughtWattHours[j];
                    for (int s = 0; s < model.stageCount; s++) {
                        long each = model.stage(s).wattHoursPerHour();
                        if (work.amount[s][j] != null && each > 0) {
                            used.addTerm(work.amount[s][j], each);
                            parts++;
                        }
                    }
                    draws += parts;
                    work.cp.addLessOrEqual(used, 4 * there);
                }
            }
        }
    }

    private void shareTools() {
        for (int tool = 0; tool < model.problem.tools().size(); tool++) {
            for (int d = 0; d < model.dayCount(); d++) {
                LinearExprBuilder inUse = LinearExpr.newBuilder();
                long most = 0;
                for (int s = 0; s < model.stageCount; s++) {
                    for (int u = 0; u < model.toolOf[s].length; u++) {
                        if (model.toolOf[s][u] == tool && work.works[s][d] != null) {
                            inUse.addTerm(work.works[s][d], model.toolCount[s][u]);
                            most += model.toolCount[s][u];
                        }
                    }
                }
                if (most > model.problem.tools().get(tool).count()) {
                    work.cp.addLessOrEqual(
                            inUse, model.problem.tools().get(tool).count());
                }
            }
        }
    }

    private Answer solve(long limit, long rest, double effort, Stop stop, RelaxedLoads loads) {
        Solving solving = Solving.of(work.cp, effort, stop);
        return solving.answer(limit, rest, solver -> guide(solver, loads));
    }

    private Guide guide(CpSolver solver, RelaxedLoads loads) {
        return new Guide(work.blocks(solver), work.closed(solver), loads.loads(solver));
    }
}
