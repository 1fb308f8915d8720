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
import org.jspecify.annotations.Nullable;

/** Which stage works when: the decisions that all other parts of {@link Relaxed} speak of. */
final class RelaxedWork {
    final CpModel cp = new CpModel();

    /** Quarters of an hour by stage and day; null where a stage cannot work. */
    final @Nullable IntVar[][] amount;

    /** Whether a stage works on a day; null where it cannot. */
    final @Nullable BoolVar[][] works;

    /** Whether a stage is finished by the end of a day; null where that is certain. */
    final @Nullable BoolVar[][] done;

    /** Whether a trip is made. */
    final BoolVar[] made;

    private final Model model;
    private final Windows windows;
    private boolean impossible;

    RelaxedWork(Model model, Windows windows) {
        this.model = model;
        this.windows = windows;
        amount = new IntVar[model.stageCount][model.dayCount()];
        works = new BoolVar[model.stageCount][model.dayCount()];
        done = new BoolVar[model.stageCount][model.dayCount()];
        made = new BoolVar[model.tripCount()];
        Arrays.setAll(made, t -> cp.newBoolVar(""));
    }

    /** Whether some stage has no day at all to work on. */
    boolean isImpossible() {
        return impossible;
    }

    int firstDay(int s) {
        int epoch = windows.earliestEpoch(s);
        return epoch == Windows.NONE ? model.dayCount() : model.dayFrom(epoch);
    }

    void place(int s) {
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
    @Nullable
    BoolVar doneBy(int s, int day) {
        return day >= 0 ? done[s][Math.min(day, windows.latestFinishDay(s))] : null;
    }

    /** The work of each stage in a solution; null for none. */
    @Nullable
    List<Block>[] blocks(CpSolver solver) {
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

    /** Trips that a solution does not make. */
    boolean[] closed(CpSolver solver) {
        boolean[] closed = new boolean[made.length];
        for (int t = 0; t < closed.length; t++) {
            closed[t] = !solver.booleanValue(made[t]);
        }
        return closed;
    }
}
