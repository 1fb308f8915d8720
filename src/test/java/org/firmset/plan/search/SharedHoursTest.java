package org.firmset.plan.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.firmset.plan.Aim;
import org.firmset.plan.Effort;
import org.firmset.plan.Outcome;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.firmset.plan.WorkBlock;
import org.junit.jupiter.api.Test;

/** Windows in which stages share hours hold for every plan, and so do bounds by parts. */
class SharedHoursTest {
    private static final long SEED = Long.getLong("firmset.seed", 71_000);
    private static final int PROBLEMS = 400;

    @Test
    void every_plan_lies_within_the_windows_of_its_own_finishes() {
        ConstructivePlanner planner = new ConstructivePlanner();
        int planned = 0;
        int sharper = 0;
        for (long seed = SEED; seed < SEED + PROBLEMS; seed++) {
            PlanningProblem problem = RandomProblem.of(seed);
            if (!(planner.plan(problem, new Effort(60, 1, 0)) instanceof Outcome.Planned made)) {
                continue;
            }
            planned++;
            Model model = new Model(problem);
            Map<Integer, int[]> worked = worked(model, made.plan().schedule().blocks());
            int[] finishes = new int[model.laneIndex.size()];
            worked.forEach((s, days) -> finishes[model.laneOf[s]] = Math.max(finishes[model.laneOf[s]], days[1]));
            Windows alone = new Windows(model);
            Windows shared = alone.sharing().until(finishes);
            for (Map.Entry<Integer, int[]> stage : worked.entrySet()) {
                int s = stage.getKey();
                int start = stage.getValue()[0];
                int finish = stage.getValue()[1];
                assertThat(shared.earliestEpoch(s))
                        .as("earliest start of stage %d, seed %d", s, seed)
                        .isLessThanOrEqualTo(model.dayEpoch[start]);
                assertThat(shared.earliestFinishDay(s))
                        .as("earliest finish of stage %d, seed %d", s, seed)
                        .isLessThanOrEqualTo(finish);
                assertThat(shared.latestFinishDay(s))
                        .as("latest finish of stage %d, seed %d", s, seed)
                        .isGreaterThanOrEqualTo(finish);
                assertThat(shared.latestStartDay(s))
                        .as("latest start of stage %d, seed %d", s, seed)
                        .isGreaterThanOrEqualTo(start);
                sharper += shared.earliestFinishDay(s) > alone.earliestFinishDay(s) ? 1 : 0;
            }
        }
        assertThat(planned).as("problems with a plan").isGreaterThan(PROBLEMS / 3);
        assertThat(sharper).as("stages whose finish is known sharper").isGreaterThan(30);
    }

    @Test
    void no_plan_beats_the_bound_by_parts() {
        ConstructivePlanner planner = new ConstructivePlanner();
        int raised = 0;
        for (long seed = SEED; seed < SEED + PROBLEMS; seed++) {
            PlanningProblem problem = RandomProblem.of(seed).withStyle(Style.SOONEST);
            if (!(planner.plan(problem, new Effort(400, 1, 0)) instanceof Outcome.Planned made)) {
                continue;
            }
            Aim aim = made.plan().aim();
            Model model = new Model(problem);
            Windows windows = new Windows(model).sharing();
            LaneBound lanes = new LaneBound(model, windows, new Stop());
            long simple = lanes.bound();
            long sharpened = new LaneBound(model, windows, new Stop()).sharpened(aim.value() + 10, 2);
            assertThat(sharpened).as("bound, seed %d", seed).isBetween(simple, aim.value());
            raised += sharpened > simple ? 1 : 0;
        }
        assertThat(raised).as("bounds that parts raised").isPositive();
    }

    private static Map<Integer, int[]> worked(Model model, Iterable<WorkBlock> blocks) {
        Map<Integer, int[]> result = new HashMap<>();
        for (WorkBlock block : blocks) {
            int day = Arrays.binarySearch(model.dayEpoch, epoch(block.date()));
            int[] known = result.computeIfAbsent(model.stageIndex.of(block.stage()), s -> new int[] {day, day});
            known[0] = Math.min(known[0], day);
            known[1] = Math.max(known[1], day);
        }
        return result;
    }

    private static int epoch(LocalDate date) {
        return Model.epoch(date);
    }
}
