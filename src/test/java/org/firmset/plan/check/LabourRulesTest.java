package org.firmset.plan.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.Problems.problem;
import static org.firmset.plan.Schedules.schedule;
import static org.firmset.plan.check.Verdicts.breaches;
import static org.firmset.plan.check.Verdicts.keepsEveryRule;

import org.firmset.plan.Layout;
import org.firmset.plan.Problems;
import org.firmset.plan.Rule;
import org.firmset.plan.Schedules;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class LabourRulesTest {
    private final Problems problem = problem().trip("may", "2027-05-01", 3).trip("june", "2027-06-05", 2);

    @Test
    void labour_may_be_split_over_trips() {
        problem.stage("walls", 40);
        keepsEveryRule(problem, schedule().block("walls", "2027-05-03", 30).block("walls", "2027-06-05", 10));
    }

    @Test
    void a_finished_stage_needs_no_block() {
        problem.stage("slab", 0, s -> s.finishedOn("2027-04-10"));
        keepsEveryRule(problem, schedule());
    }

    @Test
    void a_stage_in_one_go_has_one_block() {
        problem.stage("slab", 20, s -> s.layout(Layout.IN_ONE_GO));
        keepsEveryRule(problem, schedule().block("slab", "2027-05-02", 20));
    }

    @Test
    void unbroken_days_follow_each_other_in_whatever_order_they_are_listed() {
        problem.stage("slab", 30, s -> s.layout(Layout.UNBROKEN_DAYS));
        keepsEveryRule(
                problem,
                schedule()
                        .block("slab", "2027-05-03", 10)
                        .block("slab", "2027-05-01", 10)
                        .block("slab", "2027-05-02", 10));
    }

    @Test
    void blocks_may_be_exactly_the_least_and_exactly_the_most() {
        problem.stage("walls", 20, s -> s.leastBlock(8).mostBlock(12));
        keepsEveryRule(problem, schedule().block("walls", "2027-05-01", 8).block("walls", "2027-05-02", 12));
    }

    @Test
    void what_is_left_may_be_less_than_the_least_block() {
        problem.stage("walls", 3, s -> s.leastBlock(8));
        keepsEveryRule(problem, schedule().block("walls", "2027-05-01", 3));
    }

    @Nested
    class Refuses {
        private void breaksOnlyLabour(Schedules schedule, String... words) {
            Verdicts.breaksOnly(Rule.LABOUR, problem, schedule, words);
        }

        @Test
        void a_stage_without_any_block() {
            problem.stage("walls", 40);
            breaksOnlyLabour(schedule(), "[Walls]", "40 quarter-hours", "add up to 0");
        }

        @Test
        void too_little_labour() {
            problem.stage("walls", 40);
            breaksOnlyLabour(
                    schedule().block("walls", "2027-05-01", 32).block("walls", "2027-05-02", 7), "[Walls]", "40", "39");
        }

        @Test
        void too_much_labour() {
            problem.stage("walls", 20);
            breaksOnlyLabour(schedule().block("walls", "2027-05-01", 21), "[Walls]", "20", "21");
        }

        @Test
        void work_on_a_finished_stage() {
            problem.stage("slab", 0, s -> s.finishedOn("2027-04-10"));
            breaksOnlyLabour(
                    schedule().block("slab", "2027-05-02", 4), "[Slab]", "2027-04-10", "1 blocks", "2027-05-02");
        }

        @Test
        void two_blocks_of_a_stage_on_one_date() {
            problem.stage("walls", 20);
            breaksOnlyLabour(
                    schedule().block("walls", "2027-05-02", 10).block("walls", "2027-05-02", 10),
                    "[Walls]",
                    "2027-05-02");
        }

        @Test
        void a_block_between_trips() {
            problem.stage("walls", 20);
            breaksOnlyLabour(schedule().block("walls", "2027-05-04", 20), "[Walls]", "2027-05-04", "not a site day");
        }

        @Test
        void a_block_under_the_least() {
            problem.stage("walls", 20, s -> s.leastBlock(8));
            breaksOnlyLabour(
                    schedule().block("walls", "2027-05-01", 13).block("walls", "2027-05-02", 7),
                    "[Walls]",
                    "7 quarter-hours",
                    "2027-05-02",
                    "is 8");
        }

        @Test
        void a_block_without_labour() {
            problem.stage("walls", 20);
            breaksOnlyLabour(
                    schedule().block("walls", "2027-05-01", 20).block("walls", "2027-05-02", 0),
                    "[Walls]",
                    "0 quarter-hours",
                    "2027-05-02");
        }

        @Test
        void a_negative_block_even_when_the_sum_is_right() {
            problem.stage("walls", 20);
            breaksOnlyLabour(
                    schedule().block("walls", "2027-05-01", 24).block("walls", "2027-05-02", -4),
                    "[Walls]",
                    "-4 quarter-hours",
                    "2027-05-02");
        }

        @Test
        void a_block_over_the_most() {
            problem.stage("walls", 20, s -> s.mostBlock(12));
            breaksOnlyLabour(
                    schedule().block("walls", "2027-05-01", 13).block("walls", "2027-05-02", 7),
                    "[Walls]",
                    "13 quarter-hours",
                    "2027-05-01",
                    "at most 12");
        }

        @Test
        void a_second_block_of_a_stage_in_one_go() {
            problem.stage("slab", 20, s -> s.layout(Layout.IN_ONE_GO));
            breaksOnlyLabour(
                    schedule().block("slab", "2027-05-01", 10).block("slab", "2027-05-02", 10),
                    "[Slab]",
                    "2 blocks",
                    "2027-05-01",
                    "2027-05-02");
        }

        @Test
        void a_gap_of_one_day_in_unbroken_days() {
            problem.stage("slab", 20, s -> s.layout(Layout.UNBROKEN_DAYS));
            breaksOnlyLabour(
                    schedule().block("slab", "2027-05-01", 10).block("slab", "2027-05-03", 10),
                    "[Slab]",
                    "2027-05-01",
                    "2027-05-03");
        }

        @Test
        void a_stage_nobody_knows() {
            breaksOnlyLabour(schedule().block("moat", "2027-05-01", 10), "[moat]", "10 quarter-hours", "not known");
        }

        @Test
        void blocks_whose_sum_would_wrap_round() {
            problem.stage("walls", 20);
            Schedules huge = schedule()
                    .block("walls", "2027-05-01", Integer.MAX_VALUE)
                    .block("walls", "2027-05-02", Integer.MAX_VALUE)
                    .block("walls", "2027-05-03", 22);
            assertThat(breaches(problem, huge))
                    .extracting(Breach::rule)
                    .containsExactly(Rule.LABOUR, Rule.HOURS, Rule.HOURS);
        }
    }
}
