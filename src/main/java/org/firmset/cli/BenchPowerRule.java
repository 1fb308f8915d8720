package org.firmset.cli;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.firmset.plan.Effort;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.PowerSupply;
import org.firmset.plan.SeasonPlan;

/**
 * What looking after the battery hour by hour costs the planner. The same problems are planned with a battery so large that it
 * never limits anything, which the rule has to find out each time, and with stages that draw nothing, where there is nothing
 * to find out. Both come to the same plan, so the difference is the rule.
 */
final class BenchPowerRule {
    private static final int ROUNDS = 9;
    private static final Effort EFFORT = new Effort(400, 1, 0);
    private static final PowerSupply GREAT = new PowerSupply(1_000_000_000, 95, 97, PowerSupply.Generator.NONE);

    private final PrintStream out;

    BenchPowerRule(PrintStream out) {
        this.out = out;
    }

    void run() {
        out.println();
        out.println("| stages x weekends | with the rule ms | without ms | share of the rule | same plan |");
        out.println("|---|---|---|---|---|");
        row(12, 16);
        row(40, 40);
        row(120, 100);
    }

    private void row(int stages, int weekends) {
        PlanningProblem problem = BenchSeason.problem(stages, weekends, 1);
        PlanningProblem with = problem.withSite(problem.site().withPower(GREAT));
        PlanningProblem without = with.withStages(
                problem.stages().stream().map(s -> s.withWattHoursPerHour(0)).toList());
        List<Double> ruled = new ArrayList<>();
        List<Double> free = new ArrayList<>();
        boolean same = true;
        for (int round = 0; round < ROUNDS; round++) {
            TimedPlan one = TimedPlan.of(with, EFFORT);
            TimedPlan other = TimedPlan.of(without, EFFORT);
            same &= one.plan().map(SeasonPlan::schedule).equals(other.plan().map(SeasonPlan::schedule));
            if (round > 0) {
                ruled.add(one.millis());
                free.add(other.millis());
            }
        }
        double a = Median.of(ruled);
        double b = Median.of(free);
        out.printf(
                Locale.ROOT,
                "| %d x %d | %.1f | %.1f | %.0f %% | %s |%n",
                stages,
                weekends,
                a,
                b,
                100 * (a - b) / a,
                same ? "yes" : "no");
    }
}
