package org.firmset.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.firmset.plan.Effort;
import org.firmset.plan.Outcome;
import org.firmset.plan.Planner;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.check.PlanChecker;
import org.firmset.plan.search.ConstructivePlanner;

/** firmset bench psplib DIR: open scheduling instances with known optima, as a Markdown table. */
final class BenchProjects {
    private static final Effort EFFORT = new Effort(60, 1, 20);
    private static final String NO_PLAN = "unsat";
    private static final int WARM_UP = 12;

    private final PrintStream out;
    private final Path folder;
    private final Planner planner = new ConstructivePlanner();

    BenchProjects(PrintStream out, Path folder) {
        this.out = out;
        this.folder = folder;
    }

    private record Known(String file, String optimum) {}

    private record Solved(String value, double millis) {}

    int run() {
        List<Known> all = known();
        all.stream().limit(WARM_UP).forEach(this::solve);
        List<Double> millis = new ArrayList<>();
        int right = 0;
        out.println("| instance | known optimum | found and proven | ms | agrees |");
        out.println("|---|---|---|---|---|");
        for (Known known : all) {
            Solved solved = solve(known);
            boolean agrees = solved.value().equals(known.optimum());
            right += agrees ? 1 : 0;
            millis.add(solved.millis());
            out.printf(
                    Locale.ROOT,
                    "| %s | %s | %s | %.1f | %s |%n",
                    known.file(),
                    known.optimum(),
                    solved.value(),
                    solved.millis(),
                    agrees ? "yes" : "NO");
        }
        Collections.sort(millis);
        out.printf(
                Locale.ROOT,
                "%n%d of %d agree; median %.1f ms, longest %.0f ms%n",
                right,
                all.size(),
                millis.get(millis.size() / 2),
                millis.getLast());
        return right == all.size() ? Commands.DONE : Commands.REFUSED;
    }

    private List<Known> known() {
        Path list = folder.resolve("optimum.csv");
        List<Known> result = read(list)
                .lines()
                .skip(1)
                .map(line -> line.split(","))
                .filter(fields -> fields.length == 2)
                .map(fields -> new Known(fields[0].strip(), fields[1].strip()))
                .toList();
        if (result.isEmpty()) {
            throw new NotUnderstood("'" + list + "' lists no instance; write a heading, then lines of file,optimum");
        }
        return result;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file, StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new NotUnderstood("'" + file + "' cannot be read; name a folder with instances and optimum.csv");
        }
    }

    private Solved solve(Known known) {
        String text = read(folder.resolve(known.file()));
        PlanningProblem problem = known.file().endsWith(".SCH") ? OpenProjects.sch(text) : OpenProjects.sm(text);
        long start = System.nanoTime();
        Outcome outcome = planner.plan(problem, EFFORT);
        return new Solved(value(problem, outcome), (System.nanoTime() - start) / 1e6);
    }

    private static String value(PlanningProblem problem, Outcome outcome) {
        return switch (outcome) {
            case Outcome.NoPlan none -> none.obstacles().getFirst().proven() ? NO_PLAN : "none found";
            case Outcome.Planned planned -> {
                boolean keeps =
                        PlanChecker.check(problem, planned.plan().schedule()).isEmpty();
                String proof = planned.plan().aim().proven() ? "" : " (not proven)";
                yield OpenProjects.makespan(planned.plan()) + (keeps ? proof : " BREAKS A RULE");
            }
        };
    }
}
