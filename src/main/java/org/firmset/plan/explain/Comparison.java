package org.firmset.plan.explain;

import static java.util.Comparator.comparing;
import static java.util.Comparator.comparingLong;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.StageStory;

/**
 * What is different between two plans.
 *
 * @param finishes one for each subproject of either plan, those that do not move included; new and gone ones first, then
 *     the one that moves most
 * @param tripsBefore trips that are made
 * @param centsBefore what all of it costs
 * @param stages those that moved, are new or are gone; new and gone ones first, then those whose finish, and after that
 *     whose start, moves most
 */
public record Comparison(
        List<FinishMove> finishes,
        int tripsBefore,
        int tripsAfter,
        long centsBefore,
        long centsAfter,
        List<StageMove> stages) {

    public Comparison {
        finishes = List.copyOf(finishes);
        stages = List.copyOf(stages);
    }

    public static Comparison of(SeasonPlan before, SeasonPlan after) {
        return new Comparison(
                finishes(before, after),
                before.totals().trips(),
                after.totals().trips(),
                before.totals().cents(),
                after.totals().cents(),
                stages(before, after));
    }

    private static List<FinishMove> finishes(SeasonPlan before, SeasonPlan after) {
        Set<String> subprojects = new TreeSet<>(before.finishes().keySet());
        subprojects.addAll(after.finishes().keySet());
        return subprojects.stream()
                .map(id -> new FinishMove(
                        id, before.finishes().get(id), after.finishes().get(id)))
                .sorted(comparingLong((FinishMove m) -> weight(m.days())).reversed())
                .toList();
    }

    private static List<StageMove> stages(SeasonPlan before, SeasonPlan after) {
        Map<String, StageStory> was = stories(before);
        Map<String, StageStory> is = stories(after);
        Set<String> ids = new LinkedHashSet<>(was.keySet());
        ids.addAll(is.keySet());
        return ids.stream()
                .map(id -> StageMove.of(id, was.get(id), is.get(id)))
                .filter(Comparison::moved)
                .sorted(heaviestFirst())
                .toList();
    }

    private static Map<String, StageStory> stories(SeasonPlan plan) {
        Map<String, StageStory> stories = new LinkedHashMap<>();
        plan.stories().forEach(s -> stories.put(s.stage(), s));
        return stories;
    }

    private static boolean moved(StageMove move) {
        return !Objects.equals(move.startBefore(), move.startAfter())
                || !Objects.equals(move.finishBefore(), move.finishAfter());
    }

    private static Comparator<StageMove> heaviestFirst() {
        return comparingLong((StageMove m) -> weight(m.finishDays()))
                .thenComparingLong(m -> weight(m.startDays()))
                .reversed()
                .thenComparing(comparing(StageMove::stage));
    }

    /** What has no days to compare, being new or gone, weighs more than any number of them. */
    private static long weight(OptionalLong days) {
        return days.isPresent() ? Math.abs(days.getAsLong()) : Long.MAX_VALUE;
    }
}
