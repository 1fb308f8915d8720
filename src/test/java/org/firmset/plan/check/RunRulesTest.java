package org.firmset.plan.check;

import static org.firmset.plan.Problems.problem;
import static org.firmset.plan.Schedules.schedule;
import static org.firmset.plan.check.Verdicts.keepsEveryRule;

import java.time.LocalDate;
import java.util.List;
import org.firmset.plan.Problems;
import org.firmset.plan.Rule;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.Schedules;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class RunRulesTest {
    private final Problems problem =
            problem().trip("may", "2027-05-01", 3, t -> t.extraRuns(2, 4)).trip("june", "2027-06-05", 2);

    @Test
    void a_trip_may_make_its_arrival_run_and_all_its_extra_runs() {
        keepsEveryRule(
                problem,
                schedule()
                        .arrival("may", "2027-05-01")
                        .extra("may", "2027-05-01")
                        .extra("may", "2027-05-01")
                        .arrival("june", "2027-06-05"));
    }

    @Nested
    class Refuses {
        private void breaksOnlyRuns(Schedules schedule, String... words) {
            Verdicts.breaksOnly(Rule.RUNS, problem, schedule, words);
        }

        @Test
        void a_second_arrival_run() {
            breaksOnlyRuns(
                    schedule().arrival("may", "2027-05-01").arrival("may", "2027-05-01"),
                    "[may]",
                    "2 runs",
                    "arrival run",
                    "may have 1");
        }

        @Test
        void one_extra_run_too_many() {
            breaksOnlyRuns(
                    schedule()
                            .extra("may", "2027-05-01")
                            .extra("may", "2027-05-01")
                            .extra("may", "2027-05-01"),
                    "[may]",
                    "3 runs",
                    "extra run",
                    "may have 2");
        }

        @Test
        void an_arrival_run_after_the_first_date() {
            breaksOnlyRuns(schedule().arrival("may", "2027-05-02"), "arrival run", "[may]", "2027-05-02", "2027-05-01");
        }

        @Test
        void an_extra_run_after_the_first_date() {
            breaksOnlyRuns(schedule().extra("may", "2027-05-02"), "extra run", "[may]", "2027-05-02", "2027-05-01");
        }

        @Test
        void an_arrival_run_on_the_first_date_of_another_trip() {
            breaksOnlyRuns(schedule().arrival("may", "2027-06-05"), "[may]", "2027-06-05", "2027-05-01");
        }

        @Test
        void a_run_of_a_trip_nobody_knows() {
            breaksOnlyRuns(
                    schedule().arrival("july", "2027-05-01"), "arrival run", "2027-05-01", "[july]", "not known");
        }

        @Test
        void an_arrival_run_that_names_an_offer() {
            Run run = new Run("may", LocalDate.parse("2027-05-01"), RunKind.ARRIVAL, "readymix", List.of());
            breaksOnlyRuns(schedule().run(run), "arrival run", "[may]", "[readymix]");
        }
    }
}
