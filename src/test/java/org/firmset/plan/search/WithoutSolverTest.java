package org.firmset.plan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.Problems.problem;

import org.firmset.plan.Effort;
import org.firmset.plan.Layout;
import org.firmset.plan.Outcome;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.check.PlanChecker;
import org.firmset.trade.takeoff.cutting.SolverLibrary;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Where the solver's library is missing, plans are made all the same, with the bounds that need none. */
class WithoutSolverTest {
    private static final PlanningProblem TWO_CURES = problem()
            .trip("one", "2027-05-01", 2)
            .trip("two", "2027-05-08", 2)
            .trip("three", "2027-05-15", 2)
            .stage("pour", 24, s -> s.layout(Layout.IN_ONE_GO))
            .stage("walls", 60)
            .wait("pour", "walls", 6)
            .build();

    @BeforeEach
    void doWithout() {
        SolverLibrary.want(false);
    }

    @AfterEach
    void haveItAgain() {
        SolverLibrary.want(true);
    }

    @Test
    void aPlanIsMadeAndItsSimpleBoundIsTrue() {
        SeasonPlan plan = ((Outcome.Planned) new ConstructivePlanner().plan(TWO_CURES, new Effort(60, 1, 4))).plan();
        assertThat(PlanChecker.check(TWO_CURES, plan.schedule())).isEmpty();
        assertThat(plan.aim().bound())
                .isPositive()
                .isLessThanOrEqualTo(plan.aim().value());
    }

    @Test
    void theBoundsInJavaStillProveWhatIsPlain() {
        SeasonPlan plan = ((Outcome.Planned) new ConstructivePlanner().plan(TWO_CURES, new Effort(60, 1, 4))).plan();
        assertThat(plan.aim().proven()).isTrue();
    }
}
