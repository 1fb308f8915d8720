package org.firmset.season.result;

import java.util.Optional;
import org.firmset.plan.Style;
import org.firmset.trade.takeoff.cutting.SolverLibrary;

/** Says how good a plan is proven to be. */
public final class Proof {
    private Proof() {}

    /** One sentence, with what matters most in this style. */
    public static String of(SeasonReport report) {
        SeasonReport.Best best = report.best();
        return best.proven() ? "Proven: " + unbeaten(report.style()) + "." : atMost(report.style(), best);
    }

    /** What is to be said where the solver's library is missing; empty where it is there. */
    public static Optional<String> withoutSolver() {
        return SolverLibrary.isThere()
                ? Optional.empty()
                : Optional.of(
                        "The solver's library is not there, or not wanted: plans are made without it, and only simple"
                                + " bounds are proven.");
    }

    private static String unbeaten(Style style) {
        return switch (style) {
            case SOONEST -> "no plan finishes sooner, all subprojects weighed by their priority";
            case FEWEST_TRIPS -> "no plan makes do with fewer trips";
            case LEAST_MONEY -> "no plan costs less";
            case LEAST_CHANGE -> "no plan moves the stages by fewer days";
        };
    }

    private static String atMost(Style style, SeasonReport.Best best) {
        String percent = best.gapPercent().toPlainString() + " %";
        return switch (style) {
            case SOONEST ->
                "Proven: no plan is sooner by more than " + percent
                        + " of the days to its finishes, weighed by priority.";
            case FEWEST_TRIPS -> "Proven: no plan saves more than " + percent + " of the trips.";
            case LEAST_MONEY -> "Proven: no plan saves more than " + percent + " of the money.";
            case LEAST_CHANGE -> "Proven: no plan saves more than " + percent + " of the days that stages are moved.";
        };
    }
}
