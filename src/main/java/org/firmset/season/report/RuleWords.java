package org.firmset.season.report;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.plan.LeastWait;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Stage;
import org.firmset.plan.Trip;
import org.firmset.plan.Wait;
import org.firmset.plan.explain.Clash;
import org.firmset.plan.explain.Restriction;
import org.firmset.season.words.Dates;

/** Says in plain words which rules stand in the way, and what it would mean to be without them. */
public final class RuleWords {
    private final PlanningProblem problem;
    private final Map<String, String> names;
    private final Map<String, Wait> waits;
    private final Map<String, Trip> trips;

    public RuleWords(PlanningProblem problem) {
        this.problem = problem;
        names = problem.stages().stream().collect(Collectors.toMap(Stage::id, Stage::name));
        waits = problem.waits().stream().collect(Collectors.toMap(Wait::id, Function.identity()));
        trips = problem.trips().stream().collect(Collectors.toMap(Trip::id, Function.identity()));
    }

    /** A clash in one sentence, and what would end it. */
    List<String> clash(Clash clash) {
        String rules = clash.rules().stream().map(this::rule).collect(Collectors.joining("; "));
        String heading = clash.rules().size() == 1
                ? "By the last open date this cannot be kept: " + rules + "."
                : "By the last open date these cannot all be kept: " + rules + ".";
        String proof = clash.minimal() ? " Without any one of them the others can be kept." : "";
        String remedy = clash.remedies().isEmpty()
                ? "No single change is enough: something else clashes as well. End this one first, or add open dates."
                : "Any one of these would be enough: "
                        + clash.remedies().stream().map(this::without).collect(Collectors.joining("; "))
                        + "; or more open dates.";
        String least = clash.remedies().size() < 2
                ? ""
                : clash.cheapest()
                        .map(r -> " What takes the least, by rule of thumb: " + without(r) + ".")
                        .orElse("");
        return List.of(heading + (clash.rules().size() == 1 ? "" : proof), remedy + least);
    }

    /** The rule itself. */
    private String rule(Restriction rule) {
        return switch (rule.kind()) {
            case LEAD_TIME -> material(rule) + " can be had only from a certain date";
            case SHELF_LIFE -> material(rule) + " goes off";
            case SPENDING -> "the limit to what is spent in a month";
            case TOOL -> tool(rule);
            case POWER -> "what battery, sun and generator give";
            case SEASON -> "the dates on which " + stage(rule) + " may be done";
            case CREW -> "the people " + stage(rule) + " needs at once";
            case PIN -> "the pin of " + stage(rule);
            case VEHICLES -> "what the vehicles carry";
            case DRY_ROOM -> "the room that stays dry on site";
            case LONGEST_WAIT -> longest(rule);
            case LEAST_WAIT -> least(rule);
            case IN_ONE_GO -> stage(rule) + ", " + layout(rule);
            case HOURS -> rule.id().isEmpty() ? "the hours of the trips" : "the hours of the trip of " + trip(rule);
            case OTHER_FINISH -> subproject(rule) + " finishing when it does";
        };
    }

    /** What it would be to be without the rule. */
    public String without(Restriction rule) {
        return switch (rule.kind()) {
            case LEAD_TIME -> material(rule) + " being there at once";
            case SHELF_LIFE -> "a " + material(rule) + " that keeps longer";
            case SPENDING -> "more money in a month";
            case TOOL -> rule.id().isEmpty() ? "more tools" : "another " + tool(rule);
            case POWER -> "more power: a larger battery, more panels or a generator";
            case SEASON -> stage(rule) + " at any date, whatever season and weather";
            case CREW -> stage(rule) + " with fewer people at once";
            case PIN -> "taking out the pin of " + stage(rule);
            case VEHICLES -> "vehicles that carry more, or a delivery";
            case DRY_ROOM -> "more room that stays dry on site";
            case LONGEST_WAIT -> rule.id().isEmpty() ? "allowing longer waits" : "allowing more days: " + longest(rule);
            case LEAST_WAIT -> rule.id().isEmpty() ? "shorter waits" : "a shorter wait: " + least(rule);
            case IN_ONE_GO -> "doing " + stage(rule) + " in parts as small as one likes";
            case HOURS ->
                rule.id().isEmpty()
                        ? "more hours on the trips there are"
                        : "more hours, or more people, on the trip of " + trip(rule);
            case OTHER_FINISH ->
                rule.id().isEmpty()
                        ? "letting the other subprojects finish later"
                        : "letting " + subproject(rule) + " finish later";
        };
    }

    private String stage(Restriction rule) {
        return rule.id().isEmpty() ? "the stages" : names.getOrDefault(rule.id(), rule.id());
    }

    private String material(Restriction rule) {
        return problem.materials().stream()
                .filter(m -> m.id().equals(rule.id()))
                .map(m -> m.name())
                .findFirst()
                .orElse("what is needed");
    }

    private String tool(Restriction rule) {
        return problem.tools().stream()
                .filter(t -> t.id().equals(rule.id()))
                .map(t -> t.name())
                .findFirst()
                .orElse("the tools there are");
    }

    private String subproject(Restriction rule) {
        return problem.subprojects().stream()
                .filter(p -> p.id().equals(rule.id()))
                .map(p -> p.name())
                .findFirst()
                .orElse("the others");
    }

    private String trip(Restriction rule) {
        Trip trip = trips.get(rule.id());
        return trip == null ? rule.id() : Dates.span(trip.firstDate(), trip.lastDate());
    }

    private String least(Restriction rule) {
        Wait wait = waits.get(rule.id());
        if (wait == null) {
            return "the waits";
        }
        String days = wait.least() instanceof LeastWait.Days fixed ? ", " + days(fixed.days()) : "";
        return "%s (%s after %s%s)".formatted(name(wait.to()), wait.name(), name(wait.from()), days);
    }

    private String longest(Restriction rule) {
        Wait wait = waits.get(rule.id());
        return wait == null
                ? "the longest waits"
                : "%s at most %s after %s".formatted(name(wait.to()), days(wait.mostDays()), name(wait.from()));
    }

    private String name(String stage) {
        return names.getOrDefault(stage, stage);
    }

    private static String days(int days) {
        return days == 1 ? "1 day" : days + " days";
    }

    private String layout(Restriction rule) {
        return problem.stages().stream()
                .filter(s -> s.id().equals(rule.id()))
                .map(s -> switch (s.layout()) {
                    case IN_ONE_GO -> "all of it on one day";
                    case UNBROKEN_DAYS -> "on days without a gap";
                    case SPLITTABLE -> "in parts no smaller and no larger than it allows";
                })
                .findFirst()
                .orElse("as they have to lie");
    }
}
