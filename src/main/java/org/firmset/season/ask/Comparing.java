package org.firmset.season.ask;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.SpendingLimit;
import org.firmset.measure.Cash;
import org.firmset.plan.Former;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.PlannedHomestead;
import org.firmset.season.result.PlannedSeason;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.words.StyleWords;

/** Finds the plan that the plan now is set side by side with. */
public final class Comparing {
    private static final String NOW = "Now";
    private static final String BEFORE = "Before";

    private Comparing() {}

    /**
     * Plans the homestead in another style.
     *
     * @param former where an earlier plan had the stages, for the style that keeps to it
     * @param stop gives up; what is answered then is worth nothing
     */
    public static Compared withStyle(
            Homestead homestead, PlannedSeason now, Style style, List<Former> former, Stop stop) {
        if (style == Style.LEAST_CHANGE && former.isEmpty()) {
            return new Compared.Nothing("No plan before is known that the least change could be counted from.");
        }
        SeasonPlanner.Result result = new SeasonPlanner()
                .plan(
                        homestead,
                        now.problem().statusDate(),
                        style,
                        style == Style.LEAST_CHANGE ? former : List.of(),
                        Answers.LOOK,
                        (built, of) -> {},
                        stop);
        return switch (result) {
            case SeasonPlanner.Result.NoPlan none ->
                new Compared.Nothing("No plan was found in the style '" + StyleWords.of(style) + "'.");
            case SeasonPlanner.Result.Planned other ->
                new Compared.Plans(
                        SideBySide.of(
                                named(NOW, now.report()),
                                named(StyleWords.of(style), other.season().report())),
                        List.of(("The plan for '%s' comes of a shorter look; choose that style and it is looked for"
                                        + " longer.")
                                .formatted(StyleWords.of(style).toLowerCase(Locale.ROOT))));
        };
    }

    /**
     * Plans the homestead with another limit to what a month may take.
     *
     * @param stop gives up; what is answered then is worth nothing
     */
    public static Compared withLimit(Homestead homestead, PlannedSeason now, SpendingLimit limit, Stop stop) {
        Homestead limited = homestead.withSpendingLimit(limit);
        SeasonPlanner.Result result = new SeasonPlanner()
                .plan(
                        limited,
                        now.problem().statusDate(),
                        now.plan().style(),
                        List.of(),
                        Answers.LOOK,
                        (built, of) -> {},
                        stop);
        String asked = words(limit);
        return switch (result) {
            case SeasonPlanner.Result.NoPlan none ->
                new Compared.Nothing("No plan was found with %s: %s"
                        .formatted(asked, none.obstacles().getFirst().message()));
            case SeasonPlanner.Result.Planned other ->
                new Compared.Plans(
                        SideBySide.of(
                                named(NOW, now.report()),
                                named(capital(asked), other.season().report())),
                        List.of(
                                "The plan with the limit comes of a shorter look; write the limit on Place and kit and it is"
                                        + " looked for longer.",
                                "The limit counts drives, packs, deliveries and fuel; tax, tools and permits come on top."),
                        Optional.of(new PlannedHomestead(limited, other.season())));
        };
    }

    /** "at most $900.00 a month, kept as far as it can be". */
    public static String words(SpendingLimit limit) {
        return "at most %s a month, %s"
                .formatted(
                        Cash.show(
                                Cash.cents(limit.aMonth()),
                                limit.aMonth().getCurrency().getCurrencyCode()),
                        limit.firm() ? "whatever it takes" : "kept as far as it can be");
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** With the plan before the last change; which change moved what is found by planning each. */
    public static Compared withBefore(PlannedSeason now, PlannedSeason before, Stop stop) {
        return new Compared.Plans(
                beforeAndNow(before.report(), now.report()),
                Answers.to(new Question.Causes(), now, Optional.of(before), stop));
    }

    /** With a plan of which only the report is kept. */
    public static Compared withBefore(SeasonReport now, SeasonReport before) {
        return new Compared.Plans(
                beforeAndNow(before, now),
                List.of("Which change moved what is only known until the program is ended."));
    }

    static SideBySide beforeAndNow(SeasonReport before, SeasonReport now) {
        return SideBySide.of(named(BEFORE, before), named(NOW, now));
    }

    private static SideBySide.Named named(String name, SeasonReport report) {
        return new SideBySide.Named(name, report);
    }
}
