package org.firmset.plan.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.Problems.problem;
import static org.firmset.plan.Schedules.schedule;
import static org.firmset.plan.check.Verdicts.breaches;
import static org.firmset.plan.check.Verdicts.keepsEveryRule;

import org.firmset.plan.Problems;
import org.firmset.plan.Rule;
import org.firmset.plan.Schedules;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ToolRulesTest {
    private final Problems problem =
            problem().trip("may", "2027-05-01", 3).tool("mixer", 1).tool("ladder", 2);

    @Test
    void stages_may_use_a_tool_to_its_last_piece() {
        problem.stage("roof", 10, s -> s.uses("ladder", 1)).stage("walls", 10, s -> s.uses("ladder", 1));
        keepsEveryRule(problem, schedule().block("roof", "2027-05-01", 10).block("walls", "2027-05-01", 10));
    }

    @Test
    void one_stage_may_use_all_the_pieces() {
        problem.stage("roof", 10, s -> s.uses("ladder", 2));
        keepsEveryRule(problem, schedule().block("roof", "2027-05-01", 10));
    }

    @Test
    void stages_may_take_turns_on_different_days() {
        problem.stage("slab", 20, s -> s.uses("mixer", 1)).stage("piers", 10, s -> s.uses("mixer", 1));
        keepsEveryRule(
                problem,
                schedule()
                        .block("slab", "2027-05-01", 10)
                        .block("piers", "2027-05-02", 10)
                        .block("slab", "2027-05-03", 10));
    }

    @Test
    void stages_may_use_different_tools_on_one_day() {
        problem.stage("slab", 10, s -> s.uses("mixer", 1))
                .stage("roof", 10, s -> s.uses("ladder", 2))
                .stage("drain", 10);
        keepsEveryRule(
                problem,
                schedule()
                        .block("slab", "2027-05-01", 10)
                        .block("roof", "2027-05-01", 10)
                        .block("drain", "2027-05-01", 10));
    }

    @Test
    void a_tool_nobody_has_may_be_wanted_by_a_finished_stage() {
        problem.tool("crane", 0)
                .stage("frame", 0, s -> s.uses("crane", 1).finishedOn("2027-04-03"))
                .stage("roof", 10);
        keepsEveryRule(problem, schedule().block("roof", "2027-05-01", 10));
    }

    @Test
    void a_second_block_of_a_stage_on_a_date_takes_no_second_piece() {
        problem.stage("slab", 10, s -> s.uses("mixer", 1));
        assertThat(breaches(problem, schedule().block("slab", "2027-05-01", 5).block("slab", "2027-05-01", 5)))
                .extracting(Breach::rule)
                .containsExactly(Rule.LABOUR);
    }

    @Nested
    class Refuses {
        private void breaksOnlyTools(Schedules schedule, String... words) {
            Verdicts.breaksOnly(Rule.TOOLS, problem, schedule, words);
        }

        @Test
        void one_piece_more_than_there_are() {
            problem.stage("roof", 10, s -> s.uses("ladder", 2)).stage("walls", 10, s -> s.uses("ladder", 1));
            breaksOnlyTools(
                    schedule().block("roof", "2027-05-02", 10).block("walls", "2027-05-02", 10),
                    "2027-05-02",
                    "2 pieces of tool [Ladder]",
                    "3 are in use",
                    "[Roof] 2",
                    "[Walls] 1");
        }

        @Test
        void a_single_stage_that_wants_more_than_there_are() {
            problem.stage("slab", 10, s -> s.uses("mixer", 2));
            breaksOnlyTools(schedule().block("slab", "2027-05-01", 10), "[Mixer]", "2 are in use", "[Slab] 2");
        }

        @Test
        void a_tool_nobody_has() {
            problem.tool("crane", 0).stage("frame", 10, s -> s.uses("crane", 1));
            breaksOnlyTools(schedule().block("frame", "2027-05-01", 10), "0 pieces of tool [Crane]", "1 are in use");
        }

        @Test
        void each_date_on_which_a_tool_is_short() {
            problem.stage("slab", 20, s -> s.uses("mixer", 1)).stage("piers", 20, s -> s.uses("mixer", 1));
            assertThat(breaches(
                            problem,
                            schedule()
                                    .block("slab", "2027-05-01", 10)
                                    .block("piers", "2027-05-01", 10)
                                    .block("slab", "2027-05-03", 10)
                                    .block("piers", "2027-05-03", 10)))
                    .allSatisfy(breach -> assertThat(breach.rule()).isEqualTo(Rule.TOOLS))
                    .extracting(Breach::message)
                    .satisfiesExactly(
                            first -> assertThat(first).contains("2027-05-01"),
                            second -> assertThat(second).contains("2027-05-03"));
        }

        @Test
        void each_tool_that_is_short() {
            problem.stage("slab", 10, s -> s.uses("mixer", 1).uses("ladder", 1))
                    .stage("piers", 10, s -> s.uses("mixer", 1).uses("ladder", 2));
            assertThat(breaches(
                            problem, schedule().block("slab", "2027-05-01", 10).block("piers", "2027-05-01", 10)))
                    .allSatisfy(breach -> assertThat(breach.rule()).isEqualTo(Rule.TOOLS))
                    .extracting(Breach::message)
                    .satisfiesExactly(
                            first -> assertThat(first).contains("[Mixer]"),
                            second -> assertThat(second).contains("[Ladder]"));
        }

        @Test
        void a_tool_in_two_places_even_when_one_block_is_less_than_none() {
            problem.stage("slab", 10, s -> s.uses("mixer", 1)).stage("piers", 2, s -> s.uses("mixer", 1));
            assertThat(breaches(
                            problem,
                            schedule()
                                    .block("slab", "2027-05-01", 10)
                                    .block("piers", "2027-05-01", -2)
                                    .block("piers", "2027-05-02", 4)))
                    .extracting(Breach::rule)
                    .containsExactly(Rule.LABOUR, Rule.TOOLS);
        }

        @Test
        void a_tool_in_two_places_even_on_a_date_that_is_no_site_day() {
            problem.stage("slab", 10, s -> s.uses("mixer", 1)).stage("piers", 10, s -> s.uses("mixer", 1));
            assertThat(breaches(
                            problem, schedule().block("slab", "2027-05-20", 10).block("piers", "2027-05-20", 10)))
                    .extracting(Breach::rule)
                    .containsExactly(Rule.LABOUR, Rule.LABOUR, Rule.TOOLS);
        }

        @Test
        void pieces_that_would_wrap_round() {
            problem.stage("slab", 10, s -> s.uses("mixer", Integer.MAX_VALUE))
                    .stage("piers", 10, s -> s.uses("mixer", Integer.MAX_VALUE));
            breaksOnlyTools(
                    schedule().block("slab", "2027-05-01", 10).block("piers", "2027-05-01", 10),
                    "[Mixer]",
                    "4294967294 are in use");
        }
    }
}
