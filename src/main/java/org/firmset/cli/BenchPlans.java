package org.firmset.cli;

import java.io.PrintStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.plan.Effort;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Style;
import org.firmset.season.problem.ProblemWriter;

/** firmset bench plan: how long planning takes and how far proofs go, as Markdown tables. */
final class BenchPlans {
    /** The least that gives a plan with its reasons, slack and critical paths. */
    static final Effort FIRST = new Effort(1, 1, 0);

    private static final int WARM = 20;
    /** Seeds from here on only warm up. */
    private static final long NOT_MEASURED = 1_000_000;

    private static final List<Style> STYLES = List.of(Style.SOONEST, Style.FEWEST_TRIPS, Style.LEAST_MONEY);

    private final PrintStream out;
    private final BenchOptions options;

    BenchPlans(PrintStream out, BenchOptions options) {
        this.out = out;
        this.options = options;
    }

    /** Done when every plan keeps the rules. */
    int run() {
        warmUp();
        boolean keep = true;
        for (BenchOptions.Part part : options.parts()) {
            keep &= switch (part) {
                case SIZES -> new BenchSizes(out, options).run();
                case STYLES -> styles();
                case EDITS -> new BenchEdits(out, options.seeds()).run();
                case GROWTH -> new BenchGrowth(out, options).run();
            };
        }
        return keep ? Commands.DONE : Commands.REFUSED;
    }

    /** Planning is measured as it is after start-up: compiled, and with the solver's library at hand. */
    private static void warmUp() {
        for (int seed = 1; seed <= WARM; seed++) {
            TimedPlan.of(BenchSeason.problem(40, 40, NOT_MEASURED + seed), Effort.NORMAL);
        }
        TimedPlan.of(BenchSeason.problem(12, 16, NOT_MEASURED), Effort.NORMAL.withProof(1));
    }

    private static PlanningProblem demo(Style style) {
        LocalDate date = LocalDate.of(2027, 3, 1);
        return ProblemWriter.write(SeedHomesteads.demo(date), date, style);
    }

    private boolean styles() {
        out.printf(
                Locale.ROOT,
                "### Demo homestead, %,d plans and proof of effort %d%n%n",
                Effort.THOROUGH.plans(),
                Effort.THOROUGH.proof());
        out.println("| style | value / bound, gap % | ms | checked |");
        out.println("|---|---|---|---|");
        STYLES.forEach(style -> TimedPlan.of(demo(style), Effort.NORMAL));
        List<TimedPlan> plans = new ArrayList<>();
        for (Style style : STYLES) {
            TimedPlan plan = TimedPlan.of(demo(style), Effort.THOROUGH);
            plans.add(plan);
            out.printf("| %s | %s | %s | %s |%n", words(style), plan.aimText(), plan.millisText(), plan.verdict());
        }
        out.printf(
                Locale.ROOT,
                "| together | | %.1f | |%n%n",
                plans.stream().mapToDouble(TimedPlan::millis).sum());
        return plans.stream().noneMatch(TimedPlan::breaks);
    }

    private static String words(Style style) {
        return style.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
