package org.firmset.plan.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.Problems.problem;

import org.firmset.plan.Layout;
import org.firmset.plan.LeastWait;
import org.firmset.plan.Planner;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Problems;
import org.firmset.plan.Stop;
import org.firmset.plan.search.ConstructivePlanner;
import org.junit.jupiter.api.Test;

class ClashTest {
    private static final Planner PLANNER = new ConstructivePlanner();

    private static Clash clash(PlanningProblem problem) {
        return Clash.of(PLANNER, problem, Clash.EFFORT, new Stop()).orElseThrow();
    }

    private static Problems weekends() {
        return problem().trip("one", "2027-05-01", 2).trip("two", "2027-05-08", 2);
    }

    @Test
    void a_cure_longer_than_the_season_clashes_with_nothing_but_the_open_dates() {
        Clash clash = clash(weekends()
                .stage("pour", 8)
                .stage("strip", 8)
                .stage("paint", 8, s -> s.crew(2))
                .wait("pour", "strip", 28)
                .build());
        assertThat(clash.rules()).containsExactly(new Restriction(Kind.LEAST_WAIT, "pour-strip"));
        assertThat(clash.minimal()).isTrue();
        assertThat(clash.remedies()).isEqualTo(clash.rules());
    }

    @Test
    void bags_that_fit_neither_the_dry_room_nor_the_vehicle_are_told_by_room_vehicle_and_pour() {
        Clash clash = clash(problem()
                .trip("one", "2027-05-01", 2)
                .dryStorage(400_000)
                .material("bag", m -> m.dry())
                .stage("pour", 16, s -> s.layout(Layout.IN_ONE_GO).needs("bag", 80))
                .stage("level", 8)
                .build());
        assertThat(clash.rules()).contains(Restriction.of(Kind.VEHICLES));
        assertThat(clash.rules()).noneMatch(r -> r.kind() == Kind.PIN || r.kind() == Kind.HOURS);
        assertThat(clash.minimal()).isTrue();
        assertThat(clash.remedies()).contains(Restriction.of(Kind.VEHICLES));
    }

    @Test
    void a_least_and_a_longest_wait_that_contradict_each_other_are_both_named() {
        Clash clash = clash(weekends()
                .stage("pour", 8)
                .stage("cut", 8)
                .wait("pour", "cut", new LeastWait.Days(7), 2)
                .build());
        assertThat(clash.rules())
                .containsExactlyInAnyOrder(
                        new Restriction(Kind.LONGEST_WAIT, "pour-cut"), new Restriction(Kind.LEAST_WAIT, "pour-cut"));
        assertThat(clash.remedies()).isEqualTo(clash.rules());
        assertThat(clash.cheapest()).contains(new Restriction(Kind.LONGEST_WAIT, "pour-cut"));
    }

    @Test
    void two_clashes_side_by_side_have_no_single_remedy() {
        Clash clash = clash(weekends()
                .stage("pour", 8)
                .stage("strip", 8)
                .wait("pour", "strip", 28)
                .stage("cast", 8)
                .stage("lift", 8)
                .wait("cast", "lift", 28)
                .build());
        assertThat(clash.rules()).hasSize(1);
        assertThat(clash.remedies()).isEmpty();
    }

    @Test
    void a_problem_with_a_plan_has_no_clash() {
        assertThat(Clash.of(PLANNER, weekends().stage("dig", 8).build(), Clash.EFFORT, new Stop()))
                .isEmpty();
    }
}
