package org.firmset.season.ask;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.PowerKit;
import org.firmset.measure.Cash;
import org.firmset.plan.Effort;
import org.firmset.plan.Former;
import org.firmset.plan.Outcome;
import org.firmset.plan.Planner;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Stage;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.firmset.plan.check.Breach;
import org.firmset.plan.check.PlanChecker;
import org.firmset.plan.explain.Kind;
import org.firmset.plan.explain.Lifting;
import org.firmset.plan.explain.Restriction;
import org.firmset.plan.search.ConstructivePlanner;
import org.firmset.season.problem.ProblemWriter;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.PlannedSeason;
import org.firmset.season.words.StyleWords;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * Finds by planning again what more power would bring. First work is planned as if it drew nothing; then, for each kind of
 * power alone, the least amount with which a plan is as good. Every plan counts only when the checker passes it for the
 * homestead with that amount, and a plan that is known and passes need not be looked for again.
 */
public final class MorePowerFinder {
    /** It starts from a plan that is as good as can be, so a short look is enough. */
    private static final Effort AGAIN = new Effort(100, 1);

    private static final BigDecimal KILO = BigDecimal.valueOf(1000);

    private final Planner planner = new ConstructivePlanner();
    private final Homestead homestead;
    private final PlannedSeason season;
    private final Stop stop;
    private final String currency;

    private MorePowerFinder(Homestead homestead, PlannedSeason season, Stop stop) {
        this.homestead = homestead;
        this.season = season;
        this.stop = stop;
        currency = season.report().costs().total().getCurrency().getCurrencyCode();
    }

    /**
     * The same homestead and plan always have the same answer.
     *
     * @param homestead that the plan was made of
     * @param stop gives up; what is answered then is worth nothing
     */
    public static MorePower find(Homestead homestead, PlannedSeason season, Stop stop) {
        return new MorePowerFinder(homestead, season, stop).find();
    }

    private MorePower find() {
        PowerKit kit = homestead.power();
        if (kit == null) {
            return new MorePower.Nothing("There is no power on site that there could be more of.");
        }
        if (season.problem().stages().stream().noneMatch(MorePowerFinder::draws)) {
            return new MorePower.Nothing("Nothing that is left to do draws power, so more of it would bring nothing.");
        }
        SeasonPlan now = season.plan();
        PlanningProblem unlimited = started(
                Lifting.without(season.problem(), List.of(new Restriction(Kind.POWER, Restriction.WHOLE))), now);
        Optional<SeasonPlan> free = planned(unlimited, Answers.LOOK);
        if (free.isEmpty() || !rank(free.get()).isBetterThan(rank(now))) {
            boolean proven =
                    free.isPresent() && free.get().aim().bound() >= now.aim().value();
            return new MorePower.NotLimiting(style(), proven, false);
        }
        // what a longer look alone brings is not the doing of more power
        SeasonPlan base = best(kit, free.get(), List.of(now)).orElse(now);
        boolean foundAgain = rank(base).isBetterThan(rank(now));
        return rank(free.get()).isBetterThan(rank(base))
                ? limiting(kit, base, free.get(), foundAgain)
                : new MorePower.NotLimiting(style(), false, true);
    }

    private static boolean draws(Stage stage) {
        return !stage.finished() && stage.wattHoursPerHour() > 0;
    }

    private MorePower limiting(PowerKit kit, SeasonPlan base, SeasonPlan free, boolean foundAgain) {
        PowerGains gains = new PowerGains(season.problem(), base);
        List<MorePower.Way> ways = new ArrayList<>();
        for (PowerLadder ladder : PowerLadder.of(kit)) {
            ways.add(new Climb(kit, ladder, gains, base, free).way());
        }
        return new MorePower.Limiting(gains.of(free), ways, foundAgain, currency);
    }

    private String style() {
        return StyleWords.of(season.plan().style());
    }

    private PowerRank rank(SeasonPlan plan) {
        return PowerRank.of(season.problem(), plan);
    }

    /**
     * The best of a new plan and the known ones that pass; empty when none does.
     *
     * @param free as good as can be: when it passes nothing is looked for
     */
    private Optional<SeasonPlan> best(PowerKit kit, SeasonPlan free, List<SeasonPlan> known) {
        PlanningProblem problem = started(
                ProblemWriter.write(
                        homestead.withPower(kit),
                        season.problem().statusDate(),
                        season.plan().style()),
                free);
        if (passes(problem, free)) {
            return Optional.of(free);
        }
        List<SeasonPlan> all = new ArrayList<>(known);
        all.removeIf(p -> !passes(problem, p));
        planned(problem, AGAIN).ifPresent(all::add);
        return all.stream().min((a, b) -> rank(a).compareTo(rank(b)));
    }

    /** Begins the search where a plan had the stages, unless that is what the style counts from. */
    private PlanningProblem started(PlanningProblem problem, SeasonPlan from) {
        if (season.plan().style() == Style.LEAST_CHANGE) {
            return problem.withFormer(season.problem().former());
        }
        return problem.withFormer(problem.stages().stream()
                .filter(s -> !s.finished())
                .flatMap(s -> from.story(s.id()).stream())
                .map(s -> new Former(s.stage(), s.start(), s.finish()))
                .toList());
    }

    private static boolean passes(PlanningProblem problem, SeasonPlan plan) {
        return PlanChecker.check(problem, plan.schedule()).isEmpty();
    }

    /** @throws SeasonPlanner.BrokenPlan when the planner made a plan that breaks a rule */
    private Optional<SeasonPlan> planned(PlanningProblem problem, Effort effort) {
        if (stop.isStopped()
                || !(planner.plan(problem, effort, (built, of) -> {}, stop) instanceof Outcome.Planned planned)) {
            return Optional.empty();
        }
        List<Breach> breaches = PlanChecker.check(problem, planned.plan().schedule());
        if (!breaches.isEmpty()) {
            throw new SeasonPlanner.BrokenPlan(breaches);
        }
        return Optional.of(planned.plan());
    }

    /** Looks for the lowest rung that is enough. */
    private final class Climb {
        private final PowerKit kit;
        private final PowerLadder ladder;
        private final PowerGains gains;
        private final SeasonPlan base;
        private final SeasonPlan free;

        Climb(PowerKit kit, PowerLadder ladder, PowerGains gains, SeasonPlan base, SeasonPlan free) {
            this.kit = kit;
            this.ladder = ladder;
            this.gains = gains;
            this.base = base;
            this.free = free;
        }

        MorePower.Way way() {
            SeasonPlan found = at(ladder.rungs(), base);
            PowerRank wanted = rank(found);
            if (!wanted.isBetterThan(rank(base))) {
                return new MorePower.Way.Useless(ladder.kind(), ladder.amount(ladder.rungs()));
            }
            // luck may find a better plan than the one without limit; it is not asked for
            boolean enough = !rank(free).isBetterThan(wanted);
            wanted = enough ? rank(free) : wanted;
            int low = 1;
            int high = ladder.rungs();
            while (low < high) {
                int middle = low + (high - low) / 2;
                SeasonPlan plan = at(middle, found);
                if (wanted.isBetterThan(rank(plan))) {
                    low = middle + 1;
                } else {
                    high = middle;
                    found = plan;
                }
            }
            return new MorePower.Way.Found(
                    ladder.kind(), ladder.amount(high), enough, gains.of(found), cost(ladder.amount(high), found));
        }

        private SeasonPlan at(int rung, SeasonPlan known) {
            return best(ladder.kitAt(rung), free, List.of(base, known)).orElse(base);
        }

        private @Nullable Money cost(int amount, SeasonPlan plan) {
            return switch (ladder.kind()) {
                case BATTERY -> price(amount, kit.batteryPerKilowattHour());
                case PANELS -> price(amount, kit.panelsPerKilowatt());
                case GENERATOR -> Cash.ofCents(Math.max(0, -gains.of(plan).fuelCents()), currency);
            };
        }

        private @Nullable Money price(int amount, @Nullable Money perThousand) {
            return perThousand == null
                    ? null
                    : Cash.of(
                            Cash.amountOf(perThousand)
                                    .multiply(BigDecimal.valueOf(amount))
                                    .divide(KILO, 2, RoundingMode.HALF_UP),
                            currency);
        }
    }
}
