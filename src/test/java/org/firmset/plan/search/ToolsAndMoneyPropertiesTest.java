package org.firmset.plan.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.firmset.Cases;
import org.firmset.plan.Bound;
import org.firmset.plan.Effort;
import org.firmset.plan.Obstacle;
import org.firmset.plan.Outcome;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Rule;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.SpendingLimit;
import org.firmset.plan.Stage;
import org.firmset.plan.Style;
import org.firmset.plan.check.PlanChecker;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/** What must hold where tools are few and money is short, tried on 400 problems. Others: -Dfirmset.seed=... */
class ToolsAndMoneyPropertiesTest {
    private static final long BASE_SEED = Long.getLong("firmset.seed", 2027);
    private static final int COUNT = Cases.of(400);
    private static final Effort EFFORT = new Effort(30, 1, 1);
    private static final List<Trial> TRIALS = trials();

    /** A problem with what planning makes of it in each style. */
    private record Trial(int number, long seed, PlanningProblem problem, Map<Style, Outcome> outcomes) {
        Stream<SeasonPlan> plans() {
            return outcomes.values().stream().flatMap(outcome -> planOf(outcome).stream());
        }

        boolean isPlanned() {
            return plans().findAny().isPresent();
        }

        boolean isProvenHopeless() {
            return outcomes.values().stream()
                    .anyMatch(outcome -> outcome instanceof Outcome.NoPlan none
                            && none.obstacles().stream().anyMatch(Obstacle::proven));
        }

        String inWords() {
            return "seed %d (-Dfirmset.seed=%d, number %d)".formatted(seed, BASE_SEED, number);
        }
    }

    private static List<Trial> trials() {
        long[] seeds = new SplittableRandom(BASE_SEED).longs(COUNT).toArray();
        return IntStream.range(0, COUNT).mapToObj(i -> trial(i, seeds[i])).toList();
    }

    private static Trial trial(int number, long seed) {
        PlanningProblem problem = RandomProblem.of(seed);
        Map<Style, Outcome> outcomes = new EnumMap<>(Style.class);
        for (Style style : Style.values()) {
            outcomes.put(style, new ConstructivePlanner().plan(problem.withStyle(style), EFFORT));
        }
        return new Trial(number, seed, problem, outcomes);
    }

    private static Optional<SeasonPlan> planOf(Outcome outcome) {
        return outcome instanceof Outcome.Planned planned ? Optional.of(planned.plan()) : Optional.empty();
    }

    @Test
    void every_plan_keeps_every_hard_rule() {
        for (Trial trial : TRIALS) {
            trial.plans()
                    .forEach(plan -> assertThat(PlanChecker.check(trial.problem(), plan.schedule()))
                            .as("breaches in style %s, %s", plan.style(), trial.inWords())
                            .isEmpty());
        }
    }

    @Test
    void no_plan_of_any_style_beats_a_bound() {
        for (Trial trial : TRIALS) {
            List<SeasonPlan> plans = trial.plans().toList();
            for (SeasonPlan bounded : plans) {
                plans.forEach(plan -> keepsTo(bounded.bound(), plan, trial));
            }
        }
    }

    private static void keepsTo(Bound bound, SeasonPlan plan, Trial trial) {
        assertThat(plan.totals().trips())
                .as("trips in style %s, %s", plan.style(), trial.inWords())
                .isGreaterThanOrEqualTo(bound.fewestTrips());
        assertThat(plan.totals().cents())
                .as("cents in style %s, %s", plan.style(), trial.inWords())
                .isGreaterThanOrEqualTo(bound.leastCents());
        bound.earliestFinish()
                .forEach((subproject, date) -> assertThat(plan.finishes().get(subproject))
                        .as("finish of %s in style %s, %s", subproject, plan.style(), trial.inWords())
                        .isAfterOrEqualTo(date));
    }

    /** A plan made without tools or limit may keep them by chance; it is one more that should not be. */
    @Test
    void where_an_obstacle_is_proven_no_plan_keeps_the_rules() {
        List<Trial> hopeless = TRIALS.stream().filter(Trial::isProvenHopeless).toList();
        assertThat(hopeless)
                .as("problems with a proven obstacle, seed %d", BASE_SEED)
                .isNotEmpty();
        for (Trial trial : hopeless) {
            assertThat(trial.plans()).as("plans, %s", trial.inWords()).isEmpty();
            for (PlanningProblem easier : List.of(withoutTools(trial.problem()), withoutLimit(trial.problem()))) {
                soonest(easier)
                        .ifPresent(plan -> assertThat(PlanChecker.check(trial.problem(), plan.schedule()))
                                .as("breaches of a plan for fewer rules, %s", trial.inWords())
                                .isNotEmpty());
            }
        }
    }

    @Test
    void a_limit_that_need_not_be_kept_costs_no_plan() {
        for (Trial trial : TRIALS) {
            SpendingLimit limit = trial.problem().spending();
            if (limit != null
                    && !limit.hard()
                    && soonest(withoutLimit(trial.problem())).isPresent()) {
                assertThat(trial.isPlanned()).as("planned, %s", trial.inWords()).isTrue();
            }
        }
    }

    @Test
    void at_least_a_third_of_the_problems_have_a_plan(TestReporter reporter) {
        long planned = TRIALS.stream().filter(Trial::isPlanned).count();
        reporter.publishEntry("planned", planned + " of " + COUNT);
        assertThat(planned)
                .as("problems with a plan, seed %d", BASE_SEED)
                .isGreaterThanOrEqualTo(Math.ceilDiv(COUNT, 3));
    }

    @Test
    void tools_are_often_in_the_way(TestReporter reporter) {
        assertBinds(Rule.TOOLS, ToolsAndMoneyPropertiesTest::withoutTools, reporter);
    }

    @Test
    void money_is_often_in_the_way(TestReporter reporter) {
        assertBinds(Rule.MONEY, ToolsAndMoneyPropertiesTest::withoutLimit, reporter);
    }

    /** A rule binds where there is a plan that keeps it, and one made without it does not. */
    private static void assertBinds(Rule rule, UnaryOperator<PlanningProblem> without, TestReporter reporter) {
        long binding = TRIALS.stream()
                .filter(Trial::isPlanned)
                .filter(trial -> soonest(without.apply(trial.problem()))
                        .filter(plan -> breaks(rule, trial.problem(), plan))
                        .isPresent())
                .count();
        reporter.publishEntry(rule + " binds", binding + " of " + COUNT);
        assertThat(binding)
                .as("problems with a plan in which %s bind, seed %d", rule, BASE_SEED)
                .isGreaterThanOrEqualTo(COUNT / 8);
    }

    private static boolean breaks(Rule rule, PlanningProblem problem, SeasonPlan plan) {
        return PlanChecker.check(problem, plan.schedule()).stream().anyMatch(breach -> breach.rule() == rule);
    }

    private static Optional<SeasonPlan> soonest(PlanningProblem problem) {
        return planOf(new ConstructivePlanner().plan(problem.withStyle(Style.SOONEST), EFFORT.withProof(0)));
    }

    private static PlanningProblem withoutTools(PlanningProblem problem) {
        List<Stage> stages = problem.stages().stream()
                .map(stage -> stage.withTools(List.of()))
                .toList();
        return problem.withStages(stages).withTools(List.of());
    }

    private static PlanningProblem withoutLimit(PlanningProblem problem) {
        return problem.withSpending(null);
    }
}
