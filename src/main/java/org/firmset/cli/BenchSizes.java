package org.firmset.cli;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.firmset.plan.Effort;
import org.firmset.plan.PlanningProblem;

/** How soon a first plan is there and how far proofs go, a table for each size of homestead. */
final class BenchSizes {
    private static final int PLANS = 5_000;
    private static final int PLANS_OF_LARGE = 1_500;

    private final PrintStream out;
    private final BenchOptions options;

    BenchSizes(PrintStream out, BenchOptions options) {
        this.out = out;
        this.options = options;
    }

    /**
     * One made-up homestead.
     *
     * @param looks one for each effort up to the one that proved its plan
     */
    private record Row(int seed, TimedPlan first, List<TimedPlan> looks, long peak) {
        boolean breaks() {
            return Stream.concat(Stream.of(first), looks.stream()).anyMatch(TimedPlan::breaks);
        }

        boolean proven() {
            return looks.getLast().proven();
        }

        /** What is proven at one effort stays so at the greater ones. */
        Optional<Double> gapPercent(int effort) {
            return looks.get(Math.min(effort, looks.size() - 1)).aim().map(aim -> 100 * aim.gap());
        }

        String verdict() {
            return breaks() ? "BREAKS" : looks.getLast().verdict();
        }
    }

    /** Whether every plan keeps the rules. */
    boolean run() {
        boolean keep = true;
        for (BenchOptions.Size size : options.sizes()) {
            keep &= table(size);
        }
        legend();
        return keep;
    }

    private boolean table(BenchOptions.Size size) {
        heading(size);
        List<Row> rows = new ArrayList<>();
        for (int seed = 1; seed <= options.seeds(); seed++) {
            Row row = measure(size, seed);
            rows.add(row);
            print(row);
        }
        out.println();
        out.println(medians(rows));
        out.println();
        return rows.stream().noneMatch(Row::breaks);
    }

    private void heading(BenchOptions.Size size) {
        out.printf("### %s (stages x weekends), effort %s%n%n", size, joined("/", options.efforts().stream()));
        out.printf(
                "| seed | first plan ms | %s | peak heap MiB | checked |%n",
                joined(" | ", options.efforts().stream().map(e -> "effort " + e + ": value / bound, gap %; s")));
        out.println("|---|---|" + "---|".repeat(options.efforts().size()) + "---|---|");
    }

    private static String joined(String between, Stream<?> parts) {
        return parts.map(Object::toString).collect(Collectors.joining(between));
    }

    private Row measure(BenchOptions.Size size, int seed) {
        PlanningProblem problem = BenchSeason.problem(size.stages(), size.weekends(), seed);
        PeakHeap.setBack();
        TimedPlan first = TimedPlan.of(problem, BenchPlans.FIRST);
        List<TimedPlan> looks = new ArrayList<>();
        for (int proof : options.efforts()) {
            looks.add(TimedPlan.of(problem, new Effort(size.isLarge() ? PLANS_OF_LARGE : PLANS, 1, proof)));
            if (looks.getLast().proven()) {
                break;
            }
        }
        return new Row(seed, first, looks, PeakHeap.mebibytes());
    }

    private void print(Row row) {
        out.printf(
                "| %d | %s | %s | %d | %s |%n",
                row.seed(),
                row.first().millisText(),
                joined(" | ", IntStream.range(0, options.efforts().size()).mapToObj(i -> cell(row, i))),
                row.peak(),
                row.verdict());
    }

    private static String cell(Row row, int effort) {
        if (effort >= row.looks().size()) {
            return "proven";
        }
        TimedPlan look = row.looks().get(effort);
        return look.aim().isEmpty()
                ? TimedPlan.NONE
                : String.format(Locale.ROOT, "%s; %.2f", look.aimText(), look.millis() / 1e3);
    }

    private String medians(List<Row> rows) {
        return String.format(
                "Medians: first plan %s ms; %s; gap %s %% at effort %s.",
                Median.millis(rows.stream().map(Row::first)),
                proofs(rows),
                joined(" / ", IntStream.range(0, options.efforts().size()).mapToObj(i -> gap(rows, i))),
                joined(" / ", options.efforts().stream()));
    }

    private static String proofs(List<Row> rows) {
        List<Row> proven = rows.stream().filter(Row::proven).toList();
        String seconds = Median.text(
                "%.2f", proven.stream().map(row -> row.looks().getLast().millis() / 1e3));
        return proven.size() < rows.size()
                ? proven.size() + " of " + rows.size() + " proven"
                        + (proven.isEmpty() ? "" : " (those in " + seconds + " s)")
                : "all proven, in " + seconds + " s";
    }

    private static String gap(List<Row> rows, int effort) {
        return Median.text("%.1f", rows.stream().flatMap(row -> row.gapPercent(effort).stream()));
    }

    private void legend() {
        out.printf(
                Locale.ROOT,
                "An effort counts units of the solver's work, each about a second of one processor. Before the proof the search "
                        + "builds %,d plans, %,d for sizes above 120 x 100, so that it does not eat the time. The seconds are those "
                        + "measured, for search and proof at that effort alone; what is proven at one effort is not tried at the "
                        + "greater ones. The gap is how much of its value a better plan could save at the most. Peak heap is the most "
                        + "memory Java had in use for the row, with what was not yet collected; the solver's own memory lies outside "
                        + "the heap. 'checked' is the independent checker's verdict on every plan of the row.%n%n",
                PLANS,
                PLANS_OF_LARGE);
    }
}
