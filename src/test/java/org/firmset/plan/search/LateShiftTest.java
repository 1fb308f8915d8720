package org.firmset.plan.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.firmset.plan.Aim;
import org.firmset.plan.Effort;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.firmset.plan.check.PlanChecker;
import org.firmset.season.RandomHomestead;
import org.firmset.season.problem.ProblemWriter;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The plan with every stage at its latest is the proof that the slack is there; so it must be a plan. */
class LateShiftTest {
    private static final long BASE_SEED = Long.getLong("firmset.seed", 2027);

    @Test
    void with_all_slack_used_the_plan_keeps_every_rule_and_every_finish() {
        for (RandomHomestead given : RandomHomestead.many(600, BASE_SEED)) {
            PlanningProblem problem = ProblemWriter.write(given.homestead(), given.statusDate(), Style.SOONEST);
            Model model = new Model(problem);
            Windows windows = new Windows(model);
            if (new Obstacles(model, windows).find().isEmpty()) {
                check(problem, model, windows, "seed " + given.seed());
            }
        }
    }

    private static void check(PlanningProblem problem, Model model, Windows windows, String seed) {
        Genes genes = Champion.find(model, windows, new Effort(10, 1), (built, of) -> {}, new Stop());
        Builder builder = new Builder(model);
        Draft draft = builder.build(genes);
        if (draft.unplaced.isEmpty()) {
            SeasonPlan planned = new PlanWriter(windows, draft, builder, genes).write(new Aim(0, 0));
            SeasonPlan late =
                    new PlanWriter(windows, late(draft, builder, windows, genes), builder, genes).write(new Aim(0, 0));
            assertThat(PlanChecker.check(problem, late.schedule()))
                    .as("breaches, %s", seed)
                    .isEmpty();
            assertThat(late.finishes()).as("finishes, %s", seed).isEqualTo(planned.finishes());
        }
    }

    private static Draft late(Draft draft, Builder builder, Windows windows, Genes genes) {
        @Nullable Placement[] shifted = new LateShift(draft, builder, windows, genes).shift();
        Draft late = new Draft(draft.model);
        List.copyOf(draft.placed()).forEach(builder.ledger()::remove);
        for (Placement placement : shifted) {
            if (placement != null) {
                builder.ledger().add(placement);
                late.put(placement);
            }
        }
        return late;
    }
}
