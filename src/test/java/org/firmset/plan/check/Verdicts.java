package org.firmset.plan.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.firmset.plan.Problems;
import org.firmset.plan.Rule;
import org.firmset.plan.Schedules;

/** What the tests of the rules assert. */
final class Verdicts {
    private Verdicts() {}

    static List<Breach> breaches(Problems problem, Schedules schedule) {
        return PlanChecker.check(problem.build(), schedule.build());
    }

    static void keepsEveryRule(Problems problem, Schedules schedule) {
        assertThat(breaches(problem, schedule)).isEmpty();
    }

    /** Exactly one breach, of this rule, whose message holds all the words. */
    static void breaksOnly(Rule rule, Problems problem, Schedules schedule, String... words) {
        assertThat(breaches(problem, schedule)).singleElement().satisfies(breach -> {
            assertThat(breach.rule()).isEqualTo(rule);
            assertThat(breach.message()).contains(words);
        });
    }
}
