package org.firmset.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan that keeps every hard rule, with its figures and reasons.
 *
 * @param finishes for each subproject that has stages: the date its last stage is finished
 * @param stories one for each stage, in the order of the problem
 * @param paths one for each subproject with work left, the one that finishes last first
 */
public record SeasonPlan(
        LocalDate statusDate,
        Style style,
        Schedule schedule,
        Map<String, LocalDate> finishes,
        Totals totals,
        Aim aim,
        Bound bound,
        List<StageStory> stories,
        List<CriticalPath> paths) {
    public SeasonPlan {
        finishes = Map.copyOf(finishes);
        stories = List.copyOf(stories);
        paths = List.copyOf(paths);
    }

    /** The date on which the last subproject is finished. */
    public Optional<LocalDate> finish() {
        return finishes.values().stream().max(LocalDate::compareTo);
    }

    public Optional<StageStory> story(String stage) {
        return stories.stream().filter(s -> s.stage().equals(stage)).findFirst();
    }
}
