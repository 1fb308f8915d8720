package org.firmset.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.plan.Aim;
import org.firmset.plan.Effort;
import org.firmset.plan.Outcome;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Style;
import org.firmset.plan.check.PlanChecker;
import org.firmset.plan.search.ConstructivePlanner;
import org.firmset.season.ProblemWriter;

/** firmset bench plan: how long planning takes, as a Markdown table. */
final class BenchCommand {
    private static final int[][] SIZES = {{12, 16}, {40, 40}, {120, 100}, {400, 200}};
    private static final int SEEDS = 5;

    private final PrintStream out;

    BenchCommand(PrintStream out) {
        this.out = out;
    }

    int run(List<String> arguments) {
        if (arguments.equals(List.of("takeoff"))) {
            machine();
            return new BenchTakeoffs(out).run();
        }
        if (arguments.size() == 2 && arguments.getFirst().equals("psplib")) {
            machine();
            return new BenchProjects(out, Path.of(arguments.getLast())).run();
        }
        if (!arguments.equals(List.of("plan"))) {
            throw new NotUnderstood(
                    "'bench' measures; write 'firmset bench plan', 'firmset bench takeoff' or 'firmset bench psplib FOLDER'");
        }
        machine();
        out.println(
                "| stages x weekends | seed | first plan ms | plan ms | finish, day | trips | aim: plan / bound, gap % |"
                        + " proof ms | plan / bound, gap % | checked |");
        out.println("|---|---|---|---|---|---|---|---|---|---|");
        warmUp();
        row("demo", 1, demo());
        for (int[] size : SIZES) {
            for (int seed = 1; seed <= SEEDS; seed++) {
                row(size[0] + " x " + size[1], seed, BenchSeason.problem(size[0], size[1], seed));
            }
        }
        return Commands.DONE;
    }

    private void machine() {
        out.printf(
                "%s %s, Java %s, %d processors, heap limit %d MiB%n%n",
                System.getProperty("os.name"),
                System.getProperty("os.arch"),
                Runtime.version().feature(),
                Runtime.getRuntime().availableProcessors(),
                Runtime.getRuntime().maxMemory() >> 20);
    }

    private record Measured(Outcome outcome, double millis) {}

    private static Measured measure(PlanningProblem problem, Effort effort) {
        long start = System.nanoTime();
        Outcome outcome = new ConstructivePlanner().plan(problem, effort);
        return new Measured(outcome, (System.nanoTime() - start) / 1e6);
    }

    /** Planning is measured as it is after start-up, not while the machine still compiles it. */
    private static void warmUp() {
        for (int i = 0; i < 5; i++) {
            measure(demo(), Effort.NORMAL);
        }
    }

    private static PlanningProblem demo() {
        LocalDate date = LocalDate.of(2027, 3, 1);
        return ProblemWriter.write(SeedHomesteads.demo(date), date, Style.SOONEST);
    }

    private void row(String size, int seed, PlanningProblem problem) {
        Measured first = measure(problem, new Effort(1, 1));
        Measured whole = measure(problem, Effort.NORMAL);
        Measured proof = measure(problem, Effort.THOROUGH);
        out.printf(
                Locale.ROOT,
                "| %s | %d | %.1f | %.0f | %s | %s | %.0f | %s | %s |%n",
                size,
                seed,
                first.millis(),
                whole.millis(),
                figures(problem, whole.outcome()),
                aim(whole.outcome()),
                proof.millis(),
                aim(proof.outcome()),
                verdict(problem, proof.outcome()));
    }

    private static String figures(PlanningProblem problem, Outcome outcome) {
        return switch (outcome) {
            case Outcome.NoPlan noPlan -> "- | -";
            case Outcome.Planned planned ->
                (planned.plan().finish().orElseThrow().toEpochDay()
                                - problem.statusDate().toEpochDay())
                        + " | " + planned.plan().totals().trips();
        };
    }

    private static String aim(Outcome outcome) {
        return switch (outcome) {
            case Outcome.NoPlan noPlan -> "-";
            case Outcome.Planned planned -> {
                Aim aim = planned.plan().aim();
                yield String.format(Locale.ROOT, "%d / %d, %.1f", aim.value(), aim.bound(), 100 * aim.gap());
            }
        };
    }

    private static String verdict(PlanningProblem problem, Outcome outcome) {
        return switch (outcome) {
            case Outcome.NoPlan noPlan ->
                "no plan: " + noPlan.obstacles().getFirst().message();
            case Outcome.Planned planned ->
                PlanChecker.check(problem, planned.plan().schedule()).isEmpty() ? "passes" : "BREAKS";
        };
    }
}
