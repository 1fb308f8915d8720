package org.firmset.cli;

import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.firmset.plan.Effort;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Progress;
import org.firmset.plan.Stop;
import org.firmset.plan.search.ConstructivePlanner;

/** How cost grows with the size of a homestead. */
final class BenchGrowth {
    private final PrintStream out;
    private final BenchOptions options;

    BenchGrowth(PrintStream out, BenchOptions options) {
        this.out = out;
        this.options = options;
    }

    /** Times the plans as the search tells of them: the first call to the last, so that preparing is not counted. */
    private static final class Watch implements Progress {
        private int plans;
        private long first;
        private long last;

        @Override
        public void built(int built, int inAll) {
            last = System.nanoTime();
            first = plans == 0 ? last : first;
            plans++;
        }

        Optional<Double> millisEach() {
            return plans < 2 ? Optional.empty() : Optional.of((last - first) / 1e6 / (plans - 1));
        }
    }

    private record Cost(TimedPlan first, Optional<Double> millisEach) {}

    /** Whether every plan keeps the rules. */
    boolean run() {
        out.printf(
                "### How cost grows: medians over the seeds 1 to %d, %d plans each%n%n",
                options.seeds(), Effort.NORMAL.plans());
        out.println("| stages x weekends | first plan ms | ms for each plan built |");
        out.println("|---|---|---|");
        boolean keep = true;
        for (BenchOptions.Size size : options.sizes()) {
            keep &= row(size);
        }
        out.println();
        return keep;
    }

    private boolean row(BenchOptions.Size size) {
        List<Cost> costs = IntStream.rangeClosed(1, options.seeds())
                .mapToObj(seed -> cost(BenchSeason.problem(size.stages(), size.weekends(), seed)))
                .toList();
        out.printf(
                "| %s | %s | %s |%n",
                size,
                Median.millis(costs.stream().map(Cost::first)),
                Median.text("%.3f", costs.stream().flatMap(c -> c.millisEach().stream())));
        return costs.stream().noneMatch(c -> c.first().breaks());
    }

    private static Cost cost(PlanningProblem problem) {
        Watch watch = new Watch();
        TimedPlan first = TimedPlan.of(problem, BenchPlans.FIRST);
        new ConstructivePlanner().plan(problem, Effort.NORMAL, watch, new Stop());
        return new Cost(first, watch.millisEach());
    }
}
