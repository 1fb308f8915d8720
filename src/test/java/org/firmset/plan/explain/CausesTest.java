package org.firmset.plan.explain;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.firmset.plan.Effort;
import org.firmset.plan.LeastWait;
import org.firmset.plan.Outcome;
import org.firmset.plan.Planner;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Problems;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Stop;
import org.firmset.plan.search.ConstructivePlanner;
import org.junit.jupiter.api.Test;

class CausesTest {
    private static final Effort EFFORT = new Effort(30, 1);
    private static final Planner PLANNER = new ConstructivePlanner();

    /** Trips of 32 quarter-hours a fortnight apart. */
    private static Problems trips() {
        return Problems.problem()
                .trip("first", "2027-05-08", 1)
                .trip("second", "2027-05-22", 1)
                .trip("third", "2027-06-05", 1)
                .trip("fourth", "2027-06-19", 1);
    }

    private static SeasonPlan plan(PlanningProblem problem) {
        return ((Outcome.Planned) PLANNER.plan(problem, EFFORT)).plan();
    }

    private static Causes causes(Problems before, Problems after) {
        return causes(before, after, PLANNER, new Stop());
    }

    private static Causes causes(Problems before, Problems after, Planner planner, Stop stop) {
        PlanningProblem was = before.build();
        return Causes.of(planner, EFFORT, was, plan(was), after.build(), stop);
    }

    private static Cause cause(Causes causes, String change) {
        return causes.causes().stream()
                .filter(c -> c.change().toString().equals(change))
                .findFirst()
                .orElseThrow();
    }

    private static Effect effect(Trial trial) {
        return ((Trial.Planned) trial).effect();
    }

    @Test
    void tells_the_stage_that_grew_from_the_change_that_moves_nothing() {
        Problems before = trips().stage("walls", 32).stage("porch", 16).wait("walls", "porch", 3);
        Problems after = trips().stage("walls", 64).stage("porch", 16).wait("walls", "porch", 4);

        Causes causes = causes(before, after);

        Cause grown = cause(causes, "STAGE_CHANGED walls");
        assertThat(effect(grown.alone()).days()).isEqualTo(Map.of("cabin", 14L));
        assertThat(effect(grown.alone()).trips()).isEqualTo(1);
        assertThat(effect(grown.alone()).cents()).isEqualTo(10_000);
        assertThat(effect(grown.without()).isNone()).isTrue();
        assertThat(causes.addedBy(grown)).hasValue(effect(grown.alone()));
        Cause wait = cause(causes, "WAIT_CHANGED walls-porch");
        assertThat(effect(wait.alone()).isNone()).isTrue();
        assertThat(effect(wait.without()).days()).isEqualTo(Map.of("cabin", 14L));
        assertThat(requireNonNull(causes.together()).isNone()).isTrue();
        assertThat(causes.again().isNone()).isTrue();
        assertThat(causes.notTried()).isEmpty();
    }

    @Test
    void eight_hours_more_take_a_trip_more() {
        Causes causes = causes(trips().stage("walls", 32), trips().stage("walls", 64));

        assertThat(requireNonNull(causes.whole()).days()).isEqualTo(Map.of("cabin", 14L));
        assertThat(causes.causes())
                .singleElement()
                .satisfies(c -> assertThat(effect(c.alone())).isEqualTo(causes.whole()));
    }

    @Test
    void what_only_two_changes_do_is_told_as_done_together() {
        Problems before = trips().stage("walls", 12).stage("porch", 12);
        Problems after = trips().stage("walls", 18).stage("porch", 18);

        Causes causes = causes(before, after);

        assertThat(causes.causes()).hasSize(2).allSatisfy(c -> {
            assertThat(effect(c.alone()).isNone()).isTrue();
            assertThat(effect(c.without()).isNone()).isTrue();
            assertThat(causes.addedBy(c)).hasValue(requireNonNull(causes.whole()));
        });
        assertThat(causes.together()).isEqualTo(causes.whole());
        assertThat(requireNonNull(causes.together()).days()).isEqualTo(Map.of("cabin", 14L));
    }

    @Test
    void what_either_of_two_changes_does_is_taken_off_again() {
        Problems before = trips().stage("walls", 32);
        Problems after = trips().stage("walls", 40).stage("porch", 8);

        Causes causes = causes(before, after);

        assertThat(causes.causes())
                .hasSize(2)
                .allSatisfy(c -> assertThat(effect(c.alone()).daysOf("cabin")).isEqualTo(14));
        assertThat(requireNonNull(causes.together()).daysOf("cabin")).isEqualTo(-14);
    }

    @Test
    void a_stage_that_is_gone_gives_its_trip_back() {
        Problems before = trips().stage("walls", 32).stage("porch", 8).wait("walls", "porch", 7);

        Causes causes = causes(before, trips().stage("walls", 32));

        assertThat(effect(cause(causes, "STAGE_GONE porch").alone()).days()).isEqualTo(Map.of("cabin", -14L));
    }

    @Test
    void says_which_change_cannot_stand_alone_or_be_left_out() {
        Problems before = Problems.problem().trip("a", "2027-05-08", 1).trip("b", "2027-05-22", 1);
        Problems after = Problems.problem().trip("a", "2027-05-22", 1).trip("b", "2027-06-05", 1);

        Causes causes = causes(before.stage("walls", 40), after.stage("walls", 40));

        assertThat(cause(causes, "TRIP_CHANGED a").alone()).isEqualTo(new Trial.Refused());
        assertThat(cause(causes, "TRIP_CHANGED b").without()).isEqualTo(new Trial.Refused());
        assertThat(effect(cause(causes, "TRIP_CHANGED b").alone()).daysOf("cabin"))
                .isEqualTo(14);
    }

    @Test
    void a_trip_on_a_date_that_no_table_of_a_cure_knows_cannot_stand_alone() {
        Problems before =
                Problems.problem().trip("a", "2027-05-01", 1).stage("slab", 8).stage("walls", 8);
        before.wait("slab", "walls", new LeastWait.ByFinishDate(Problems.STATUS_DATE, List.of(0)), 90);
        Problems after = Problems.problem().trip("a", "2027-05-01", 1).trip("b", "2027-05-03", 1);
        after.stage("slab", 8).stage("walls", 8);
        after.wait("slab", "walls", new LeastWait.ByFinishDate(Problems.STATUS_DATE, List.of(2, 2, 2)), 90);

        Causes causes = causes(before, after);

        assertThat(cause(causes, "TRIP_ADDED b").alone()).isEqualTo(new Trial.Refused());
        assertThat(cause(causes, "TRIP_ADDED b").without()).isEqualTo(new Trial.NoPlan());
    }

    @Test
    void says_which_change_leaves_no_plan() {
        Causes causes = causes(
                trips().stage("walls", 8).stage("porch", 8),
                trips().stage("walls", 8, s -> s.crew(3)).stage("porch", 16));

        assertThat(causes.whole()).isNull();
        assertThat(causes.together()).isNull();
        assertThat(cause(causes, "STAGE_CHANGED walls").alone()).isEqualTo(new Trial.NoPlan());
        assertThat(effect(cause(causes, "STAGE_CHANGED walls").without()).isNone())
                .isTrue();
        assertThat(cause(causes, "STAGE_CHANGED porch").without()).isEqualTo(new Trial.NoPlan());
    }

    @Test
    void tries_so_many_changes_and_lists_the_others() {
        Problems before = trips();
        Problems after = trips();
        for (int i = 0; i < Causes.MOST_TRIED + 3; i++) {
            before.stage("stage" + i, 1).material("material" + i);
            after.stage("stage" + i, 2).material("material" + i);
        }

        Causes causes = causes(before, after);

        assertThat(causes.causes()).hasSize(Causes.MOST_TRIED);
        assertThat(causes.notTried()).extracting(ProblemChange::id).containsExactly("stage40", "stage41", "stage42");
    }

    @Test
    void stops_between_changes() {
        Problems before = trips().stage("walls", 8).stage("porch", 8).stage("roof", 8);
        Problems after = trips().stage("walls", 9).stage("porch", 9).stage("roof", 9);
        Stop stop = new Stop();
        int[] planned = {0};
        Planner stopping = (problem, effort, progress, given) -> {
            if (++planned[0] == 5) {
                stop.stop();
            }
            return PLANNER.plan(problem, effort, progress, given);
        };

        Causes causes = causes(before, after, stopping, stop);

        assertThat(planned[0]).isEqualTo(5);
        assertThat(causes.whole()).isNotNull();
        assertThat(causes.causes()).hasSize(1);
        assertThat(causes.notTried()).hasSize(2);
    }

    @Test
    void the_same_question_has_the_same_answer() {
        Problems before = trips().stage("walls", 32).stage("porch", 8);
        Problems after = trips().stage("walls", 40).stage("porch", 9).stage("roof", 12);

        assertThat(causes(before, after)).isEqualTo(causes(before, after));
    }
}
