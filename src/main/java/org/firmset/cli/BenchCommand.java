package org.firmset.cli;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import org.firmset.plan.Effort;
import org.firmset.plan.Outcome;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.check.PlanChecker;
import org.firmset.plan.search.ConstructivePlanner;

/** firmset bench plan: how long planning takes, as a Markdown table. */
final class BenchCommand {
    private static final int[][] SIZES = {{12, 16}, {40, 40}, {120, 100}, {400, 200}};
    private static final int SEEDS = 5;

    private final PrintStream out;

    BenchCommand(PrintStream out) {
        this.out = out;
    }

    int run(List<String> arguments) {
        if (!arguments.equals(List.of("plan"))) {
            throw new NotUnderstood("'bench' measures one thing so far; write 'firmset bench plan'");
        }
        out.printf(
                "%s %s, Java %s, %d processors, heap limit %d MiB%n%n",
                System.getProperty("os.name"),
                System.getProperty("os.arch"),
                Runtime.version().feature(),
                Runtime.getRuntime().availableProcessors(),
                Runtime.getRuntime().maxMemory() >> 20);
        out.println("| stages x weekends | seed | first plan ms | plan ms | finish, day | trips | checked |");
        out.println("|---|---|---|---|---|---|---|");
        measure(BenchSeason.problem(12, 16, 99), Effort.NORMAL);
        for (int[] size : SIZES) {
            for (int seed = 1; seed <= SEEDS; seed++) {
                row(size[0], size[1], seed);
            }
        }
        return Commands.DONE;
    }

    private record Measured(Outcome outcome, double millis) {}

    private static Measured measure(PlanningProblem problem, Effort effort) {
        long start = System.nanoTime();
        Outcome outcome = new ConstructivePlanner().plan(problem, effort);
        return new Measured(outcome, (System.nanoTime() - start) / 1e6);
    }

    private void row(int stages, int weekends, int seed) {
        PlanningProblem problem = BenchSeason.problem(stages, weekends, seed);
        Measured first = measure(problem, new Effort(1, 1));
        Measured whole = measure(problem, Effort.NORMAL);
        String figures = switch (whole.outcome()) {
            case Outcome.NoPlan noPlan ->
                "- | - | no plan: " + noPlan.obstacles().getFirst().message();
            case Outcome.Planned planned ->
                String.format(
                        Locale.ROOT,
                        "%d | %d | %s",
                        planned.plan().finish().orElseThrow().toEpochDay()
                                - problem.statusDate().toEpochDay(),
                        planned.plan().totals().trips(),
                        PlanChecker.check(problem, planned.plan().schedule()).isEmpty() ? "passes" : "BREAKS");
        };
        out.printf(
                Locale.ROOT,
                "| %d x %d | %d | %.1f | %.0f | %s |%n",
                stages,
                weekends,
                seed,
                first.millis(),
                whole.millis(),
                figures);
    }
}
