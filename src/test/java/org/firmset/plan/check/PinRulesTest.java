package org.firmset.plan.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.Problems.problem;
import static org.firmset.plan.Schedules.schedule;
import static org.firmset.plan.check.Verdicts.breaches;
import static org.firmset.plan.check.Verdicts.breaksOnly;
import static org.firmset.plan.check.Verdicts.keepsEveryRule;

import org.firmset.plan.Problems;
import org.firmset.plan.Rule;
import org.firmset.plan.Schedules;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class PinRulesTest {
    private final Problems problem =
            problem().trip("may", "2027-05-01", 3).generator(500).stage("slab", 8);

    @Test
    void a_pinned_stage_may_leave_out_a_pinned_date() {
        problem.pin("slab", "2027-05-02", "2027-05-03");
        keepsEveryRule(problem, schedule().block("slab", "2027-05-03", 8));
    }

    @Test
    void the_status_date_itself_may_be_planned() {
        keepsEveryRule(
                problem,
                schedule()
                        .block("slab", "2027-05-01", 8)
                        .arrival("may", "2027-05-01")
                        .generator("2027-05-01", 100));
    }

    @Nested
    class Refuses {
        @Test
        void a_pinned_stage_on_another_date() {
            problem.pin("slab", "2027-05-02", "2027-05-03");
            breaksOnly(
                    Rule.PINNED,
                    problem,
                    schedule().block("slab", "2027-05-01", 8),
                    "[Slab] works on 2027-05-01",
                    "[2027-05-02, 2027-05-03]",
                    "because the owners said so");
        }

        @Test
        void dates_that_only_one_of_two_pins_allows() {
            problem.pin("slab", "2027-05-01", "2027-05-02").pin("slab", "2027-05-02", "2027-05-03");
            breaksOnly(
                    Rule.PINNED,
                    problem,
                    schedule().block("slab", "2027-05-03", 8),
                    "2027-05-03",
                    "[2027-05-01, 2027-05-02]");
        }
    }

    /** No trip starts before the status date, so whatever is planned before it is off site as well. */
    @Nested
    class RefusesThePast {
        private void breaks(Schedules schedule, Rule offSite, String message) {
            assertThat(breaches(problem, schedule)).extracting(Breach::rule).containsExactly(offSite, Rule.PINNED);
            assertThat(breaches(problem, schedule).getLast().message()).isEqualTo(message);
        }

        @Test
        void for_a_block() {
            breaks(
                    schedule().block("slab", "2027-04-30", 8),
                    Rule.LABOUR,
                    "A block of stage [Slab] is planned on 2027-04-30, before the status date 2027-05-01");
        }

        @Test
        void for_a_run() {
            breaks(
                    schedule().block("slab", "2027-05-01", 8).arrival("may", "2027-04-30"),
                    Rule.RUNS,
                    "The arrival run of trip [may] is planned on 2027-04-30, before the status date 2027-05-01");
        }

        @Test
        void for_the_generator() {
            breaks(
                    schedule().block("slab", "2027-05-01", 8).generator("2027-04-30", 100),
                    Rule.POWER,
                    "Generator energy of 100 Wh is planned on 2027-04-30, before the status date 2027-05-01");
        }
    }
}
