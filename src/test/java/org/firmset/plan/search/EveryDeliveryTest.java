package org.firmset.plan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.Problems.STATUS_DATE;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Effort;
import org.firmset.plan.Layout;
import org.firmset.plan.Load;
import org.firmset.plan.Outcome;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Problems;
import org.firmset.plan.Rule;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.Schedule;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Style;
import org.firmset.plan.Trip;
import org.firmset.plan.WorkBlock;
import org.firmset.plan.check.PlanChecker;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * Problems of one stage on one day that needs what only a truck brings, in one delivery or two: more never help. Every way there is to
 * have it brought is tried against the independent checker, and the planner must do as well as the best of them.
 */
class EveryDeliveryTest {
    private static final long SEED = Long.getLong("firmset.seed", 2027);
    private static final int COUNT = 150;
    private static final int GRAMS = 1_000_000;
    private static final int CENTS = 500;

    /** A way to do it, and what it costs. */
    private record Way(LocalDate work, long cents) {}

    private static PlanningProblem problem(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int packs = random.nextInt(1, 5);
        Problems problem = Problems.problem()
                .material(
                        "rock",
                        m -> m.grams(GRAMS)
                                .millimetres(99_999)
                                .cents(CENTS)
                                .shelfLife(random.nextInt(0, 9))
                                .availableFrom(STATUS_DATE
                                        .plusDays(random.nextInt(0, 12))
                                        .toString()))
                .stage("fill", 4, s -> s.layout(Layout.IN_ONE_GO).needs("rock", packs));
        LocalDate first = STATUS_DATE.plusDays(random.nextInt(0, 6));
        for (int t = 0; t < 3; t++) {
            int days = random.nextInt(1, 3);
            problem.trip("trip-" + t, first.toString(), days);
            first = first.plusDays(days + random.nextInt(1, 14));
        }
        Set<DayOfWeek> weekdays = Stream.of(DayOfWeek.values())
                .filter(d -> random.nextInt(100) < 35)
                .collect(Collectors.toSet());
        problem.offer(new DeliveryOffer(
                "quarry",
                "Quarry",
                Set.of("rock"),
                (long) GRAMS * random.nextInt(Math.ceilDiv(packs, 2), packs + 1),
                STATUS_DATE.plusDays(random.nextInt(0, 10)),
                weekdays,
                random.nextInt(0, 2_000),
                random.nextInt(0, 6) * (long) CENTS,
                random.nextInt(0, 1_500),
                random.nextInt(4) == 0 ? Set.of(Month.MAY) : Set.of(),
                random.nextInt(3) == 0));
        if (random.nextBoolean()) {
            problem.spending(10_000 + random.nextInt(0, 6_000), true);
        }
        return problem.build();
    }

    /** Every delivery of some packs that there could be, allowed or not. */
    private static List<Run> deliveries(PlanningProblem problem, int packs) {
        List<Run> result = new ArrayList<>();
        for (Trip trip : problem.trips()) {
            for (SiteDay day : trip.days()) {
                STATUS_DATE
                        .minusDays(2)
                        .datesUntil(day.date().plusDays(1))
                        .map(on -> new Run(
                                trip.id(),
                                day.date(),
                                RunKind.DELIVERY,
                                "quarry",
                                List.of(new Load("rock", Load.TRUCK, packs)),
                                on))
                        .filter(run -> PlanChecker.check(problem.withSpending(null), withoutWork(run)).stream()
                                .allMatch(b -> b.rule() == Rule.LABOUR))
                        .forEach(result::add);
            }
        }
        return result;
    }

    private static Schedule withoutWork(Run run) {
        return new Schedule(List.of(), List.of(run), List.of());
    }

    private static List<Way> ways(PlanningProblem problem) {
        int packs = problem.stages().getFirst().needs().getFirst().packs();
        List<List<Run>> choices = new ArrayList<>();
        deliveries(problem, packs).forEach(run -> choices.add(List.of(run)));
        for (int part = 1; part < packs; part++) {
            for (Run one : deliveries(problem, part)) {
                for (Run other : deliveries(problem, packs - part)) {
                    choices.add(List.of(one, other));
                }
            }
        }
        List<Way> ways = new ArrayList<>();
        for (Trip trip : problem.trips()) {
            for (SiteDay day : trip.days()) {
                for (List<Run> runs : choices) {
                    Schedule schedule = new Schedule(List.of(new WorkBlock("fill", day.date(), 4)), runs, List.of());
                    if (PlanChecker.check(problem, schedule).isEmpty()) {
                        ways.add(new Way(day.date(), cents(problem, trip, runs)));
                    }
                }
            }
        }
        return ways;
    }

    private static long cents(PlanningProblem problem, Trip work, List<Run> runs) {
        DeliveryOffer offer = problem.offers().getFirst();
        long trips = Stream.concat(Stream.of(work.id()), runs.stream().map(Run::trip))
                        .distinct()
                        .count()
                * work.cents();
        long sum = trips;
        for (Run run : runs) {
            long goods = (long) run.loads().getFirst().packs() * CENTS;
            sum += offer.cents() + goods + (goods < offer.leastOrderCents() ? offer.smallOrderCents() : 0);
        }
        return sum;
    }

    private static Optional<SeasonPlan> plan(PlanningProblem problem, Style style) {
        return new ConstructivePlanner().plan(problem.withStyle(style), new Effort(120, 1, 1))
                        instanceof Outcome.Planned planned
                ? Optional.of(planned.plan())
                : Optional.empty();
    }

    @Test
    void the_planner_finds_what_trying_every_way_finds(TestReporter reporter) {
        int possible = 0;
        int dropped = 0;
        int missed = 0;
        for (int i = 0; i < COUNT; i++) {
            long seed = SEED * 1_000_003 + i;
            PlanningProblem problem = problem(seed);
            List<Way> ways = ways(problem);
            Optional<SeasonPlan> soonest = plan(problem, Style.SOONEST);
            Optional<SeasonPlan> cheapest = plan(problem, Style.LEAST_MONEY);
            if (ways.isEmpty()) {
                assertThat(soonest)
                        .as("plan where there is none, seed %d", seed)
                        .isEmpty();
                continue;
            }
            possible++;
            if (soonest.isEmpty() || cheapest.isEmpty()) {
                missed++;
                continue;
            }
            LocalDate first =
                    ways.stream().map(Way::work).min(LocalDate::compareTo).orElseThrow();
            long least = ways.stream().mapToLong(Way::cents).min().orElseThrow();
            dropped += soonest.get().schedule().runs().stream().anyMatch(Run::isDropped) ? 1 : 0;
            assertThat(soonest.get().finish().orElseThrow())
                    .as("finish, seed %d", seed)
                    .isBeforeOrEqualTo(first);
            assertThat(cheapest.get().totals().cents())
                    .as("cents, seed %d", seed)
                    .isLessThanOrEqualTo(least);
            assertThat(cheapest.get().bound().leastCents())
                    .as("bound, seed %d", seed)
                    .isLessThanOrEqualTo(least);
        }
        reporter.publishEntry("possible", possible + " of " + COUNT + ", dropped " + dropped + ", missed " + missed);
        assertThat(possible).isGreaterThan(COUNT / 4);
        assertThat(dropped).isGreaterThan(COUNT / 20);
        assertThat(missed)
                .as("plans that the planner did not find, seed %d", SEED)
                .isLessThanOrEqualTo(COUNT / 50);
    }
}
