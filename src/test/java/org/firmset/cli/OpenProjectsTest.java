package org.firmset.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.firmset.plan.Effort;
import org.firmset.plan.Outcome;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.check.PlanChecker;
import org.firmset.plan.search.ConstructivePlanner;
import org.junit.jupiter.api.Test;

/** Instances small enough to work out by hand; the open sets themselves are run by {@code firmset bench psplib}. */
class OpenProjectsTest {
    /** Two jobs of 3 and 2 days share one piece of the only resource, a third of 4 days needs none. */
    private static final String SM = """
            jobs (incl. supersource/sink ):  5
            PRECEDENCE RELATIONS:
            jobnr.    #modes  #successors   successors
               1        1          3           2   3   4
               2        1          1          5
               3        1          1          5
               4        1          1          5
               5        1          0
            ************************************************************************
            REQUESTS/DURATIONS:
            jobnr. mode duration  R 1
            ------------------------------------------------------------------------
              1      1     0       0
              2      1     3       1
              3      1     2       1
              4      1     4       0
              5      1     0       0
            ************************************************************************
            RESOURCEAVAILABILITIES:
              R 1
                1
            """;

    /** Job 1 of 4 days, job 2 of 3 days: 2 starts at the soonest {least} and at the latest {most} days after 1. */
    private static String sch(int least, int most, int there) {
        return """
                2	1	0	0
                0	1	1	1	[0]
                1	1	2	2	3	[%d]	[4]
                2	1	2	1	3	[%d]	[3]
                3	1	0
                0	1	0	0
                1	1	4	1
                2	1	3	1
                3	1	0	0
                %d
                """.formatted(least, -most, there);
    }

    private static Outcome solve(PlanningProblem problem) {
        return new ConstructivePlanner().plan(problem, new Effort(30, 1, 2));
    }

    private static long days(PlanningProblem problem) {
        SeasonPlan plan = ((Outcome.Planned) solve(problem)).plan();
        assertThat(PlanChecker.check(problem, plan.schedule())).isEmpty();
        assertThat(plan.aim().proven()).isTrue();
        return OpenProjects.makespan(plan);
    }

    @Test
    void jobs_that_share_the_only_piece_follow_each_other() {
        assertThat(days(OpenProjects.sm(SM))).isEqualTo(5);
    }

    @Test
    void with_a_second_piece_the_longest_job_decides() {
        assertThat(days(OpenProjects.sm(SM.replaceAll("1\n$", "2\n")))).isEqualTo(4);
    }

    @Test
    void a_job_may_start_before_the_end_of_the_one_before_it() {
        assertThat(days(OpenProjects.sch(sch(1, 9, 2)))).isEqualTo(4);
    }

    @Test
    void the_only_piece_keeps_it_waiting() {
        assertThat(days(OpenProjects.sch(sch(1, 9, 1)))).isEqualTo(7);
    }

    @Test
    void when_it_may_not_wait_that_long_there_is_no_plan_and_that_is_proven() {
        assertThat(solve(OpenProjects.sch(sch(1, 3, 1))))
                .isInstanceOfSatisfying(
                        Outcome.NoPlan.class,
                        none -> assertThat(none.obstacles().getFirst().proven()).isTrue());
    }

    @Test
    void text_of_another_kind_is_refused_with_what_was_looked_for() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OpenProjects.sm("file,optimum"))
                .withMessageContaining("jobs");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OpenProjects.sch("10 5 0 0\n1 2 3"))
                .withMessageContaining("26 lines, but this one has 2");
    }
}
