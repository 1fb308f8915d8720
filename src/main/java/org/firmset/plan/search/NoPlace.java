package org.firmset.plan.search;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.firmset.plan.Obstacle;
import org.firmset.plan.Reason;
import org.firmset.plan.Rule;
import org.firmset.plan.Stage;

/** Names what stood in the way when no plan was found. */
final class NoPlace {
    private final Model model;

    NoPlace(Model model) {
        this.model = model;
    }

    /**
     * What stood in the way of the stages that found no place in the best draft.
     *
     * @param impossible whether it is proven that no plan has a place for all
     */
    List<Obstacle> of(Draft draft, Builder builder, Genes genes, boolean impossible) {
        WhyNot whyNot = new WhyNot(draft, builder, genes);
        List<Obstacle> result = new ArrayList<>();
        for (int s : draft.unplaced) {
            boolean first = model.before.get(s).stream().allMatch(l -> draft.isSettled(l.from));
            if (first) {
                result.add(of(s, draft, builder.earliest(s, draft), whyNot));
            }
        }
        if (impossible) {
            result.addFirst(new Obstacle(
                    result.getFirst().rule(),
                    result.stream().flatMap(o -> o.stages().stream()).toList(),
                    true,
                    Obstacle.SUMMARY));
        }
        return result;
    }

    private Obstacle of(int s, Draft draft, int fromEpoch, WhyNot whyNot) {
        int from = model.dayFrom(fromEpoch);
        if (from >= model.dayCount()) {
            return tooLate(s, fromEpoch);
        }
        Map<Rule, Integer> held = new EnumMap<>(Rule.class);
        for (int day = from; day < model.dayCount(); day++) {
            held.merge(rule(whyNot.onDay(s, day)), 1, Integer::sum);
        }
        String counts = held.entrySet().stream()
                .sorted(Map.Entry.<Rule, Integer>comparingByValue().reversed())
                .map(e -> inWords(e.getKey()) + " on " + e.getValue())
                .collect(Collectors.joining(", "));
        Rule most = held.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(Rule.HOURS);
        return obstacle(
                most,
                s,
                "In the best one found, %d of %d stages have a place, and from %s on this one is kept out by: %s of %d"
                        + " site days.",
                model.stageCount - draft.unplaced.size(),
                model.stageCount,
                LocalDate.ofEpochDay(fromEpoch),
                counts,
                model.dayCount() - from);
    }

    private Obstacle tooLate(int s, int fromEpoch) {
        return obstacle(
                Rule.WAITS,
                s,
                "In the best one found it could start on %s at the soonest, because of what comes before it.",
                LocalDate.ofEpochDay(fromEpoch));
    }

    private Obstacle obstacle(Rule rule, int s, String why, Object... arguments) {
        Stage stage = model.stage(s);
        String message = String.format(
                Locale.ROOT,
                "No plan was found in which %s is finished by the last open date %s. %s Add open dates or people, or"
                        + " leave stages for later.",
                stage.name(),
                model.days.getLast().date(),
                String.format(Locale.ROOT, why, arguments));
        return new Obstacle(rule, List.of(stage.id()), false, message);
    }

    private static String inWords(Rule rule) {
        return switch (rule) {
            case LABOUR -> "what has begun";
            case WAITS -> "waits";
            case HOURS -> "hours";
            case CREW -> "too few people";
            case SHUT -> "season or weather";
            case POWER -> "power";
            case RUNS -> "vehicles";
            case SUPPLIES -> "materials that cannot be there";
            case PINNED -> "its pin";
            case TOOLS -> "tools in use";
            case MONEY -> "the limit to what is spent in a month";
        };
    }

    private static Rule rule(Reason reason) {
        return switch (reason) {
            case Reason.Waiting w -> Rule.WAITS;
            case Reason.Held h -> Rule.PINNED;
            case Reason.ShutThen s -> Rule.SHUT;
            case Reason.CrewShort c -> Rule.CREW;
            case Reason.PowerShort p -> Rule.POWER;
            case Reason.NotOnSite n -> Rule.SUPPLIES;
            case Reason.ToolTaken t -> Rule.TOOLS;
            case Reason.MoneyShort m -> Rule.MONEY;
            case Reason.Begun b -> Rule.LABOUR;
            case Reason.FirstSiteDay f -> Rule.HOURS;
            case Reason.HoursTaken h -> Rule.HOURS;
            case Reason.TripNotMade t -> Rule.HOURS;
            case Reason.NoGain n -> Rule.LABOUR;
        };
    }
}
