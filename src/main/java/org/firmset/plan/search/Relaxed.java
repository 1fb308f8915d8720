package org.firmset.plan.search;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.firmset.plan.Layout;
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
    private final CpModel cp = new CpModel();
    private final @Nullable IntVar[][] amount;
    private final @Nullable BoolVar[][] works;
    private final @Nullable BoolVar[][] done;
    private final BoolVar[] made;
    private final LinearExprBuilder aim = LinearExpr.newBuilder();
    private final boolean careful;
    private boolean impossible;
    private final LaneBound.@Nullable Tight known;

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
        amount = new IntVar[model.stageCount][model.dayCount()];
        works = new BoolVar[model.stageCount][model.dayCount()];
        done = new BoolVar[model.stageCount][model.dayCount()];
        made = new BoolVar[model.tripCount()];
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
                    long before = Math.max(0, windows.latestFinishDay(link.from) - firstDay(link.from) + 1);
                    days += Math.max(0, windows.latestFinishDay(s) - firstDay(s) + 1);
                    days += link.hasMost() ? before * before / MOST_WAITS_SHARE : 0;
                }
            }
        }
        return days;
    }

    private int firstDay(int s) {
        int epoch = windows.earliestEpoch(s);
        return epoch == Windows.NONE ? model.dayCount() : model.dayFrom(epoch);
    }

    /**
     * Looks for the best solution of a value within a limit.
     *
     * @param work how hard to look, in the solver's own units: the same on every machine
     */
    Answer upTo(long limit, double work, Stop stop) {
        for (int t = 0; t < made.length; t++) {
            made[t] = cp.newBoolVar("");
        }
        for (int s = 0; s < model.stageCount && !impossible; s++) {
            if (stop.isStopped()) {
                return Answer.NONE;
            }
            if (!model.stage(s).finished()) {
                place(s);
            }
        }
        if (impossible) {
            return Answer.impossible(limit);
        }
        RelaxedLoads loads = new RelaxedLoads(model, windows, cp, amount, works, made, careful);
        List<Runnable> parts = List.of(this::link, () -> fillDays(loads), this::power, this::shareTools, loads::write);
        for (Runnable part : parts) {
            if (stop.isStopped()) {
                return Answer.NONE;
            }
            part.run();
        }
        long rest = aim(loads);
        if (limit < Answer.NO_LIMIT) {
            cp.addLessOrEqual(aim, limit - rest);
            cp.minimize(aim);
        }
        return solve(limit, rest, work, stop, loads);
    }

    private void place(int s) {
        var stage = model.stage(s);
        int first = firstDay(s);
        int last = windows.latestFinishDay(s);
        LinearExprBuilder all = LinearExpr.newBuilder();
        List<Literal> blocks = new ArrayList<>();
        for (int d = first; d <= last; d++) {
            int most = windows.takes(s, d);
            boolean whole = stage.layout() == Layout.IN_ONE_GO;
            if (most == 0 || (whole && most < stage.labourQuarters())) {
                continue;
            }
            BoolVar work = cp.newBoolVar("");
            IntVar quarters = cp.newIntVar(0, Math.min(most, stage.labourQuarters()), "");
            int least = whole ? stage.labourQuarters() : stage.effectiveLeastBlock();
            cp.addGreaterOrEqual(quarters, LinearExpr.term(work, least));
            cp.addLessOrEqual(quarters, LinearExpr.term(work, Math.min(most, stage.labourQuarters())));
            cp.addImplication(work, made[model.tripOfDay[d]]);
            works[s][d] = work;
            amount[s][d] = quarters;
            all.add(quarters);
            blocks.add(work);
        }
        if (blocks.isEmpty()) {
            impossible = true;
            return;
        }
        cp.addEquality(all, stage.labourQuarters());
        if (stage.layout() == Layout.IN_ONE_GO) {
            cp.addExactlyOne(blocks);
        }
        if (stage.layout() == Layout.UNBROKEN_DAYS) {
            keepUnbroken(s);
        }
        finish(s, last);
    }

    /** A day that does not go on from the day before begins the stage, and it begins once. */
    private void keepUnbroken(int s) {
        List<Literal> begins = new ArrayList<>();
        for (int d = 0; d < model.dayCount(); d++) {
            BoolVar work = works[s][d];
            if (work == null) {
                continue;
            }
            BoolVar begin = cp.newBoolVar("");
            begins.add(begin);
            BoolVar before = d > 0 && model.dayEpoch[d - 1] + 1 == model.dayEpoch[d] ? works[s][d - 1] : null;
            if (before == null) {
                cp.addImplication(work, begin);
            } else {
                cp.addBoolOr(List.of(work.not(), begin, before));
            }
        }
        cp.addAtMostOne(begins);
    }

    private void finish(int s, int last) {
        BoolVar before = null;
        for (int d = firstDay(s); d <= last; d++) {
            BoolVar here = cp.newBoolVar("");
            done[s][d] = here;
            if (before != null) {
                cp.addImplication(before, here);
                if (works[s][d] != null) {
                    cp.addImplication(works[s][d], before.not());
                }
            }
            before = here;
        }
        if (before != null) {
            cp.addEquality(before, 1);
        }
    }

    /** Whether a stage is finished by the end of a day: yes or no where that is certain. */
    private @Nullable BoolVar doneBy(int s, int day) {
        return day >= 0 ? done[s][Math.min(day, windows.latestFinishDay(s))] : null;
    }

    private void link() {
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
                    cp.addBoolOr(worksBy(s, link.latestEpoch(0)));
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
            if (works[s][d] != null) {
                days.add(works[s][d]);
            }
        }
        return days;
    }

    private void order(Link link) {
        for (int d = 0; d < model.dayCount(); d++) {
            BoolVar work = works[link.to][d];
            if (work == null) {
                continue;
            }
            int ready = lastReady(link, d);
            @Nullable BoolVar before = ready < firstDay(link.from) ? null : doneBy(link.from, ready);
            if (before == null) {
                cp.addEquality(work, 0);
            } else {
                cp.addImplication(work, before);
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
        for (int d = firstDay(link.from); d <= windows.latestFinishDay(link.from); d++) {
            BoolVar finished = done[link.from][d];
            if (finished == null) {
                continue;
            }
            exact(link.from, d, finished);
            List<Literal> ways = worksBy(link.to, link.latestEpoch(model.dayEpoch[d]));
            ways.add(finished.not());
            cp.addBoolOr(ways);
        }
    }

    /** Where lateness is judged a stage must count as finished as soon as it is: else some of it is done later. */
    private void exact(int s, int day, BoolVar finished) {
        List<Literal> ways = new ArrayList<>();
        ways.add(finished);
        for (int d = day + 1; d <= windows.latestFinishDay(s); d++) {
            if (works[s][d] != null) {
                ways.add(works[s][d]);
            }
        }
        cp.addBoolOr(ways);
    }

    private void fillDays(RelaxedLoads loads) {
        for (int d = 0; d < model.dayCount(); d++) {
            LinearExprBuilder sum = LinearExpr.newBuilder();
            for (int s = 0; s < model.stageCount; s++) {
                if (amount[s][d] != null) {
                    sum.add(amount[s][d]);
                }
            }
            int trip = model.tripOfDay[d];
            if (d == model.firstDayOfTrip[trip]) {
                sum.addTerm(loads.extraRuns(trip), model.trip(trip).extraRunQuarters());
            }
            int quarters = model.days.get(d).labourQuarters();
            if (style == Style.SOONEST || style == Style.LEAST_CHANGE) {
                cp.addLessOrEqual(sum, quarters);
            } else {
                // a trip half made would be half the price
                sum.addTerm(made[trip], -quarters);
                cp.addLessOrEqual(sum, 0);
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
                        if (amount[s][j] != null && each > 0) {
                            used.addTerm(amount[s][j], each);
                            parts++;
                        }
                    }
                    draws += parts;
                    cp.addLessOrEqual(used, 4 * there);
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
                        if (model.toolOf[s][u] == tool && works[s][d] != null) {
                            inUse.addTerm(works[s][d], model.toolCount[s][u]);
                            most += model.toolCount[s][u];
                        }
                    }
                }
                if (most > model.problem.tools().get(tool).count()) {
                    cp.addLessOrEqual(inUse, model.problem.tools().get(tool).count());
                }
            }
        }
    }

    /** Writes the aim; gives back its part that no decision changes. */
    private long aim(RelaxedLoads loads) {
        return switch (style) {
            case SOONEST -> aimAtFinishes();
            case FEWEST_TRIPS -> {
                Arrays.stream(made).forEach(aim::add);
                yield 0;
            }
            case LEAST_MONEY -> {
                for (int t = 0; t < made.length; t++) {
                    aim.addTerm(made[t], model.trip(t).cents());
                }
                loads.addCosts(aim);
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
            for (int d = firstDay(s); d <= windows.latestFinishDay(s); d++) {
                BoolVar here = Objects.requireNonNull(done[s][d]);
                if (d < windows.latestFinishDay(s)) {
                    int low = model.dayEpoch[d];
                    int high = model.dayEpoch[d + 1];
                    aim.addTerm(here, Math.max(0, Math.min(high, former) - low));
                    aim.addTerm(here.not(), Math.max(0, high - Math.max(low, former)));
                } else {
                    aim.add(Math.max(0, model.dayEpoch[firstDay(s)] - former));
                    aim.add(Math.max(0, former - model.dayEpoch[d]));
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
                BoolVar finished = cp.newBoolVar("");
                finishedBy[lane][d] = finished;
                for (int s = 0; s < model.stageCount; s++) {
                    if (model.laneOf[s] == lane && !model.stage(s).finished() && d < windows.latestFinishDay(s)) {
                        @Nullable BoolVar stage = doneBy(s, d);
                        if (stage == null) {
                            cp.addEquality(finished, 0);
                        } else {
                            cp.addImplication(finished, stage);
                        }
                    }
                }
                if (before != null) {
                    cp.addImplication(before, finished);
                }
                if (d < last) {
                    long gap = weight * (model.dayEpoch[d + 1] - model.dayEpoch[d]);
                    aim.addTerm(finished.not(), gap);
                } else {
                    cp.addEquality(finished, 1);
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
                cp.addBoolOr(open);
            }
        }
    }

    private Answer solve(long limit, long rest, double work, Stop stop, RelaxedLoads loads) {
        Solving solving = Solving.of(cp, work, stop);
        return solving.answer(limit, rest, solver -> guide(solver, loads));
    }

    private Guide guide(CpSolver solver, RelaxedLoads loads) {
        return new Guide(blocks(solver), closed(solver), loads.loads(solver));
    }

    private @Nullable List<Block>[] blocks(CpSolver solver) {
        @SuppressWarnings({"unchecked", "rawtypes"})
        @Nullable
        List<Block>[] result = new List[model.stageCount];
        for (int s = 0; s < model.stageCount; s++) {
            List<Block> blocks = new ArrayList<>();
            for (int d = 0; d < model.dayCount(); d++) {
                if (works[s][d] != null && solver.booleanValue(works[s][d])) {
                    blocks.add(new Block(d, (int) solver.value(Objects.requireNonNull(amount[s][d]))));
                }
            }
            result[s] = blocks.isEmpty() ? null : blocks;
        }
        return result;
    }

    private boolean[] closed(CpSolver solver) {
        boolean[] closed = new boolean[made.length];
        for (int t = 0; t < closed.length; t++) {
            closed[t] = !solver.booleanValue(made[t]);
        }
        return closed;
    }
}
