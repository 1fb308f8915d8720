package org.firmset.plan.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.Problems.problem;
import static org.firmset.plan.Schedules.schedule;
import static org.firmset.plan.check.Verdicts.breaches;
import static org.firmset.plan.check.Verdicts.keepsEveryRule;

import java.time.LocalDate;
import java.util.List;
import org.firmset.plan.LeastWait;
import org.firmset.plan.Problems;
import org.firmset.plan.Rule;
import org.firmset.plan.Schedules;
import org.firmset.plan.Wait;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class WaitRulesTest {
    private final Problems problem = problem()
            .trip("may", "2027-05-01", 4)
            .trip("june", "2027-06-05", 2)
            .stage("slab", 20)
            .stage("walls", 20);

    private static Schedules slabAndWalls(String slab, String walls) {
        return schedule()
                .block("slab", slab, 10)
                .block("slab", "2027-05-01", 10)
                .block("walls", walls, 20);
    }

    @Test
    void no_wait_at_all_allows_the_same_date() {
        problem.wait("slab", "walls", 0);
        keepsEveryRule(problem, slabAndWalls("2027-05-02", "2027-05-02"));
    }

    @Test
    void work_may_go_on_as_soon_as_the_wait_is_over() {
        problem.wait("slab", "walls", 2);
        keepsEveryRule(problem, slabAndWalls("2027-05-02", "2027-05-04"));
    }

    @Test
    void a_wait_runs_on_between_the_trips() {
        problem.wait("slab", "walls", 34);
        keepsEveryRule(problem, slabAndWalls("2027-05-02", "2027-06-05"));
    }

    @Test
    void a_table_is_read_at_the_date_of_the_finish() {
        LeastWait cure = new LeastWait.ByFinishDate(LocalDate.parse("2027-05-01"), List.of(9, 2));
        problem.wait("slab", "walls", cure, Wait.NO_LIMIT);
        keepsEveryRule(problem, slabAndWalls("2027-05-02", "2027-05-04"));
    }

    @Test
    void a_table_knows_its_first_date_and_its_last() {
        LeastWait one = new LeastWait.ByFinishDate(LocalDate.parse("2027-05-02"), List.of(2));
        problem.wait("slab", "walls", one, Wait.NO_LIMIT);
        keepsEveryRule(problem, slabAndWalls("2027-05-02", "2027-05-04"));
    }

    @Test
    void the_stage_after_may_start_on_the_last_day_of_the_longest_wait() {
        problem.wait("slab", "walls", new LeastWait.Days(0), 34);
        keepsEveryRule(problem, slabAndWalls("2027-05-02", "2027-06-05"));
    }

    @Test
    void only_the_start_has_to_keep_the_longest_wait() {
        problem.wait("slab", "walls", new LeastWait.Days(0), 1);
        keepsEveryRule(
                problem,
                schedule()
                        .block("slab", "2027-05-01", 20)
                        .block("walls", "2027-05-02", 5)
                        .block("walls", "2027-06-05", 15));
    }

    @Test
    void a_stage_that_had_started_keeps_any_longest_wait() {
        Problems resumed = problem()
                .trip("june", "2027-06-05", 2)
                .stage("slab", 0, s -> s.finishedOn("2027-04-20"))
                .stage("walls", 20, s -> s.startedOn("2027-04-25"))
                .wait("slab", "walls", new LeastWait.Days(0), 1);
        keepsEveryRule(resumed, schedule().block("walls", "2027-06-05", 20));
    }

    @Test
    void a_stage_that_was_begun_on_the_status_date_started_then() {
        Problems begun = problem()
                .trip("may", "2027-05-01", 3)
                .stage("slab", 0, s -> s.finishedOn("2027-04-30"))
                .stage("walls", 20, s -> s.startedOn("2027-05-01"))
                .wait("slab", "walls", new LeastWait.Days(0), 1);
        keepsEveryRule(begun, schedule().block("walls", "2027-05-03", 20));
    }

    @Test
    void what_is_recorded_as_finished_is_never_judged() {
        Problems done = problem()
                .trip("may", "2027-05-01", 2)
                .stage("slab", 20)
                .stage("walls", 0, s -> s.finishedOn("2027-04-20"))
                .wait("slab", "walls", new LeastWait.Days(7), 9);
        keepsEveryRule(done, schedule().block("slab", "2027-05-01", 20));
    }

    @Test
    void a_wait_runs_from_a_recorded_finish() {
        Problems begun = problem()
                .trip("may", "2027-05-01", 2)
                .stage("slab", 0, s -> s.finishedOn("2027-04-24"))
                .stage("walls", 20)
                .wait("slab", "walls", 7);
        keepsEveryRule(begun, schedule().block("walls", "2027-05-01", 20));
    }

    @Nested
    class Refuses {
        private void breaksOnlyWaits(Schedules schedule, String... words) {
            Verdicts.breaksOnly(Rule.WAITS, problem, schedule, words);
        }

        @Test
        void work_before_the_stage_before_has_ended() {
            problem.wait("slab", "walls", 0);
            breaksOnlyWaits(slabAndWalls("2027-05-03", "2027-05-02"), "[Walls]", "2027-05-02", "[Slab]", "2027-05-03");
        }

        @Test
        void work_one_day_before_the_wait_is_over() {
            problem.wait("slab", "walls", 3);
            breaksOnlyWaits(
                    slabAndWalls("2027-05-02", "2027-05-04"),
                    "[Walls] works on 2027-05-04",
                    "[Slab] finishes on 2027-05-02",
                    "[Slab-walls] then takes 3 days");
        }

        @Test
        void work_one_day_before_a_wait_between_the_trips_is_over() {
            problem.wait("slab", "walls", 35);
            breaksOnlyWaits(slabAndWalls("2027-05-02", "2027-06-05"), "[Walls]", "2027-06-05", "then takes 35 days");
        }

        @Test
        void one_early_block_among_later_ones() {
            problem.wait("slab", "walls", 2);
            breaksOnlyWaits(
                    schedule()
                            .block("slab", "2027-05-01", 20)
                            .block("walls", "2027-06-05", 15)
                            .block("walls", "2027-05-02", 5),
                    "[Walls] works on 2027-05-02",
                    "then takes 2 days");
        }

        @Test
        void an_early_block_of_a_stage_that_had_started() {
            Problems resumed = problem()
                    .trip("may", "2027-05-01", 2)
                    .stage("slab", 0, s -> s.finishedOn("2027-04-28"))
                    .stage("walls", 20, s -> s.startedOn("2027-04-29"))
                    .wait("slab", "walls", 7);
            Verdicts.breaksOnly(
                    Rule.WAITS,
                    resumed,
                    schedule().block("walls", "2027-05-01", 20),
                    "2027-04-28",
                    "then takes 7 days");
        }

        @Test
        void work_that_ignores_the_table_of_waits() {
            LeastWait cure = new LeastWait.ByFinishDate(LocalDate.parse("2027-05-01"), List.of(1, 3, 1));
            problem.wait("slab", "walls", cure, Wait.NO_LIMIT);
            breaksOnlyWaits(slabAndWalls("2027-05-02", "2027-05-04"), "[Slab-walls] then takes 3 days");
        }

        @Test
        void a_finish_after_the_table_of_waits_ends() {
            LeastWait cure = new LeastWait.ByFinishDate(LocalDate.parse("2027-05-01"), List.of(1));
            problem.wait("slab", "walls", cure, Wait.NO_LIMIT);
            breaksOnlyWaits(
                    slabAndWalls("2027-05-02", "2027-06-05"), "[Slab-walls]", "finish on 2027-05-02", "2027-06-05");
        }

        @Test
        void a_finish_before_the_table_of_waits_begins() {
            LeastWait cure = new LeastWait.ByFinishDate(LocalDate.parse("2027-05-03"), List.of(1, 1, 1));
            problem.wait("slab", "walls", cure, Wait.NO_LIMIT);
            breaksOnlyWaits(slabAndWalls("2027-05-02", "2027-06-05"), "[Slab-walls]", "finish on 2027-05-02");
        }

        @Test
        void a_start_one_day_after_the_longest_wait() {
            problem.wait("slab", "walls", new LeastWait.Days(0), 33);
            breaksOnlyWaits(
                    slabAndWalls("2027-05-02", "2027-06-05"),
                    "[Walls] starts on 2027-06-05",
                    "34 days after",
                    "[Slab] finishes on 2027-05-02",
                    "[Slab-walls] may last only 33 days");
        }

        @Test
        void work_after_a_stage_that_is_never_done() {
            problem.wait("slab", "walls", 0);
            assertThat(breaches(problem, schedule().block("walls", "2027-05-01", 20)))
                    .satisfiesExactly(
                            slab -> assertThat(slab.rule()).isEqualTo(Rule.LABOUR),
                            wait -> assertThat(wait)
                                    .isEqualTo(new Breach(
                                            Rule.WAITS,
                                            "Stage [Walls] works on 2027-05-01"
                                                    + " but stage [Slab] before it has no block and is not finished")));
        }
    }
}
