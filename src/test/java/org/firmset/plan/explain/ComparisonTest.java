package org.firmset.plan.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.OptionalLong;
import org.firmset.plan.Effort;
import org.firmset.plan.Outcome;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Problems;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.search.ConstructivePlanner;
import org.junit.jupiter.api.Test;

class ComparisonTest {

    private static Problems trips() {
        return Problems.problem()
                .trip("first", "2027-05-08", 1)
                .trip("second", "2027-05-22", 1)
                .trip("third", "2027-06-05", 1);
    }

    private static SeasonPlan plan(PlanningProblem problem) {
        return ((Outcome.Planned) new ConstructivePlanner().plan(problem, new Effort(30, 1))).plan();
    }

    private static LocalDate on(String date) {
        return LocalDate.parse(date);
    }

    @Test
    void tells_what_finishes_later_and_what_it_takes() {
        SeasonPlan before = plan(trips().stage("walls", 32)
                .stage("roof", 16)
                .wait("walls", "roof", 7)
                .build());
        SeasonPlan after = plan(trips().stage("walls", 40)
                .stage("roof", 16)
                .wait("walls", "roof", 7)
                .build());

        Comparison moved = Comparison.of(before, after);

        assertThat(moved.finishes()).containsExactly(new FinishMove("cabin", on("2027-05-22"), on("2027-06-05")));
        assertThat(moved.finishes().getFirst().days()).hasValue(14);
        assertThat(moved.tripsBefore()).isEqualTo(2);
        assertThat(moved.tripsAfter()).isEqualTo(3);
        assertThat(moved.centsBefore()).isEqualTo(20_000);
        assertThat(moved.centsAfter()).isEqualTo(30_000);
        assertThat(moved.stages()).extracting(StageMove::stage).containsExactly("roof", "walls");
        assertThat(moved.stages().getLast().startDays()).hasValue(0);
        assertThat(moved.stages().getLast().finishDays()).hasValue(14);
    }

    @Test
    void tells_new_and_gone_stages_first() {
        SeasonPlan before = plan(trips().stage("walls", 8).stage("shelf", 8).build());
        SeasonPlan after = plan(trips().stage("porch", 8).stage("walls", 40).build());

        Comparison moved = Comparison.of(before, after);

        assertThat(moved.stages()).extracting(StageMove::stage).containsExactly("porch", "shelf", "walls");
        assertThat(moved.stages().get(0).isNew()).isTrue();
        assertThat(moved.stages().get(1).isGone()).isTrue();
        assertThat(moved.stages().get(1).finishDays()).isEqualTo(OptionalLong.empty());
    }

    @Test
    void tells_nothing_of_stages_that_stay() {
        SeasonPlan plan = plan(trips().stage("walls", 8).build());

        Comparison moved = Comparison.of(plan, plan);

        assertThat(moved.stages()).isEmpty();
        assertThat(moved.finishes())
                .singleElement()
                .satisfies(m -> assertThat(m.days()).hasValue(0));
    }
}
