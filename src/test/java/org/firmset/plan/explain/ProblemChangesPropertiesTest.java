package org.firmset.plan.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.search.RandomProblem;
import org.junit.jupiter.api.Test;

/** The changes between two problems, made one after the other, lead from one to the other. Others: -Dfirmset.seed=... */
class ProblemChangesPropertiesTest {
    private static final long BASE_SEED = Long.getLong("firmset.seed", 2027);
    private static final int COUNT = 1000;

    private static Stream<Long> seeds() {
        return new SplittableRandom(BASE_SEED).longs(COUNT).boxed();
    }

    @Test
    void all_changes_together_give_the_problem_after_some_edits() {
        seeds().forEach(seed -> {
            RandomEdits edits = new RandomEdits(seed);
            PlanningProblem before = edits.edit(RandomProblem.of(seed), 4);
            check(before, edits.edit(before, 1 + (int) (seed & 15)), seed);
        });
    }

    /** They have the ids of many things in common and little else; some lie earlier in time than the other. */
    @Test
    void all_changes_together_give_another_problem_altogether() {
        seeds().forEach(seed -> check(RandomProblem.of(seed), RandomProblem.of(seed + 1), seed));
    }

    @Test
    void a_problem_does_not_differ_from_itself() {
        seeds().limit(100).forEach(seed -> {
            PlanningProblem problem = new RandomEdits(seed).edit(RandomProblem.of(seed), 5);
            assertThat(ProblemChanges.between(problem, problem))
                    .as("seed %d", seed)
                    .isEmpty();
        });
    }

    private static void check(PlanningProblem before, PlanningProblem after, long seed) {
        List<ProblemChange> changes = ProblemChanges.between(before, after);
        String which = "seed %d (-Dfirmset.seed=%d), changes %s".formatted(seed, BASE_SEED, changes);
        assertThat(made(changes, ProblemChanges.start(before, after))).as(which).isEqualTo(after);
        PlanningProblem reached = made(changes, before);
        assertThat(reached.withStyle(after.style()).withFormer(after.former()))
                .as(which)
                .isEqualTo(after);
        assertThat(changes).as(which).doesNotHaveDuplicates();
    }

    private static PlanningProblem made(List<ProblemChange> changes, PlanningProblem start) {
        PlanningProblem reached = start;
        for (ProblemChange change : changes) {
            reached = change.applyTo(reached);
        }
        return reached;
    }
}
