package org.firmset.plan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.search.PublishedPaths.days;
import static org.firmset.plan.search.PublishedPaths.slack;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.firmset.plan.PathLink;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.StageStory;
import org.firmset.plan.WorkBlock;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The planner finds the published critical paths and slacks of {@link PublishedPaths}. */
class PublishedPathsTest {
    private static List<String> stagesOnPath(SeasonPlan plan) {
        List<String> stages = new ArrayList<>();
        plan.paths().getFirst().links().forEach(link -> {
            if (link instanceof PathLink.Work work) {
                stages.add(work.stage());
            }
        });
        return stages;
    }

    /** The published slack of some stages; that of all others is 0. */
    private static Map<String, Integer> published(SeasonPlan plan, Map<String, Integer> published) {
        Map<String, Integer> expected = new HashMap<>(published);
        plan.stories().forEach(s -> expected.putIfAbsent(s.stage(), 0));
        return expected;
    }

    @Test
    @DisplayName("PM-01: critical path by nodes; university lecture example (I. Odeh, Columbia), verified from its"
            + " transcript, 'total float' of B, D, E, G by arithmetic")
    void lecture_example_by_nodes() {
        SeasonPlan plan = PublishedPaths.lecture();
        assertThat(days(plan)).isEqualTo(21);
        assertThat(stagesOnPath(plan)).containsExactly("a", "c", "f", "h", "i");
        assertThat(slack(plan)).isEqualTo(published(plan, Map.of("b", 2, "d", 12, "e", 2, "g", 6)));
    }

    @Test
    @DisplayName("PM-02: critical path by arrows with a dummy; university notes (sites.pitt.edu/~jrclass/or/webnotes"
            + "/cpm3.html), verified; slack from their late event times 0 4 12 18 21 33 53")
    void university_notes_by_arrows() {
        SeasonPlan plan = PublishedPaths.notes();
        assertThat(days(plan)).isEqualTo(53);
        assertThat(stagesOnPath(plan)).containsExactly("one-two", "two-three", "three-five", "five-six", "six-seven");
        assertThat(slack(plan)).isEqualTo(published(plan, Map.of("two-four", 7, "two-five", 11, "four-six", 6)));
    }

    @Test
    @DisplayName("PM-03: critical path of a small building job; Hendrickson, Project Management for Construction,"
            + " ch. 10, activity table from memory, result by arithmetic")
    void small_building_job() {
        SeasonPlan plan = PublishedPaths.building();
        assertThat(days(plan)).isEqualTo(30);
        assertThat(stagesOnPath(plan)).containsExactly("a", "c", "f", "i");
        assertThat(slack(plan)).isEqualTo(published(plan, Map.of("b", 9, "d", 11, "e", 1, "g", 1, "h", 4)));
    }

    @Test
    @DisplayName("PM-04: a 3-day cure between two stages ('lag' there); US Navy construction manual"
            + " (constructionmanuals.tpub.com/14233/css/14233_44.htm), verified")
    void the_stage_after_a_cure_starts_three_days_after_the_finish() {
        SeasonPlan plan = PublishedPaths.cure();
        StageStory pour = plan.story("pour").orElseThrow();
        StageStory strip = plan.story("strip").orElseThrow();
        assertThat(strip.start()).isEqualTo(pour.finish().plusDays(3));
        assertThat(plan.schedule().blocks().stream()
                        .mapToInt(WorkBlock::quarters)
                        .sum())
                .as("labour; the wait is none")
                .isEqualTo(3 * PublishedPaths.DAY);
        assertThat(plan.paths().getFirst().links())
                .containsExactly(
                        new PathLink.Work("pour", pour.start(), pour.finish()),
                        new PathLink.Waiting("pour-strip", pour.finish(), strip.start()),
                        new PathLink.Work("strip", strip.start(), strip.finish()));
        assertThat(slack(plan)).isEqualTo(Map.of("pour", 0, "strip", 0));
    }
}
