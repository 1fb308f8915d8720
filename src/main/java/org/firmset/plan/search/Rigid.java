package org.firmset.plan.search;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.util.Domain;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.firmset.plan.Layout;
import org.firmset.plan.LeastWait;
import org.firmset.plan.Stage;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.jspecify.annotations.Nullable;

/**
 * The problem of those who live on site: every date is a site day, and every stage takes so many whole days without a
 * break. Then only the starts are open, which the solver treats far better than single days. Loads, power and money are
 * left out, so what is proven holds of every plan.
 */
final class Rigid {
    private final Model model;
    private final Windows windows;
    private final CpModel cp = new CpModel();
    private final @Nullable IntVar[] start;
    private final @Nullable IntervalVar[] interval;
    private boolean impossible;

    /** @param windows those of plans within the limit that will be asked for */
    Rigid(Model model, Windows windows) {
        this.model = model;
        this.windows = windows;
        start = new IntVar[model.stageCount];
        interval = new IntervalVar[model.stageCount];
    }

    static boolean fits(Model model) {
        return model.style == Style.SOONEST
                && model.dayCount() > 0
                && everyDateIsASiteDay(model)
                && model.problem.stages().stream().allMatch(s -> s.finished() || isRigid(s))
                && model.problem.waits().stream().allMatch(w -> w.least() instanceof LeastWait.Days);
    }

    private static boolean everyDateIsASiteDay(Model model) {
        return model.dayEpoch[model.dayCount() - 1] - model.dayEpoch[0] == model.dayCount() - 1;
    }

    private static boolean isRigid(Stage stage) {
        int each = stage.mostBlockQuarters();
        return stage.layout() == Layout.IN_ONE_GO
                || (stage.layout() == Layout.UNBROKEN_DAYS
                        && each == stage.effectiveLeastBlock()
                        && stage.labourQuarters() % each == 0);
    }

    private int days(int s) {
        Stage stage = model.stage(s);
        return stage.layout() == Layout.IN_ONE_GO ? 1 : stage.labourQuarters() / stage.mostBlockQuarters();
    }

    private int quartersADay(int s) {
        return model.stage(s).labourQuarters() / days(s);
    }

    Answer upTo(long limit, double work, Stop stop) {
        for (int s = 0; s < model.stageCount && !impossible; s++) {
            if (!model.stage(s).finished()) {
                place(s);
            }
        }
        if (impossible) {
            return Answer.impossible(limit);
        }
        link();
        shareTools();
        shareHours();
        LinearExpr aim = aim();
        if (limit < Answer.NO_LIMIT) {
            cp.addLessOrEqual(aim, limit);
            cp.minimize(aim);
        }
        return Solving.of(cp, work, stop).answer(limit, 0, this::guide);
    }

    private void place(int s) {
        int days = days(s);
        long[] starts = starts(s, days);
        if (starts.length == 0) {
            impossible = true;
            return;
        }
        start[s] = cp.newIntVarFromDomain(Domain.fromValues(starts), "");
        interval[s] = cp.newFixedSizeIntervalVar(start[s], days, "");
    }

    private long[] starts(int s, int days) {
        int epoch = windows.earliestEpoch(s);
        int first = epoch == Windows.NONE ? model.dayCount() : model.dayFrom(epoch);
        List<Long> result = new ArrayList<>();
        int free = 0;
        for (int d = first; d <= windows.latestFinishDay(s); d++) {
            free = windows.takes(s, d) >= quartersADay(s) ? free + 1 : 0;
            if (free >= days) {
                result.add(d - days + 1L);
            }
        }
        return result.stream().mapToLong(Long::longValue).toArray();
    }

    private void link() {
        for (int s = 0; s < model.stageCount; s++) {
            for (Link link : model.before.get(s)) {
                if (start[link.from] != null && start[s] != null) {
                    link(link, start[link.from], start[s]);
                } else if (start[s] != null && link.hasMost() && model.stage(s).startedOn() == null) {
                    cp.addLessOrEqual(start[s], model.dayFrom(link.latestEpoch(0) + 1) - 1L);
                }
            }
        }
    }

    private void link(Link link, IntVar before, IntVar after) {
        int last = days(link.from) - 1;
        int least = ((LeastWait.Days) link.source.least()).days();
        cp.addGreaterOrEqual(LinearExpr.newBuilder().add(after).addTerm(before, -1), last + (long) least);
        if (link.hasMost() && model.stage(link.to).startedOn() == null) {
            cp.addLessOrEqual(
                    LinearExpr.newBuilder().add(after).addTerm(before, -1), last + (long) link.source.mostDays());
        }
    }

    private void shareTools() {
        for (int tool = 0; tool < model.problem.tools().size(); tool++) {
            int there = model.problem.tools().get(tool).count();
            CumulativeConstraint inUse = cp.addCumulative(there);
            for (int s = 0; s < model.stageCount; s++) {
                for (int u = 0; u < model.toolOf[s].length && interval[s] != null; u++) {
                    if (model.toolOf[s][u] == tool) {
                        inUse.addDemand(interval[s], model.toolCount[s][u]);
                    }
                }
            }
        }
    }

    /** The hours of the longest day; what shorter ones lack is taken off them. */
    private void shareHours() {
        int most = model.days.stream().mapToInt(d -> d.labourQuarters()).max().orElse(0);
        CumulativeConstraint taken = cp.addCumulative(most);
        for (int s = 0; s < model.stageCount; s++) {
            if (interval[s] != null) {
                taken.addDemand(interval[s], quartersADay(s));
            }
        }
        for (int d = 0; d < model.dayCount(); d++) {
            int lacking = most - model.days.get(d).labourQuarters();
            if (lacking > 0) {
                taken.addDemand(cp.newFixedInterval(d, 1, ""), lacking);
            }
        }
    }

    private LinearExpr aim() {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        int fromStatus = model.dayEpoch[0] - model.statusEpoch + 1;
        for (int lane = 0; lane < model.laneIndex.size(); lane++) {
            IntVar last = null;
            for (int s = 0; s < model.stageCount; s++) {
                if (model.laneOf[s] == lane && start[s] != null) {
                    last = last == null ? cp.newIntVar(0, model.dayCount() - 1L, "") : last;
                    cp.addGreaterOrEqual(last, LinearExpr.affine(start[s], 1, days(s) - 1L));
                }
            }
            if (last != null) {
                sum.addTerm(last, model.weight(lane));
                sum.add((long) model.weight(lane) * fromStatus);
            }
        }
        return sum.build();
    }

    private Guide guide(CpSolver solver) {
        @SuppressWarnings({"unchecked", "rawtypes"})
        @Nullable
        List<Block>[] blocks = new List[model.stageCount];
        for (int s = 0; s < blocks.length; s++) {
            if (start[s] != null) {
                int first = (int) solver.value(start[s]);
                int each = quartersADay(s);
                blocks[s] = IntStream.range(first, first + days(s))
                        .mapToObj(day -> new Block(day, each))
                        .toList();
            }
        }
        int[] noGroups = new int[model.problem.materials().size()];
        Arrays.fill(noGroups, Guide.Loads.NO_GROUP);
        Guide.Loads loads = new Guide.Loads(noGroups, new long[0][], new int[model.tripCount()], new long[0][][]);
        return new Guide(blocks, new boolean[model.tripCount()], loads);
    }
}
