package org.firmset.cli;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.firmset.plan.Effort;
import org.firmset.plan.Former;
import org.firmset.plan.Layout;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Stage;

/** How long a changed homestead waits for its new plan: one stage of a planned one takes a quarter more labour. */
final class BenchEdits {
    private static final int STAGES = 40;
    private static final int WEEKENDS = 40;

    private final PrintStream out;
    private final int seeds;

    BenchEdits(PrintStream out, int seeds) {
        this.out = out;
        this.seeds = seeds;
    }

    private record Edit(Stage before, Stage after, TimedPlan first, TimedPlan whole) {
        boolean breaks() {
            return first.breaks() || whole.breaks();
        }
    }

    /** Whether every plan keeps the rules. */
    boolean run() {
        out.printf("### Edit on %d x %d: the labour of one stage grows by a quarter%n%n", STAGES, WEEKENDS);
        out.printf("| seed | stage | labour h | first plan ms | %d plans ms | checked |%n", Effort.NORMAL.plans());
        out.println("|---|---|---|---|---|---|");
        List<Edit> edits = new ArrayList<>();
        for (int seed = 1; seed <= seeds; seed++) {
            Edit edit = measure(seed);
            edits.add(edit);
            print(seed, edit);
        }
        out.printf(
                "| median | | | %s | %s | |%n%n",
                Median.millis(edits.stream().map(Edit::first)),
                Median.millis(edits.stream().map(Edit::whole)));
        out.printf("The plan before is at hand as a start for the search.%n%n");
        return edits.stream().noneMatch(Edit::breaks);
    }

    private static Edit measure(int seed) {
        PlanningProblem problem = BenchSeason.problem(STAGES, WEEKENDS, seed);
        List<Former> former = TimedPlan.of(problem, Effort.NORMAL).plan().stream()
                .flatMap(BenchEdits::former)
                .toList();
        Stage before = chosen(problem, seed);
        Stage after = withQuarterMoreLabour(before);
        PlanningProblem changed = problem.withFormer(former)
                .withStages(problem.stages().stream()
                        .map(s -> s.id().equals(before.id()) ? after : s)
                        .toList());
        return new Edit(before, after, TimedPlan.of(changed, BenchPlans.FIRST), TimedPlan.of(changed, Effort.NORMAL));
    }

    private static Stream<Former> former(SeasonPlan plan) {
        return plan.stories().stream().map(s -> new Former(s.stage(), s.start(), s.finish()));
    }

    /** Another for each seed; one whose labour may lie on several days, so that it still finds room. */
    private static Stage chosen(PlanningProblem problem, int seed) {
        List<Stage> splittable = problem.stages().stream()
                .filter(s -> s.layout() == Layout.SPLITTABLE)
                .toList();
        return splittable.get(seed * 7 % splittable.size());
    }

    private static Stage withQuarterMoreLabour(Stage s) {
        return new Stage(
                s.id(),
                s.name(),
                s.subproject(),
                Math.ceilDiv(s.labourQuarters() * 5, 4),
                s.crew(),
                s.layout(),
                s.leastBlockQuarters(),
                s.mostBlockQuarters(),
                s.wattHoursPerHour(),
                s.needsLight(),
                s.shut(),
                s.needs(),
                s.tools(),
                s.startedOn(),
                s.finishedOn());
    }

    private void print(int seed, Edit edit) {
        out.printf(
                Locale.ROOT,
                "| %d | %s | %.2f -> %.2f | %s | %s | %s |%n",
                seed,
                edit.before().id(),
                edit.before().labourQuarters() / 4.0,
                edit.after().labourQuarters() / 4.0,
                edit.first().millisText(),
                edit.whole().millisText(),
                edit.breaks() ? "BREAKS" : edit.whole().verdict());
    }
}
