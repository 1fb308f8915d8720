package org.firmset.season.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Subproject;
import org.firmset.plan.explain.Cause;
import org.firmset.plan.explain.Causes;
import org.firmset.plan.explain.ChangeKind;
import org.firmset.plan.explain.Effect;
import org.firmset.plan.explain.ProblemChange;
import org.firmset.plan.explain.Trial;
import org.firmset.season.words.Dates;

/** Says which change moved what. */
final class CauseWords {
    private final PlanningProblem before;
    private final PlanningProblem after;

    CauseWords(PlanningProblem before, PlanningProblem after) {
        this.before = before;
        this.after = after;
    }

    List<String> sentences(Causes causes) {
        List<String> result = new ArrayList<>();
        for (Cause cause : causes.causes()) {
            String what = change(cause.change());
            switch (cause.alone()) {
                case Trial.Planned alone ->
                    result.add(
                            alone.effect().isNone()
                                    ? what + ": moves nothing by itself."
                                    : what + ": " + effect(alone.effect()) + ".");
                case Trial.NoPlan none -> result.add(what + ": by itself leaves no plan.");
                case Trial.Refused refused -> result.add(what + ": cannot be tried by itself.");
            }
        }
        if (result.isEmpty()) {
            result.add("Nothing was changed since the plan before.");
        }
        if (causes.together() != null && !causes.together().isNone()) {
            result.add("What no change explains by itself: " + effect(causes.together()) + ".");
        }
        if (!causes.again().isNone()) {
            result.add("Planning the same once more, without any change: " + effect(causes.again()) + ".");
        }
        if (!causes.notTried().isEmpty()) {
            result.add(causes.notTried().size() + " further changes were not tried.");
        }
        return result;
    }

    private String effect(Effect effect) {
        List<String> parts = new ArrayList<>();
        effect.days().forEach((id, days) -> {
            if (days != 0) {
                parts.add(subproject(id) + " " + days(Math.abs(days)) + (days > 0 ? " later" : " sooner"));
            }
        });
        if (effect.trips() != 0) {
            int trips = Math.abs(effect.trips());
            parts.add(trips + (trips == 1 ? " trip " : " trips ") + (effect.trips() > 0 ? "more" : "less"));
        }
        if (parts.isEmpty()) {
            parts.add(effect.cents() > 0 ? "dearer" : "cheaper");
        }
        return String.join(", ", parts);
    }

    private static String days(long days) {
        return days == 1 ? "1 day" : days + " days";
    }

    private String subproject(String id) {
        return named(PlanningProblem::subprojects, Subproject::id, Subproject::name, id);
    }

    /** As it is called now, or was called before it went. */
    private <T> String named(
            java.util.function.Function<PlanningProblem, List<T>> parts,
            java.util.function.Function<T, String> key,
            java.util.function.Function<T, String> name,
            String id) {
        return Stream.of(after, before)
                .flatMap(p -> parts.apply(p).stream())
                .filter(part -> key.apply(part).equals(id))
                .map(name)
                .findFirst()
                .orElse(id);
    }

    private String change(ProblemChange change) {
        String id = change.id();
        return switch (change.kind()) {
            case TIME_WENT_ON -> "Time went on";
            case TRIP_ADDED -> "Trip of " + trip(id) + " added";
            case TRIP_GONE -> "Trip of " + trip(id) + " gone";
            case TRIP_CHANGED -> "Trip of " + trip(id) + " changed";
            case STAGE_ADDED -> stage(id) + " added";
            case STAGE_GONE -> stage(id) + " gone";
            case STAGE_CHANGED -> stage(id) + " changed";
            case WAIT_ADDED -> "Wait " + wait(id) + " added";
            case WAIT_GONE -> "Wait " + wait(id) + " gone";
            case WAIT_CHANGED -> "Wait " + wait(id) + " changed";
            case PINS_CHANGED -> "Pin of " + stage(id) + " changed";
            case DRY_STORAGE_CHANGED -> "Room that stays dry changed";
            case POWER_CHANGED -> "Power changed";
            case STOCK_CHANGED -> "Stock on site changed";
            case SPENDING_CHANGED -> "Spending limit changed";
            case TOOL_ADDED, TOOL_GONE, TOOL_CHANGED ->
                named(PlanningProblem::tools, t -> t.id(), t -> t.name(), id) + verb(change.kind());
            case OFFER_ADDED, OFFER_GONE, OFFER_CHANGED ->
                "Delivery by " + named(PlanningProblem::offers, o -> o.id(), o -> o.name(), id) + verb(change.kind());
            case SUBPROJECT_ADDED, SUBPROJECT_GONE, SUBPROJECT_CHANGED -> subproject(id) + verb(change.kind());
            case MATERIAL_ADDED, MATERIAL_GONE, MATERIAL_CHANGED ->
                named(PlanningProblem::materials, m -> m.id(), m -> m.name(), id) + verb(change.kind());
            case WRITTEN_OTHERWISE -> "The rest, said in another way";
        };
    }

    private static String verb(ChangeKind kind) {
        String name = kind.name();
        return name.endsWith("_ADDED") ? " added" : name.endsWith("_GONE") ? " gone" : " changed";
    }

    private String stage(String id) {
        return named(PlanningProblem::stages, s -> s.id(), s -> s.name(), id);
    }

    private String wait(String id) {
        return named(PlanningProblem::waits, w -> w.id(), w -> w.name(), id);
    }

    private String trip(String id) {
        return Stream.of(after, before)
                .flatMap(p -> p.trips().stream())
                .filter(t -> t.id().equals(id))
                .map(t -> Dates.span(t.firstDate(), t.lastDate()))
                .findFirst()
                .or(() -> Optional.of(id))
                .orElseThrow();
    }
}
