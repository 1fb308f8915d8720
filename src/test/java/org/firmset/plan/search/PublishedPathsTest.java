package org.firmset.plan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.Problems.problem;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.firmset.plan.Effort;
import org.firmset.plan.Layout;
import org.firmset.plan.LeastWait;
import org.firmset.plan.Outcome;
import org.firmset.plan.PathLink;
import org.firmset.plan.Problems;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.StageStory;
import org.firmset.plan.Wait;
import org.firmset.plan.WorkBlock;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Networks with published results, planned on one long trip with hours for everything, so that only order and duration
 * count. A stage of n days takes one hour on each of n days that follow each other; what comes after it starts on the
 * next day, which is a wait of one calendar day.
 */
class PublishedPathsTest {
    private static final int DAY = 4;

    private final Problems problem = problem().trip("season", "2027-05-01", 70, t -> t.quarters(100));

    private void stage(String id, int days, String... after) {
        problem.stage(id, days * DAY, s -> s.layout(Layout.UNBROKEN_DAYS).mostBlock(DAY));
        for (String before : after) {
            problem.wait(before, id, 1);
        }
    }

    private SeasonPlan plan() {
        Outcome outcome = new ConstructivePlanner().plan(problem.build(), new Effort(20, 1));
        assertThat(outcome).isInstanceOf(Outcome.Planned.class);
        return ((Outcome.Planned) outcome).plan();
    }

    private static long days(SeasonPlan plan) {
        return ChronoUnit.DAYS.between(Problems.STATUS_DATE, plan.finish().orElseThrow()) + 1;
    }

    private static List<String> stagesOnPath(SeasonPlan plan) {
        List<String> stages = new ArrayList<>();
        plan.paths().getFirst().links().forEach(link -> {
            if (link instanceof PathLink.Work work) {
                stages.add(work.stage());
            }
        });
        return stages;
    }

    private static Map<String, Integer> slack(SeasonPlan plan) {
        return plan.stories().stream().collect(Collectors.toMap(StageStory::stage, StageStory::slackDays));
    }

    /** The published slack of some stages; that of all others is 0. */
    private static Map<String, Integer> slack(SeasonPlan plan, Map<String, Integer> published) {
        Map<String, Integer> expected = new HashMap<>(published);
        plan.stories().forEach(s -> expected.putIfAbsent(s.stage(), 0));
        return expected;
    }

    @Test
    @DisplayName("PM-01: critical path by nodes; university lecture example (I. Odeh, Columbia), verified from its"
            + " transcript, 'total float' of B, D, E, G by arithmetic")
    void lecture_example_by_nodes() {
        stage("a", 2);
        stage("b", 5, "a");
        stage("c", 9, "a");
        stage("d", 3, "a");
        stage("e", 6, "b");
        stage("f", 4, "b", "c");
        stage("g", 2, "c", "d");
        stage("h", 4, "e", "f");
        stage("i", 2, "g", "h");
        SeasonPlan plan = plan();
        assertThat(days(plan)).isEqualTo(21);
        assertThat(stagesOnPath(plan)).containsExactly("a", "c", "f", "h", "i");
        assertThat(slack(plan)).isEqualTo(slack(plan, Map.of("b", 2, "d", 12, "e", 2, "g", 6)));
    }

    @Test
    @DisplayName("PM-02: critical path by arrows with a dummy; university notes (sites.pitt.edu/~jrclass/or/webnotes"
            + "/cpm3.html), verified; slack from their late event times 0 4 12 18 21 33 53")
    void university_notes_by_arrows() {
        stage("one-two", 4);
        stage("two-three", 8, "one-two");
        stage("two-four", 7, "one-two");
        stage("two-five", 6, "one-two");
        stage("three-five", 9, "two-three");
        stage("four-six", 15, "two-four", "two-three");
        stage("five-six", 12, "two-five", "three-five");
        stage("six-seven", 20, "four-six", "five-six");
        SeasonPlan plan = plan();
        assertThat(days(plan)).isEqualTo(53);
        assertThat(stagesOnPath(plan)).containsExactly("one-two", "two-three", "three-five", "five-six", "six-seven");
        assertThat(slack(plan)).isEqualTo(slack(plan, Map.of("two-four", 7, "two-five", 11, "four-six", 6)));
    }

    @Test
    @DisplayName("PM-03: critical path of a small building job; Hendrickson, Project Management for Construction,"
            + " ch. 10, activity table from memory, result by arithmetic")
    void small_building_job() {
        stage("a", 4);
        stage("b", 3);
        stage("c", 8, "a");
        stage("d", 7, "a");
        stage("e", 9, "b", "c");
        stage("f", 12, "b", "c");
        stage("g", 2, "d", "e");
        stage("h", 5, "d", "e");
        stage("i", 6, "f", "g");
        SeasonPlan plan = plan();
        assertThat(days(plan)).isEqualTo(30);
        assertThat(stagesOnPath(plan)).containsExactly("a", "c", "f", "i");
        assertThat(slack(plan)).isEqualTo(slack(plan, Map.of("b", 9, "d", 11, "e", 1, "g", 1, "h", 4)));
    }

    @Test
    @DisplayName("PM-04: a 3-day cure between two stages ('lag' there); US Navy construction manual"
            + " (constructionmanuals.tpub.com/14233/css/14233_44.htm), verified")
    void the_stage_after_a_cure_starts_three_days_after_the_finish() {
        stage("pour", 2);
        stage("strip", 1);
        problem.wait("pour", "strip", new LeastWait.Days(3), Wait.NO_LIMIT);
        SeasonPlan plan = plan();
        StageStory pour = plan.story("pour").orElseThrow();
        StageStory strip = plan.story("strip").orElseThrow();
        assertThat(strip.start()).isEqualTo(pour.finish().plusDays(3));
        assertThat(plan.schedule().blocks().stream()
                        .mapToInt(WorkBlock::quarters)
                        .sum())
                .as("labour; the wait is none")
                .isEqualTo(3 * DAY);
        assertThat(plan.paths().getFirst().links())
                .containsExactly(
                        new PathLink.Work("pour", pour.start(), pour.finish()),
                        new PathLink.Waiting("pour-strip", pour.finish(), strip.start()),
                        new PathLink.Work("strip", strip.start(), strip.finish()));
        assertThat(slack(plan)).isEqualTo(Map.of("pour", 0, "strip", 0));
    }
}
