package org.firmset.season.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.measure.Hours;
import org.firmset.plan.CriticalPath;
import org.firmset.plan.LeastWait;
import org.firmset.plan.Material;
import org.firmset.plan.PathLink;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Reason;
import org.firmset.plan.Stage;
import org.firmset.plan.Tool;
import org.firmset.plan.Wait;
import org.firmset.season.words.Dates;

/** Says in plain words what a plan gives as reasons. The only place where they are put into English. */
final class Sentences {
    private static final LeastWait NO_WAIT = new LeastWait.Days(0);

    private final Map<String, Stage> stages;
    private final Map<String, Wait> waits;
    private final Map<String, Material> materials;
    private final Map<String, Tool> tools;

    Sentences(PlanningProblem problem) {
        stages = byId(problem.stages(), Stage::id);
        waits = byId(problem.waits(), Wait::id);
        materials = byId(problem.materials(), Material::id);
        tools = byId(problem.tools(), Tool::id);
    }

    private static <T> Map<String, T> byId(List<T> parts, Function<T, String> id) {
        return parts.stream().collect(Collectors.toMap(id, Function.identity()));
    }

    String whyNotSooner(Reason reason) {
        return switch (reason) {
            case Reason.Begun r -> "Work on it began on " + Dates.day(r.on()) + ".";
            case Reason.FirstSiteDay r -> Dates.day(r.date()) + " is the first open date.";
            case Reason.Waiting r -> waiting(r);
            case Reason.Held r -> "It is pinned to its date: " + r.why().replaceAll("\\.$", "") + ".";
            case Reason.ShutThen r -> "Not on " + Dates.day(r.sooner()) + ": " + r.why() + ".";
            case Reason.CrewShort r ->
                "On %s only %d of the %d people it needs are there."
                        .formatted(Dates.day(r.sooner()), r.present(), r.needed());
            case Reason.HoursTaken r -> hoursTaken(r);
            case Reason.PowerShort r ->
                "On %s the battery would not last: it would need %,d Wh more."
                        .formatted(Dates.day(r.sooner()), r.neededWattHours());
            case Reason.NotOnSite r ->
                "%s cannot be on site by %s: vehicles are full, the dry room is, or it is not to be had yet."
                        .formatted(named(materials, r.material(), Material::name), Dates.day(r.sooner()));
            case Reason.ToolTaken r ->
                "On %s %s is in use%s."
                        .formatted(
                                Dates.day(r.sooner()),
                                named(tools, r.tool(), Tool::name),
                                r.byStages().isEmpty()
                                        ? ""
                                        : " by "
                                                + r.byStages().stream()
                                                        .map(this::stageName)
                                                        .collect(Collectors.joining(", ")));
            case Reason.MoneyShort r ->
                "On %s it would take more than the month may spend.".formatted(Dates.day(r.sooner()));
            case Reason.TripNotMade r ->
                "The trip of %s is left out: nothing would finish sooner by it.".formatted(Dates.day(r.sooner()));
            case Reason.NoGain r ->
                "It could start on %s, but nothing would finish sooner by that.".formatted(Dates.day(r.sooner()));
        };
    }

    private String waiting(Reason.Waiting reason) {
        Wait wait = waits.get(reason.waitId());
        String before = stageName(reason.stageBefore());
        return wait == null || wait.least().equals(NO_WAIT)
                ? "%s has to be finished first, on %s.".formatted(before, Dates.day(reason.ready()))
                : "%s after %s is over on %s.".formatted(wait.name(), before, Dates.day(reason.ready()));
    }

    private String hoursTaken(Reason.HoursTaken reason) {
        String by = reason.byStages().isEmpty()
                ? "too short a day"
                : "taken by " + reason.byStages().stream().map(this::stageName).collect(Collectors.joining(", "));
        return "The hours of %s are %s; %s is left."
                .formatted(Dates.day(reason.sooner()), by, new Hours(reason.leftQuarters()));
    }

    String stageName(String id) {
        return named(stages, id, Stage::name);
    }

    private static <T> String named(Map<String, T> parts, String id, Function<T, String> name) {
        T part = parts.get(id);
        return part == null ? id : name.apply(part);
    }

    List<String> story(CriticalPath path) {
        List<String> result = new ArrayList<>();
        for (PathLink link : path.links()) {
            result.add(link(link));
        }
        return result;
    }

    private String link(PathLink link) {
        return switch (link) {
            case PathLink.Work w ->
                w.from().equals(w.to())
                        ? "%s on %s.".formatted(stageName(w.stage()), Dates.day(w.from()))
                        : "%s from %s to %s.".formatted(stageName(w.stage()), begun(w), Dates.day(w.to()));
            case PathLink.Waiting w ->
                "%s until %s, %s."
                        .formatted(
                                named(waits, w.waitId(), Wait::name),
                                Dates.day(w.to()),
                                days(w.to().toEpochDay() - w.from().toEpochDay()));
            case PathLink.Gap g -> gap(g);
        };
    }

    private static String begun(PathLink.Work work) {
        return work.from().getYear() == work.to().getYear() ? Dates.day(work.from()) : Dates.date(work.from());
    }

    private static String days(long count) {
        return count == 1 ? "1 day" : count + " days";
    }

    private String gap(PathLink.Gap gap) {
        String until = "Then it waits until " + Dates.day(gap.to());
        return switch (gap.why()) {
            case Reason.Waiting w -> until + ", the next trip.";
            case Reason.FirstSiteDay f -> "The first open date is " + Dates.day(gap.to()) + ".";
            case Reason reason -> until + ". " + whyNotSooner(reason);
        };
    }
}
