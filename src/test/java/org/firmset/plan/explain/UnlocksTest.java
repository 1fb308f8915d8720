package org.firmset.plan.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.Problems.problem;

import java.time.LocalDate;
import org.firmset.plan.Effort;
import org.firmset.plan.Layout;
import org.firmset.plan.Outcome;
import org.firmset.plan.Planner;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Problems;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Stop;
import org.firmset.plan.search.ConstructivePlanner;
import org.junit.jupiter.api.Test;

class UnlocksTest {
    private static final Planner PLANNER = new ConstructivePlanner();

    private static Unlocks.Finding finish(PlanningProblem problem) {
        SeasonPlan plan = ((Outcome.Planned) PLANNER.plan(problem, Effort.NORMAL)).plan();
        return new Unlocks(PLANNER, problem, plan, Unlocks.EFFORT, new Stop())
                .finish("cabin")
                .orElseThrow();
    }

    private static Problems weekends() {
        return problem()
                .trip("one", "2027-05-01", 2)
                .trip("two", "2027-05-08", 2)
                .trip("three", "2027-05-15", 2);
    }

    @Test
    void a_cure_that_keeps_a_stage_waiting_is_what_would_have_to_be_shorter() {
        Unlocks.Finding finding = finish(weekends()
                .stage("pour", 8)
                .stage("strip", 8)
                .wait("pour", "strip", 12)
                .build());
        assertThat(finding.sooner()).isEqualTo(LocalDate.parse("2027-05-09"));
        assertThat(finding.proven()).isTrue();
        assertThat(finding.alone()).containsExactly(new Restriction(Kind.LEAST_WAIT, "pour-strip"));
    }

    @Test
    void a_day_that_is_full_needs_more_hours_on_one_of_its_trips() {
        Unlocks.Finding finding = finish(weekends().stage("walls", 70).build());
        assertThat(finding.sooner()).isEqualTo(LocalDate.parse("2027-05-02"));
        assertThat(finding.alone()).containsExactly(new Restriction(Kind.HOURS, "one"));
    }

    @Test
    void a_dead_battery_is_named() {
        Unlocks.Finding finding = finish(
                weekends().battery(1_000).stage("saw", 32, s -> s.draws(250)).build());
        assertThat(finding.alone()).contains(Restriction.of(Kind.POWER));
    }

    @Test
    void a_pour_that_need_not_be_in_one_go_would_fit_in_between() {
        Unlocks.Finding finding = finish(weekends()
                .stage("dig", 20)
                .stage("pour", 24, s -> s.layout(Layout.IN_ONE_GO))
                .stage("rake", 20)
                .wait("dig", "pour", 0)
                .wait("pour", "rake", 0)
                .build());
        assertThat(finding.alone()).contains(new Restriction(Kind.IN_ONE_GO, "pour"));
    }

    @Test
    void what_finishes_on_the_first_day_cannot_be_sooner() {
        PlanningProblem problem = weekends().stage("dig", 8).build();
        SeasonPlan plan = ((Outcome.Planned) PLANNER.plan(problem, Effort.NORMAL)).plan();
        assertThat(new Unlocks(PLANNER, problem, plan, Unlocks.EFFORT, new Stop()).finish("cabin"))
                .isEmpty();
    }

    @Test
    void a_stage_is_asked_by_its_start() {
        PlanningProblem problem = weekends()
                .stage("pour", 8)
                .stage("strip", 40)
                .wait("pour", "strip", 12)
                .build();
        SeasonPlan plan = ((Outcome.Planned) PLANNER.plan(problem, Effort.NORMAL)).plan();
        Unlocks.Finding finding = new Unlocks(PLANNER, problem, plan, Unlocks.EFFORT, new Stop())
                .start("strip")
                .orElseThrow();
        assertThat(finding.sooner()).isEqualTo(LocalDate.parse("2027-05-09"));
        assertThat(finding.alone()).containsExactly(new Restriction(Kind.LEAST_WAIT, "pour-strip"));
    }

    @Test
    void a_trip_is_worth_what_is_lost_without_it() {
        PlanningProblem problem = weekends().stage("walls", 70).build();
        TripWorth worth = TripWorth.of(PLANNER, problem, "two", Effort.NORMAL, new Stop());
        assertThat(worth.without().orElseThrow().finish()).contains(LocalDate.parse("2027-05-15"));
        PlanningProblem two = problem()
                .trip("one", "2027-05-01", 2)
                .trip("two", "2027-05-08", 2)
                .stage("walls", 70)
                .build();
        assertThat(TripWorth.of(PLANNER, two, "two", Effort.NORMAL, new Stop()).proven())
                .isTrue();
    }
}
