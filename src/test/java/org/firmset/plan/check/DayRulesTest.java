package org.firmset.plan.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.Problems.problem;
import static org.firmset.plan.Schedules.schedule;
import static org.firmset.plan.check.Verdicts.breaches;
import static org.firmset.plan.check.Verdicts.breaksOnly;
import static org.firmset.plan.check.Verdicts.keepsEveryRule;

import org.firmset.plan.Problems;
import org.firmset.plan.Rule;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class DayRulesTest {
    private final Problems problem =
            problem().trip("may", "2027-05-01", 3, t -> t.quarters(24).people(2).extraRuns(2, 4));

    @Test
    void a_day_may_be_used_to_its_last_quarter_hour() {
        problem.stage("slab", 10).stage("drain", 14);
        keepsEveryRule(problem, schedule().block("slab", "2027-05-02", 10).block("drain", "2027-05-02", 14));
    }

    @Test
    void extra_runs_leave_the_rest_of_the_first_day() {
        problem.stage("slab", 16);
        keepsEveryRule(
                problem,
                schedule()
                        .block("slab", "2027-05-01", 16)
                        .extra("may", "2027-05-01")
                        .extra("may", "2027-05-01"));
    }

    @Test
    void extra_runs_take_nothing_from_later_days() {
        problem.stage("slab", 24);
        keepsEveryRule(problem, schedule().block("slab", "2027-05-02", 24).extra("may", "2027-05-01"));
    }

    @Test
    void the_arrival_run_takes_no_labour() {
        problem.stage("slab", 24);
        keepsEveryRule(problem, schedule().block("slab", "2027-05-01", 24).arrival("may", "2027-05-01"));
    }

    @Test
    void a_stage_may_need_everybody() {
        problem.stage("slab", 10, s -> s.crew(2));
        keepsEveryRule(problem, schedule().block("slab", "2027-05-01", 10));
    }

    @Test
    void a_stage_may_work_around_the_dates_on_which_it_is_shut() {
        problem.stage("slab", 20, s -> s.shut("2027-05-02", "2027-05-02", "it may rain"));
        keepsEveryRule(problem, schedule().block("slab", "2027-05-01", 10).block("slab", "2027-05-03", 10));
    }

    @Nested
    class Refuses {
        @Test
        void more_labour_than_a_day_has() {
            problem.stage("slab", 10).stage("drain", 16);
            breaksOnly(
                    Rule.HOURS,
                    problem,
                    schedule().block("slab", "2027-05-02", 10).block("drain", "2027-05-02", 16),
                    "2027-05-02",
                    "24 usable quarter-hours",
                    "take 26",
                    "[Slab] 10",
                    "[Drain] 16");
        }

        @Test
        void a_day_that_is_too_full_even_when_a_negative_block_evens_it_out() {
            problem.stage("slab", 26).stage("drain", 2);
            assertThat(breaches(
                            problem,
                            schedule()
                                    .block("slab", "2027-05-02", 26)
                                    .block("drain", "2027-05-02", -2)
                                    .block("drain", "2027-05-03", 4)))
                    .extracting(Breach::rule)
                    .containsExactly(Rule.LABOUR, Rule.HOURS);
        }

        @Test
        void blocks_that_leave_no_time_for_the_extra_runs() {
            problem.stage("slab", 17);
            breaksOnly(
                    Rule.HOURS,
                    problem,
                    schedule()
                            .block("slab", "2027-05-01", 17)
                            .extra("may", "2027-05-01")
                            .extra("may", "2027-05-01"),
                    "2027-05-01",
                    "24 usable",
                    "take 17",
                    "extra runs 8");
        }

        @Test
        void a_stage_with_fewer_people_than_its_crew() {
            problem.stage("slab", 10, s -> s.crew(3));
            breaksOnly(
                    Rule.CREW,
                    problem,
                    schedule().block("slab", "2027-05-02", 10),
                    "[Slab]",
                    "3 people",
                    "2027-05-02",
                    "only 2");
        }

        @Test
        void work_on_the_first_date_on_which_a_stage_is_shut() {
            problem.stage("slab", 10, s -> s.shut("2027-05-02", "2027-05-31", "nights may be below 4 °C"));
            breaksOnly(
                    Rule.SHUT,
                    problem,
                    schedule().block("slab", "2027-05-02", 10),
                    "[Slab] works on 2027-05-02",
                    "2027-05-02 to 2027-05-31",
                    "because nights may be below 4 °C");
        }

        @Test
        void work_on_the_last_date_on_which_a_stage_is_shut() {
            problem.stage("slab", 10, s -> s.shut("2027-03-01", "2027-05-02", "the permit is out"));
            breaksOnly(
                    Rule.SHUT,
                    problem,
                    schedule().block("slab", "2027-05-02", 10),
                    "[Slab] works on 2027-05-02",
                    "because the permit is out");
        }
    }
}
