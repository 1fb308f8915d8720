package org.firmset.plan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.Problems.problem;
import static org.firmset.plan.Schedules.load;
import static org.firmset.plan.Schedules.schedule;

import org.firmset.plan.LeastWait;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Problems;
import org.firmset.plan.Stop;
import org.firmset.plan.check.PlanChecker;
import org.firmset.trade.takeoff.cutting.SolverLibrary;
import org.junit.jupiter.api.Test;

/** What CP-SAT is asked must be solved by every plan, or what it proves is worth nothing. */
class RelaxedTest {
    private static Answer any(PlanningProblem problem) {
        assertThat(SolverLibrary.isThere()).isTrue();
        Model model = new Model(problem);
        return new Relaxed(model, new Windows(model), model.style, null, false).upTo(Answer.NO_LIMIT, 1, new Stop());
    }

    /** A quarter of the work uses up the whole first pack, so that the rest needs less than its share. */
    @Test
    void packsUsedUpAheadOfTheWorkAreNotAskedForOnceMore() {
        Problems problem = problem()
                .trip("one", "2027-05-01", 1, t -> t.quarters(1))
                .trip("two", "2027-05-08", 1, t -> t.quarters(3))
                .material("glue", m -> m.grams(500_000).shelfLife(0))
                .stage("fix", 4, s -> s.needs("glue", 2));
        assertThat(PlanChecker.check(
                        problem.build(),
                        schedule()
                                .block("fix", "2027-05-01", 1)
                                .block("fix", "2027-05-08", 3)
                                .arrival("one", "2027-05-01", load("glue", "bed", 1))
                                .arrival("two", "2027-05-08", load("glue", "bed", 1))
                                .build()))
                .isEmpty();
        assertThat(any(problem.build()).isImpossible(Answer.NO_LIMIT)).isFalse();
    }

    @Test
    void aLongestWaitAfterWhatIsFinishedIsKept() {
        Problems problem = problem()
                .trip("one", "2027-05-01", 1)
                .trip("two", "2027-05-08", 1)
                .stage("dig", 0, s -> s.finishedOn("2027-04-28"))
                .stage("lay", 8, s -> s.shut("2027-05-01", "2027-05-07", "it rains"));
        assertThat(any(problem.build()).isImpossible(Answer.NO_LIMIT)).isFalse();
        assertThat(any(problem.wait("dig", "lay", new LeastWait.Days(0), 5).build())
                        .isImpossible(Answer.NO_LIMIT))
                .isTrue();
    }
}
