package org.firmset.plan.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.firmset.plan.LeastWait;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Problems;
import org.firmset.plan.Wait;
import org.junit.jupiter.api.Test;

class ProblemChangesTest {

    private static List<String> words(PlanningProblem before, PlanningProblem after) {
        return ProblemChanges.between(before, after).stream()
                .map(ProblemChange::toString)
                .toList();
    }

    private static PlanningProblem from(String statusDate, PlanningProblem problem) {
        PlanningProblem.Parts draft = new PlanningProblem.Parts(problem);
        draft.statusDate = LocalDate.parse(statusDate);
        return draft.build();
    }

    @Test
    void a_stage_goes_with_its_waits_and_pins() {
        Problems before =
                Problems.problem().trip("may", "2027-05-08", 2).stage("slab", 8).stage("walls", 8);
        before.wait("slab", "walls", 7).pin("slab", "2027-05-08").former("slab", "2027-05-08", "2027-05-08");
        PlanningProblem after = Problems.problem()
                .trip("may", "2027-05-08", 2)
                .stage("walls", 8)
                .build();

        assertThat(words(before.build(), after)).containsExactly("STAGE_GONE slab");
    }

    @Test
    void a_stage_comes_with_its_waits_and_what_it_needs() {
        PlanningProblem before = Problems.problem()
                .trip("may", "2027-05-08", 2)
                .stage("walls", 8)
                .build();
        Problems after = Problems.problem().trip("may", "2027-05-08", 2).stage("slab", 8, s -> s.needs("bags", 4));
        after.stage("walls", 8).wait("slab", "walls", 7).material("bags");

        List<ProblemChange> changes = ProblemChanges.between(before, after.build());

        assertThat(changes)
                .extracting(ProblemChange::toString)
                .containsExactly("MATERIAL_ADDED bags", "STAGE_ADDED slab");
        assertThat(changes.getLast().applyTo(before)).isEqualTo(after.build());
    }

    @Test
    void work_that_is_done_is_part_of_time_going_on() {
        PlanningProblem before = Problems.problem()
                .trip("2027-05-08", "2027-05-08", 2)
                .trip("2027-05-22", "2027-05-22", 2)
                .material("bags")
                .stage("slab", 40, s -> s.needs("bags", 10))
                .build();
        PlanningProblem after = from(
                "2027-05-09",
                Problems.problem()
                        .trip("2027-05-09", "2027-05-09", 1, t -> t.quarters(24))
                        .trip("2027-05-22", "2027-05-22", 2)
                        .material("bags")
                        .stock("bags", 2, "2027-05-08")
                        .stage("slab", 20, s -> s.needs("bags", 5).startedOn("2027-05-08"))
                        .build());

        assertThat(words(before, after)).containsExactly("TIME_WENT_ON");
    }

    @Test
    void another_estimate_is_told_apart_from_work_that_is_done() {
        Problems before = Problems.problem()
                .trip("a", "2027-05-08", 1)
                .trip("b", "2027-05-22", 1)
                .stage("slab", 40);
        Problems after =
                Problems.problem().trip("b", "2027-05-22", 1).stage("slab", 48, s -> s.startedOn("2027-05-08"));

        assertThat(words(before.build(), from("2027-05-09", after.build())))
                .containsExactly("TIME_WENT_ON", "STAGE_CHANGED slab");
    }

    @Test
    void shut_dates_of_a_new_trip_are_no_change_of_the_stage() {
        PlanningProblem before = Problems.problem()
                .trip("a", "2027-05-08", 1)
                .stage("paint", 8, s -> s.shut("2027-05-08", "2027-05-08", "it is cold"))
                .build();
        PlanningProblem after = Problems.problem()
                .trip("a", "2027-05-08", 1)
                .trip("b", "2027-05-10", 1)
                .trip("c", "2027-05-22", 1)
                .stage("paint", 8, s -> s.shut("2027-05-08", "2027-05-10", "it is cold"))
                .build();

        assertThat(words(before, after)).containsExactly("TRIP_ADDED b", "TRIP_ADDED c", "WRITTEN_OTHERWISE");
    }

    @Test
    void a_table_of_a_cure_that_begins_later_is_no_change_of_the_wait() {
        Problems before =
                Problems.problem().trip("a", "2027-05-08", 1).stage("slab", 8).stage("walls", 8);
        before.wait("slab", "walls", new LeastWait.ByFinishDate(LocalDate.parse("2027-05-01"), days(9, 9, 8, 8)), 40);
        Problems after =
                Problems.problem().trip("a", "2027-05-08", 1).stage("slab", 8).stage("walls", 8);
        after.wait("slab", "walls", new LeastWait.ByFinishDate(LocalDate.parse("2027-05-03"), days(8, 8, 7)), 40);

        assertThat(words(before.build(), from("2027-05-03", after.build())))
                .containsExactly("TIME_WENT_ON", "WRITTEN_OTHERWISE");
    }

    @Test
    void a_finish_that_is_recorded_on_the_same_day_takes_the_days_of_its_cure_along() {
        Problems before =
                Problems.problem().trip("a", "2027-05-08", 1).stage("slab", 8).stage("walls", 8);
        before.wait("slab", "walls", new LeastWait.ByFinishDate(LocalDate.parse("2027-05-01"), days(9, 9, 8, 8)), 40);
        Problems after = Problems.problem().trip("a", "2027-05-08", 1);
        after.stage("slab", 0, s -> s.finishedOn("2027-04-30")).stage("walls", 8);
        after.wait("slab", "walls", new LeastWait.Days(10), 40);

        assertThat(words(before.build(), after.build())).containsExactly("STAGE_CHANGED slab");
    }

    private static List<Integer> days(Integer... days) {
        return List.of(days);
    }

    @Test
    void a_trip_that_starts_a_day_sooner_is_a_changed_trip() {
        PlanningProblem before =
                Problems.problem().trip("2027-05-08", "2027-05-08", 2).build();
        PlanningProblem after =
                Problems.problem().trip("2027-05-07", "2027-05-07", 3).build();

        assertThat(words(before, after)).containsExactly("TRIP_CHANGED 2027-05-07");
    }

    @Test
    void trips_that_change_places_can_do_so() {
        PlanningProblem before = Problems.problem()
                .trip("a", "2027-05-08", 2)
                .trip("b", "2027-05-22", 2)
                .build();
        PlanningProblem after = Problems.problem()
                .trip("b", "2027-05-08", 2)
                .trip("a", "2027-05-22", 2)
                .build();

        assertThat(words(before, after)).containsExactly("TRIP_GONE a", "TRIP_CHANGED b", "TRIP_ADDED a");
    }

    @Test
    void a_wait_is_a_change_of_its_own_between_stages_that_stay() {
        Problems before = Problems.problem().stage("slab", 8).stage("walls", 8).wait("slab", "walls", 7);
        Problems after = Problems.problem().stage("slab", 8).stage("walls", 8);
        after.wait("slab", "walls", new LeastWait.Days(9), Wait.NO_LIMIT);

        assertThat(words(before.build(), after.build())).containsExactly("WAIT_CHANGED slab-walls");
    }

    @Test
    void tells_every_limit_that_changed() {
        Problems before = Problems.problem().stage("slab", 8).tool("mixer", 1).spending(100_000, true);
        Problems after = Problems.problem().stage("slab", 8).tool("mixer", 2);
        after.dryStorage(5).battery(5).pin("slab", "2027-05-08");

        assertThat(words(before.build(), after.build()))
                .containsExactly(
                        "TOOL_CHANGED mixer",
                        "PINS_CHANGED slab",
                        "DRY_STORAGE_CHANGED",
                        "POWER_CHANGED",
                        "SPENDING_CHANGED");
    }
}
