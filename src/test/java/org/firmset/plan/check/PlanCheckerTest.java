package org.firmset.plan.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.firmset.plan.Problems.problem;
import static org.firmset.plan.Schedules.load;
import static org.firmset.plan.Schedules.schedule;
import static org.firmset.plan.check.Verdicts.breaches;
import static org.firmset.plan.check.Verdicts.keepsEveryRule;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Layout;
import org.firmset.plan.LeastWait;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Problems;
import org.firmset.plan.Rule;
import org.firmset.plan.Schedule;
import org.firmset.plan.Schedules;
import org.firmset.plan.Wait;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanCheckerTest {
    @Test
    void an_empty_schedule_for_nothing_to_do_keeps_every_rule() {
        keepsEveryRule(problem(), schedule());
    }

    @Test
    void a_whole_plan_with_a_pour_a_cure_and_a_second_trip_keeps_every_rule() {
        keepsEveryRule(shed(), shedInTwoTrips());
    }

    @Test
    void all_breaches_are_collected() {
        Schedules bad = shedInTwoTrips()
                .block("moat", "2027-05-02", 40)
                .block("walls", "2027-05-09", 2)
                .arrival("may", "2027-05-01", load("cement", "bed", 21))
                .block("walls", "2027-05-02", 1)
                .generator("2027-05-01", 1);
        assertThat(breaches(shed(), bad))
                .extracting(Breach::rule)
                .containsExactly(
                        Rule.LABOUR,
                        Rule.LABOUR,
                        Rule.LABOUR,
                        Rule.LABOUR,
                        Rule.LABOUR,
                        Rule.WAITS,
                        Rule.HOURS,
                        Rule.POWER,
                        Rule.RUNS,
                        Rule.RUNS,
                        Rule.SUPPLIES,
                        Rule.TOOLS,
                        Rule.MONEY);
    }

    @Test
    void the_breaches_cannot_be_changed() {
        List<Breach> found = breaches(shed(), schedule());
        assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(found::clear);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void no_nonsense_makes_it_throw(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            Schedule nonsense = new Nonsense(random).schedule();
            assertThatCode(() -> PlanChecker.check(shed().build(), nonsense))
                    .as("seed %d, schedule %d: %s", seed, i, nonsense)
                    .doesNotThrowAnyException();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void no_nonsense_makes_room_for_tools_or_money(long seed) {
        Schedule bad = shedInTwoTrips()
                .block("walls", "2027-05-02", 1)
                .arrival("may", "2027-05-01", load("cement", "bed", 21))
                .build();
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            Schedule nonsense = new Nonsense(random).schedule();
            assertThat(PlanChecker.check(shed().build(), both(bad, nonsense)))
                    .as("seed %d, schedule %d: %s", seed, i, nonsense)
                    .anyMatch(b -> b.rule() == Rule.TOOLS && b.message().contains("2027-05-02"))
                    .anyMatch(b -> b.rule() == Rule.MONEY && b.message().startsWith("2027-05"));
        }
    }

    private static Schedule both(Schedule one, Schedule other) {
        return new Schedule(
                joined(one.blocks(), other.blocks()),
                joined(one.runs(), other.runs()),
                joined(one.generator(), other.generator()));
    }

    private static <T> List<T> joined(List<T> one, List<T> other) {
        return Stream.concat(one.stream(), other.stream()).toList();
    }

    /** The best of three, so that a busy machine does not fail it. */
    @Test
    void a_great_plan_is_checked_in_well_under_a_second() {
        PlanningProblem great = Great.problem().build();
        Schedule schedule = Great.schedule().build();
        Duration best = Duration.ofDays(1);
        for (int i = 0; i < 3; i++) {
            long start = System.nanoTime();
            assertThat(PlanChecker.check(great, schedule)).isEmpty();
            Duration took = Duration.ofNanos(System.nanoTime() - start);
            best = took.compareTo(best) < 0 ? took : best;
        }
        assertThat(best).isLessThan(Duration.ofSeconds(1));
    }

    private static Problems shed() {
        return problem()
                .trip("may", "2027-05-01", 2, t -> t.sun(600, 600))
                .trip("june", "2027-06-05", 2)
                .material("cement", m -> m.dry().shelfLife(90))
                .material("timber", m -> m.millimetres(2_400))
                .offer(new DeliveryOffer(
                        "mill", "Mill", Set.of("timber"), 500_000, Problems.STATUS_DATE, Set.of(DayOfWeek.SUNDAY), 0))
                .stock("cement", 2, "2027-04-03")
                .tool("ladder", 2)
                .spending(15_000, true)
                .stage("dig", 0, s -> s.finishedOn("2027-04-03"))
                .stage(
                        "slab",
                        24,
                        s -> s.layout(Layout.IN_ONE_GO)
                                .crew(2)
                                .draws(100)
                                .needs("cement", 12)
                                .uses("ladder", 1))
                .stage(
                        "walls",
                        48,
                        s -> s.layout(Layout.UNBROKEN_DAYS)
                                .draws(150)
                                .needs("timber", 10)
                                .uses("ladder", 2))
                .wait("dig", "slab", 3)
                .wait(
                        "slab",
                        "walls",
                        new LeastWait.ByFinishDate(LocalDate.parse("2027-05-01"), List.of(9, 8)),
                        Wait.NO_LIMIT)
                .pin("slab", "2027-05-02");
    }

    private static Schedules shedInTwoTrips() {
        return schedule()
                .arrival("may", "2027-05-01", load("cement", "bed", 10))
                .block("slab", "2027-05-02", 24)
                .arrival("june", "2027-06-05", load("timber", "bed", 5))
                .block("walls", "2027-06-05", 24)
                .delivery("june", "2027-06-06", "mill", load("timber", "truck", 5))
                .block("walls", "2027-06-06", 24);
    }
}
