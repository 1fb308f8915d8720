package org.firmset.season.ask;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firmset.measure.Cash;
import org.firmset.plan.Effort;
import org.firmset.plan.Outcome;
import org.firmset.plan.Planner;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.firmset.plan.Subproject;
import org.firmset.plan.explain.Causes;
import org.firmset.plan.explain.OfferWorth;
import org.firmset.plan.explain.TripWorth;
import org.firmset.plan.explain.Unlocks;
import org.firmset.plan.search.ConstructivePlanner;
import org.firmset.season.load.HaulOrBring;
import org.firmset.season.report.RuleWords;
import org.firmset.season.result.PlannedSeason;
import org.firmset.season.words.Dates;
import org.firmset.season.words.StyleWords;

/** Answers what owners ask of a plan, in sentences. Each answer comes of planning again, so it takes a moment. */
public final class Answers {
    static final Effort LOOK = new Effort(600, 1, 1);

    private final Planner planner = new ConstructivePlanner();
    private final PlanningProblem problem;
    private final SeasonPlan plan;
    private final String currency;
    private final Stop stop;
    private final RuleWords words;
    private final PlannedSeason season;

    private Answers(PlannedSeason season, Stop stop) {
        this.season = season;
        problem = season.problem();
        plan = season.plan();
        currency = season.report().costs().total().getCurrency().getCurrencyCode();
        this.stop = stop;
        words = new RuleWords(problem);
    }

    /**
     * At least one sentence.
     *
     * @param earlier the plan before the last change, if it is known
     * @param stop gives up; what is answered then is worth nothing
     */
    public static List<String> to(Question question, PlannedSeason season, Optional<PlannedSeason> earlier, Stop stop) {
        Answers answers = new Answers(season, stop);
        return switch (question) {
            case Question.Finish finish -> answers.finish(finish.subproject());
            case Question.Start start -> answers.start(start.stage());
            case Question.TripWorth worth -> answers.trip(worth.trip());
            case Question.Deliveries deliveries -> answers.deliveries(deliveries.supplier());
            case Question.Causes causes -> answers.causes(earlier);
            case Question.Styles styles -> answers.styles();
        };
    }

    private Unlocks unlocks() {
        return new Unlocks(planner, problem, plan, Unlocks.EFFORT, stop);
    }

    private List<String> finish(String subproject) {
        return unlocks()
                .finish(subproject)
                .map(f -> found(f, "finished by " + Dates.date(f.sooner())))
                .orElse(List.of("It cannot finish sooner: there is no site day before, or nothing is left to do."));
    }

    private List<String> start(String stage) {
        List<String> result = new ArrayList<>(unlocks()
                .start(stage)
                .map(f -> found(f, "begun by " + Dates.date(f.sooner())))
                .orElse(List.of("It cannot start sooner: it has begun, or there is no site day before.")));
        unlocks().latestStart(stage).ifPresent(latest -> result.add(slack(stage, latest)));
        return result;
    }

    private String slack(String stage, LocalDate latest) {
        LocalDate start = plan.story(stage).orElseThrow().start();
        long days = ChronoUnit.DAYS.between(start, latest);
        return days == 0
                ? "It cannot start later without moving a finish."
                : "It could start as late as %s, %s later, and every subproject would still finish on its date."
                        .formatted(Dates.date(latest), days(days));
    }

    private List<String> found(Unlocks.Finding finding, String done) {
        if (finding.possible().isPresent()) {
            return List.of("There is a plan with it " + done
                    + ", all others finishing when they do. Pin it to that date to have it so.");
        }
        List<String> result = new ArrayList<>();
        result.add(
                finding.proven()
                        ? "As things are, no plan has it " + done
                                + " with all others finishing when they do; that is proven."
                        : "No plan was found that has it " + done + " with all others finishing when they do.");
        if (finding.isJoint()) {
            result.add("Nothing that was tried is enough by itself: several causes work together.");
        } else {
            result.add("Each of these alone would be enough:");
            finding.alone().forEach(r -> result.add("• " + words.without(r) + "."));
        }
        return result;
    }

    private List<String> trip(String key) {
        TripWorth worth = TripWorth.of(planner, problem, key, LOOK, stop);
        if (worth.without().isEmpty()) {
            return List.of(
                    worth.proven()
                            ? "Without it there is no plan that finishes everything by the last open date; that is proven."
                            : "Without it no plan was found that finishes everything by the last open date.");
        }
        return changes(worth.without().get(), "Without it everything finishes as soon.");
    }

    private List<String> changes(SeasonPlan without, String none) {
        List<String> result = new ArrayList<>();
        for (Subproject subproject : problem.subprojects()) {
            later(subproject, without).ifPresent(result::add);
        }
        if (result.isEmpty()) {
            result.add(none);
        }
        result.add(tripsAndMoney(without));
        return result;
    }

    private List<String> deliveries(String supplier) {
        List<String> result = new ArrayList<>();
        HaulOrBring.of(season).stream()
                .filter(h -> h.supplier().equals(supplier))
                .map(HaulOrBring::sentence)
                .forEach(result::add);
        boolean taken = plan.schedule().runs().stream().anyMatch(r -> r.offer().equals(supplier));
        if (!taken) {
            result.add("The plan takes no delivery of it, so without them it would stay as it is.");
            return result;
        }
        OfferWorth worth = OfferWorth.of(planner, problem, supplier, LOOK, stop);
        if (worth.without().isEmpty()) {
            result.add(
                    worth.proven()
                            ? "Without its deliveries there is no plan that finishes everything by the last open date; that"
                                    + " is proven."
                            : "Without its deliveries no plan was found that finishes everything by the last open date.");
        } else {
            result.addAll(changes(worth.without().get(), "Without its deliveries everything finishes as soon."));
            result.add("The plan without them comes of a shorter look than the one that is shown.");
        }
        return result;
    }

    private Optional<String> later(Subproject subproject, SeasonPlan without) {
        LocalDate now = plan.finishes().get(subproject.id());
        LocalDate then = without.finishes().get(subproject.id());
        if (now == null || then == null || now.equals(then)) {
            return Optional.empty();
        }
        long days = ChronoUnit.DAYS.between(now, then);
        return Optional.of("Without it %s finishes %s %s, on %s."
                .formatted(subproject.name(), days(Math.abs(days)), days > 0 ? "later" : "sooner", Dates.date(then)));
    }

    private String tripsAndMoney(SeasonPlan without) {
        int trips = without.totals().trips() - plan.totals().trips();
        long cents = without.totals().cents() - plan.totals().cents();
        String more = trips == 0
                ? "It takes as many trips"
                : "It takes " + Math.abs(trips) + (Math.abs(trips) == 1 ? " trip " : " trips ")
                        + (trips > 0 ? "more" : "less");
        String money = cents == 0
                ? " and costs the same."
                : " and costs " + Cash.show(Math.abs(cents), currency) + (cents > 0 ? " more." : " less.");
        return more + money;
    }

    private List<String> styles() {
        List<String> result = new ArrayList<>();
        for (Style style : Style.values()) {
            if (style == plan.style()) {
                result.add(style(plan) + " This is the plan that is shown.");
                continue;
            }
            boolean known = style != Style.LEAST_CHANGE || !problem.former().isEmpty();
            if (known
                    && !stop.isStopped()
                    && planner.plan(problem.withStyle(style), LOOK, (built, of) -> {}, stop)
                            instanceof Outcome.Planned planned) {
                result.add(style(planned.plan()));
            }
        }
        if (result.size() > 1) {
            result.add("The others come of a shorter look; choose one of them and it is looked for longer.");
        }
        return result.isEmpty() ? List.of("No plan was found in any style.") : result;
    }

    private String style(SeasonPlan other) {
        List<String> finishes = problem.subprojects().stream()
                .flatMap(p ->
                        Optional.ofNullable(other.finishes().get(p.id()))
                                .map(f -> p.name() + " " + Dates.day(f))
                                .stream())
                .toList();
        return "%s: %s; %d trips, %s%s."
                .formatted(
                        StyleWords.of(other.style()),
                        String.join(", ", finishes),
                        other.totals().trips(),
                        Cash.show(other.totals().cents(), currency),
                        other.aim().proven() ? ", proven best" : "");
    }

    private List<String> causes(Optional<PlannedSeason> earlier) {
        return earlier.map(before -> new CauseWords(before.problem(), problem)
                        .sentences(Causes.of(planner, LOOK, before.problem(), before.plan(), problem, stop)))
                .orElse(List.of("The plan before the last change is not known any more."));
    }

    private static String days(long days) {
        return days == 1 ? "1 day" : days + " days";
    }
}
