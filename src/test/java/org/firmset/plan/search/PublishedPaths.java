package org.firmset.plan.search;

import static org.firmset.plan.Problems.problem;

import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.stream.Collectors;
import org.firmset.plan.Effort;
import org.firmset.plan.Layout;
import org.firmset.plan.LeastWait;
import org.firmset.plan.Outcome;
import org.firmset.plan.Problems;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.StageStory;
import org.firmset.plan.Wait;

/**
 * Networks with published results, planned on one long trip with hours for everything, so that only order and duration
 * count. A stage of n days takes one hour on each of n days that follow each other; what comes after it starts on the
 * next day, which is a wait of one calendar day.
 */
public final class PublishedPaths {
    static final int DAY = 4;

    private final Problems problem = problem().trip("season", "2027-05-01", 70, t -> t.quarters(100));

    private PublishedPaths() {}

    private PublishedPaths stage(String id, int days, String... after) {
        problem.stage(id, days * DAY, s -> s.layout(Layout.UNBROKEN_DAYS).mostBlock(DAY));
        for (String before : after) {
            problem.wait(before, id, 1);
        }
        return this;
    }

    private SeasonPlan plan() {
        return switch (new ConstructivePlanner().plan(problem.build(), new Effort(20, 1))) {
            case Outcome.Planned planned -> planned.plan();
            case Outcome.NoPlan noPlan ->
                throw new AssertionError(
                        "no plan: " + noPlan.obstacles().getFirst().message());
        };
    }

    /** PM-01. */
    public static SeasonPlan lecture() {
        return new PublishedPaths()
                .stage("a", 2)
                .stage("b", 5, "a")
                .stage("c", 9, "a")
                .stage("d", 3, "a")
                .stage("e", 6, "b")
                .stage("f", 4, "b", "c")
                .stage("g", 2, "c", "d")
                .stage("h", 4, "e", "f")
                .stage("i", 2, "g", "h")
                .plan();
    }

    /** PM-02. */
    public static SeasonPlan notes() {
        return new PublishedPaths()
                .stage("one-two", 4)
                .stage("two-three", 8, "one-two")
                .stage("two-four", 7, "one-two")
                .stage("two-five", 6, "one-two")
                .stage("three-five", 9, "two-three")
                .stage("four-six", 15, "two-four", "two-three")
                .stage("five-six", 12, "two-five", "three-five")
                .stage("six-seven", 20, "four-six", "five-six")
                .plan();
    }

    /** PM-03. */
    public static SeasonPlan building() {
        return new PublishedPaths()
                .stage("a", 4)
                .stage("b", 3)
                .stage("c", 8, "a")
                .stage("d", 7, "a")
                .stage("e", 9, "b", "c")
                .stage("f", 12, "b", "c")
                .stage("g", 2, "d", "e")
                .stage("h", 5, "d", "e")
                .stage("i", 6, "f", "g")
                .plan();
    }

    /** PM-04. */
    public static SeasonPlan cure() {
        PublishedPaths paths = new PublishedPaths().stage("pour", 2).stage("strip", 1);
        paths.problem.wait("pour", "strip", new LeastWait.Days(3), Wait.NO_LIMIT);
        return paths.plan();
    }

    /** Days from the first to the last. */
    public static long days(SeasonPlan plan) {
        return ChronoUnit.DAYS.between(Problems.STATUS_DATE, plan.finish().orElseThrow()) + 1;
    }

    /** Days by which a stage can slip. */
    public static int slack(SeasonPlan plan, String stage) {
        return plan.story(stage).orElseThrow().slackDays();
    }

    static Map<String, Integer> slack(SeasonPlan plan) {
        return plan.stories().stream().collect(Collectors.toMap(StageStory::stage, StageStory::slackDays));
    }
}
