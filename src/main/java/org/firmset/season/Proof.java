package org.firmset.season;

import org.firmset.plan.Style;

/** Says how good a plan is proven to be. */
public final class Proof {
    private Proof() {}

    /** One sentence, with what matters most in this style. */
    public static String of(SeasonReport report) {
        SeasonReport.Best best = report.best();
        return best.proven() ? "Proven: " + unbeaten(report.style()) + "." : atMost(report.style(), best);
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
