package org.firmset.plan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.Problems.problem;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Effort;
import org.firmset.plan.Layout;
import org.firmset.plan.LeastWait;
import org.firmset.plan.Outcome;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.PowerSupply;
import org.firmset.plan.Problems;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.firmset.plan.Wait;
import org.firmset.plan.check.PlanChecker;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.MassLimit;
import org.firmset.trade.haul.Rig;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever it is given, the planner answers with a plan that keeps the rules or says why there is none, and soon. */
class BadInputTest {
    private static final Duration NET = Duration.ofSeconds(60);
    private static final Duration SOON = Duration.ofSeconds(10);

    private record Way(Style style, Effort effort) {}

    /** What a person waits for; then another style and a proof, for which a shorter search is enough. */
    private static final List<Way> WAYS = List.of(
            new Way(Style.SOONEST, Effort.NORMAL),
            new Way(Style.LEAST_MONEY, new Effort(40, 1)),
            new Way(Style.SOONEST, new Effort(10, 1, 1)),
            new Way(Style.LEAST_MONEY, new Effort(10, 1, 1)));

    /** For the solver to start, to be at it, and to begin something else. */
    private static final List<Integer> STOPS_AFTER_MILLIS = List.of(50, 400, 1_200);

    private static final Set<DayOfWeek> ANY_DAY = EnumSet.allOf(DayOfWeek.class);
    private static final long GREAT = 1L << 62;
    private static final int MOST = Integer.MAX_VALUE;

    /** What should come of it; of the odder numbers either may. */
    private enum Expected {
        PLAN,
        NO_PLAN,
        EITHER
    }

    private record Given(String name, Expected expected, Supplier<Problems> problem) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Given plan(String name, Supplier<Problems> problem) {
        return new Given(name, Expected.PLAN, problem);
    }

    private static Given noPlan(String name, Supplier<Problems> problem) {
        return new Given(name, Expected.NO_PLAN, problem);
    }

    private static Given either(String name, Supplier<Problems> problem) {
        return new Given(name, Expected.EITHER, problem);
    }

    @ParameterizedTest
    @MethodSource({"nothingThere", "many", "contradictions", "greatNumbers"})
    void answers_or_refuses(Given given, TestReporter reporter) {
        PlanningProblem problem = given.problem().get().build();
        for (Way way : WAYS) {
            Answered answered = assertTimeoutPreemptively(NET, () -> answer(problem, way));
            reporter.publishEntry(given + ", " + way, answered.took().toMillis() + " ms");
            judge(given, problem, answered.outcome());
            assertThat(answered.took()).isLessThan(SOON);
        }
    }

    private record Answered(Outcome outcome, Duration took) {}

    /** Counts the time of the processor, so that a machine that has more to do does not make the planner slow. */
    private static Answered answer(PlanningProblem problem, Way way) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadCpuTime();
        Outcome outcome = new ConstructivePlanner().plan(problem.withStyle(way.style()), way.effort());
        return new Answered(outcome, Duration.ofNanos(threads.getCurrentThreadCpuTime() - before));
    }

    private static void judge(Given given, PlanningProblem problem, Outcome outcome) {
        switch (outcome) {
            case Outcome.Planned planned -> {
                assertThat(PlanChecker.check(problem, planned.plan().schedule()))
                        .as("breaches")
                        .isEmpty();
                assertThat(planned.plan().totals().cents()).as("cents").isGreaterThanOrEqualTo(0);
                assertThat(planned.plan().aim().bound())
                        .as("bound")
                        .isBetween(0L, planned.plan().aim().value());
                assertThat(given.expected()).isNotEqualTo(Expected.NO_PLAN);
            }
            case Outcome.NoPlan none -> {
                assertThat(given.expected()).as("%s", none).isNotEqualTo(Expected.PLAN);
                assertThat(none.obstacles())
                        .isNotEmpty()
                        .allSatisfy(o -> assertThat(o.message()).isNotBlank());
            }
        }
    }

    private static Problems weekends(int trips) {
        Problems problem = problem();
        for (int t = 0; t < trips; t++) {
            problem.trip("t" + t, Problems.STATUS_DATE.plusWeeks(t).toString(), 2);
        }
        return problem;
    }

    /** One trip of many days. */
    private static Problems season(int days) {
        return problem().trip("season", Problems.STATUS_DATE.toString(), days);
    }

    private static Problems stages(Problems problem, int count, int quarters) {
        for (int s = 0; s < count; s++) {
            problem.stage("s" + s, quarters);
        }
        return problem;
    }

    static Stream<Given> nothingThere() {
        return Stream.of(
                noPlan("no trip", () -> problem().stage("dig", 8)),
                plan("no stage", () -> weekends(3)),
                plan("no trip and no stage", Problems::problem),
                plan("no trip, all finished", () -> problem().stage("dig", 0, s -> s.finishedOn("2027-04-01"))),
                noPlan(
                        "no hours",
                        () -> problem()
                                .trip("t", "2027-05-01", 2, t -> t.quarters(0))
                                .stage("dig", 8)),
                noPlan(
                        "no people",
                        () -> problem()
                                .trip("t", "2027-05-01", 2, t -> t.people(0))
                                .stage("dig", 8)),
                either(
                        "no crew, no people",
                        () -> problem()
                                .trip("t", "2027-05-01", 2, t -> t.people(0))
                                .stage("dig", 8, s -> s.crew(0))),
                noPlan(
                        "rig without bays",
                        () -> problem()
                                .trip("t", "2027-05-01", 2, t -> t.rig(new Rig("bike", "Bike", List.of(), List.of())))
                                .material("sand")
                                .stage("dig", 8, s -> s.needs("sand", 1))),
                plan(
                        "material that nothing needs",
                        () -> weekends(2)
                                .material(
                                        "gold",
                                        m -> m.grams(GREAT).millilitres(GREAT).cents(GREAT))
                                .stage("dig", 8)),
                plan(
                        "no tool, and none used",
                        () -> weekends(2).tool("mixer", 0).stage("dig", 8)),
                noPlan(
                        "no tool, but used",
                        () -> weekends(2).tool("mixer", 0).stage("dig", 8, s -> s.uses("mixer", 1))));
    }

    static Stream<Given> many() {
        return Stream.of(
                plan(
                        "1000 small stages on one day",
                        () -> stages(problem().trip("t", "2027-05-01", 1, t -> t.quarters(4000)), 1000, 4)),
                noPlan("1000 stages of a day on one day", () -> wholeDays(season(1), 1000)),
                plan("1000 stages of a day on 1000 days", () -> wholeDays(season(1000), 1000)),
                noPlan("1000 stages of a day on 999 days", () -> wholeDays(season(999), 1000)),
                plan("100000 waits", () -> waits(false, 200)),
                plan("100000 waits on 1000 days", () -> waits(false, 1000)),
                noPlan("100000 waits and a circle", () -> waits(true, 200)),
                plan("100000 waits between two", BadInputTest::sameWaits),
                plan("400 stages on 1000 days", () -> stages(season(1000), 400, 64)),
                plan("400 stages on 500 weekends", () -> stages(weekends(500), 400, 64)),
                plan("400 stages with loads on 500 weekends", () -> loaded(500, 400, 64)),
                plan("100000 waits that all count", () -> fromAllToAll(Wait.NO_LIMIT)),
                either("100000 longest waits", () -> fromAllToAll(3)),
                plan("400 unbroken stages on 1000 days", () -> unbroken(season(1000))),
                plan("400 stages with draws on 1000 days", () -> drawing(season(1000), 400)),
                noPlan("60 tight stages on one trip of 60 days", () -> tight(season(60), 60)),
                plan("20 subprojects", () -> twentySubprojects(weekends(60))),
                plan("20 subprojects on 1000 days", () -> twentySubprojects(season(1000))),
                plan("a stage with 200 needs", BadInputTest::twoHundredNeeds));
    }

    private static Problems wholeDays(Problems problem, int count) {
        for (int s = 0; s < count; s++) {
            problem.stage("s" + s, 32, d -> d.layout(Layout.IN_ONE_GO));
        }
        return problem;
    }

    private static Problems waits(boolean circle, int days) {
        int count = 500;
        Problems problem = stages(season(days), count, days < 1000 ? 4 : 40);
        for (int i = 0; i < 100_000; i++) {
            int from = i % (count - 1);
            int to = from + 1 + (i / (count - 1)) % Math.min(200, count - 1 - from);
            problem.wait("" + i, "s" + from, "s" + to, new LeastWait.Days(0), i % 3 == 0 ? 2000 : Wait.NO_LIMIT);
        }
        return circle ? problem.wait("s499", "s0", 1) : problem;
    }

    private static Problems sameWaits() {
        Problems problem = stages(weekends(20), 2, 8);
        for (int i = 0; i < 100_000; i++) {
            problem.wait("" + i, "s0", "s1", new LeastWait.Days(i % 30), Wait.NO_LIMIT);
        }
        return problem;
    }

    private static Problems loaded(int trips, int count, int quarters) {
        Problems problem =
                weekends(trips).material("cement", m -> m.dry().shelfLife(60)).material("sand");
        for (int s = 0; s < count; s++) {
            String wood = "wood" + s % 20;
            if (s < 20) {
                problem.material(wood);
            }
            problem.stage(
                    "s" + s,
                    quarters,
                    d -> d.needs("cement", 8).needs("sand", 4).needs(wood, 2).draws(100));
            if (s >= 10) {
                problem.wait("s" + (s - 10), "s" + s, 3);
            }
        }
        return problem.offer(quarry(1_000_000, 5_000));
    }

    private static Problems fromAllToAll(int mostDays) {
        int half = 316;
        Problems problem = stages(season(150), 2 * half, 4);
        for (int from = 0; from < half; from++) {
            for (int to = half; to < 2 * half; to++) {
                problem.wait("s" + from, "s" + to, new LeastWait.Days(1), mostDays);
            }
        }
        return problem;
    }

    private static Problems unbroken(Problems problem) {
        for (int s = 0; s < 400; s++) {
            problem.stage("s" + s, 64, d -> d.layout(Layout.UNBROKEN_DAYS).crew(2));
        }
        return problem;
    }

    private static Problems drawing(Problems problem, int count) {
        problem.battery(20_000).generator(20_000);
        for (int s = 0; s < count; s++) {
            problem.stage("s" + s, 20, d -> d.draws(300));
        }
        return problem;
    }

    private static Problems twentySubprojects(Problems problem) {
        for (int i = 0; i < 100; i++) {
            String lane = "p" + i % 20;
            if (i < 20) {
                problem.subproject(lane, 50 * i + 1);
            }
            problem.stage("s" + i, 24, s -> s.of(lane));
        }
        return problem;
    }

    private static Problems twoHundredNeeds() {
        Problems problem = weekends(30);
        for (int m = 0; m < 200; m++) {
            problem.material("m" + m, d -> d.grams(2_000).millilitres(2_000));
        }
        return problem.stage("fit", 200, s -> {
            IntStream.range(0, 200).forEach(m -> s.needs("m" + m, 3));
            return s;
        });
    }

    static Stream<Given> contradictions() {
        return Stream.of(
                noPlan(
                        "wait against pins",
                        () -> weekends(4)
                                .stage("pour", 8)
                                .stage("build", 8)
                                .wait("pour", "build", 7)
                                .pin("pour", "2027-05-15")
                                .pin("build", "2027-05-08")),
                noPlan(
                        "longest wait under least wait",
                        () -> weekends(4)
                                .stage("pour", 8)
                                .stage("build", 8)
                                .wait("pour", "build", new LeastWait.Days(7), 3)),
                noPlan("pin on no site day", () -> weekends(4).stage("pour", 8).pin("pour", "2027-05-05")),
                noPlan(
                        "pin in the year 9999",
                        () -> weekends(4).stage("pour", 8).pin("pour", "9999-12-31")),
                noPlan(
                        "pin before the cure is over",
                        () -> weekends(4)
                                .stage("pour", 0, s -> s.finishedOn("2027-04-30"))
                                .stage("build", 8)
                                .wait("pour", "build", 7)
                                .pin("build", "2027-05-01")),
                noPlan(
                        "cure that knows no finish",
                        () -> weekends(4)
                                .stage("pour", 8)
                                .stage("build", 8)
                                .wait("pour", "build", cure("2030-01-01"), Wait.NO_LIMIT)),
                either(
                        "cure that knows one finish",
                        () -> weekends(4)
                                .stage("pour", 8)
                                .stage("build", 8)
                                .wait("pour", "build", cure("2027-05-02"), Wait.NO_LIMIT)),
                noPlan(
                        "cure that knew no finish",
                        () -> weekends(4)
                                .stage("pour", 0, s -> s.finishedOn("2027-04-30"))
                                .stage("build", 8)
                                .wait("pour", "build", cure("2030-01-01"), Wait.NO_LIMIT)),
                plan(
                        "same day at the latest",
                        () -> weekends(4)
                                .stage("pour", 8)
                                .stage("build", 8)
                                .wait("pour", "build", new LeastWait.Days(0), 0)),
                either("chain that must be done at once", () -> chainAtOnce(40)));
    }

    private static LeastWait cure(String only) {
        return new LeastWait.ByFinishDate(LocalDate.parse(only), List.of(3));
    }

    private static Problems chainAtOnce(int length) {
        Problems problem = stages(weekends(10), length, 10);
        for (int s = 1; s < length; s++) {
            problem.wait("s" + (s - 1), "s" + s, new LeastWait.Days(0), 0);
        }
        return problem;
    }

    static Stream<Given> greatNumbers() {
        return Stream.of(
                noPlan("labour", () -> stages(weekends(4), 3, MOST)),
                plan(
                        "hours and labour",
                        () -> stages(problem().trip("t", "2027-05-01", 7, t -> t.quarters(MOST)), 5, MOST)),
                plan(
                        "hours and extra runs",
                        () -> problem()
                                .trip(
                                        "t",
                                        "2027-05-01",
                                        4,
                                        t -> t.quarters(MOST).extraRuns(MOST, MOST))
                                .material("sand", m -> m.grams(400_000))
                                .stage("dig", MOST, s -> s.needs("sand", 2))),
                either(
                        "extra runs without end",
                        () -> problem()
                                .trip("t", "2027-05-01", 4, t -> t.extraRuns(MOST, 0))
                                .material("sand", m -> m.grams(400_000))
                                .stage("dig", 8, s -> s.needs("sand", 5_000))),
                noPlan("draw", () -> weekends(4).stage("weld", 8, s -> s.draws(GREAT))),
                noPlan(
                        "draw that wraps to nothing",
                        () -> weekends(4)
                                .stage(
                                        "weld",
                                        8,
                                        s -> s.draws(GREAT).leastBlock(8).layout(Layout.IN_ONE_GO))),
                either(
                        "draw and battery",
                        () -> weekends(4)
                                .battery(PowerSupply.MOST)
                                .generator(PowerSupply.MOST)
                                .stage("weld", 8, s -> s.draws(GREAT))),
                plan(
                        "battery and generator",
                        () -> problem()
                                .trip(
                                        "t",
                                        "2027-05-01",
                                        4,
                                        t -> t.sun(PowerSupply.MOST, PowerSupply.MOST, 0, PowerSupply.MOST))
                                .battery(PowerSupply.MOST)
                                .generator(PowerSupply.MOST)
                                .stage("weld", 100, s -> s.draws(1_000))),
                noPlan(
                        "weight of a pack",
                        () -> weekends(4)
                                .material("rock", m -> m.grams(GREAT))
                                .stage("dig", 8, s -> s.needs("rock", 1))),
                noPlan(
                        "weight of a pack that wraps to nothing",
                        () -> weekends(4)
                                .material("rock", m -> m.grams(1L << 61))
                                .stage("dig", 8, s -> s.needs("rock", 1))),
                noPlan(
                        "size of a pack",
                        () -> weekends(4)
                                .material("rock", m -> m.millilitres(GREAT).dry())
                                .stage("dig", 8, s -> s.needs("rock", 8))),
                either(
                        "size and weight and room",
                        () -> problem()
                                .trip("t", "2027-05-01", 4, t -> t.rig(rig(Long.MAX_VALUE, 1000)))
                                .dryStorage(Long.MAX_VALUE)
                                .material(
                                        "rock",
                                        m -> m.millilitres(GREAT).grams(GREAT).dry())
                                .stage("dig", 8, s -> s.needs("rock", 8))),
                plan(
                        "room for anything",
                        () -> problem()
                                .trip("t", "2027-05-01", 4, t -> t.rig(rig(Long.MAX_VALUE, 1000)))
                                .dryStorage(Long.MAX_VALUE)
                                .material("rock", m -> m.dry())
                                .stage("dig", 8, s -> s.needs("rock", 800))),
                either(
                        "price of a pack",
                        () -> weekends(4)
                                .material("gold", m -> m.cents(GREAT))
                                .stage("gild", 8, s -> s.needs("gold", 8))),
                noPlan(
                        "price of a pack and a limit",
                        () -> weekends(4)
                                .material("gold", m -> m.cents(GREAT))
                                .spending(1_000_000, true)
                                .stage("gild", 8, s -> s.needs("gold", 8))),
                noPlan("packs", () -> weekends(4).material("sand").stage("dig", 8, s -> s.needs("sand", MOST))),
                either(
                        "packs of nothing",
                        () -> weekends(4)
                                .material("air", m -> m.grams(0).millilitres(0).cents(0))
                                .stage("dig", 8, s -> s.needs("air", MOST))
                                .stage("fill", 8, s -> s.needs("air", MOST))),
                either(
                        "packs on site",
                        () -> weekends(4)
                                .material(
                                        "sand",
                                        m -> m.grams(GREAT).millilitres(GREAT).dry())
                                .stock("sand", MOST, "2027-04-01")
                                .stock("sand", MOST, "2027-04-02")
                                .stage("dig", 8, s -> s.needs("sand", 8))),
                noPlan(
                        "least wait",
                        () -> weekends(4).stage("pour", 8).stage("build", 8).wait("pour", "build", MOST)),
                noPlan(
                        "least wait after a finished stage",
                        () -> weekends(4)
                                .stage("pour", 0, s -> s.finishedOn("2027-04-01"))
                                .stage("build", 8)
                                .wait("pour", "build", MOST)),
                noPlan(
                        "least waits one after the other",
                        () -> stages(weekends(4), 3, 8)
                                .wait("s0", "s1", MOST / 2)
                                .wait("s1", "s2", MOST / 2 + 1)),
                plan(
                        "longest wait",
                        () -> weekends(4)
                                .stage("pour", 8)
                                .stage("build", 8)
                                .wait("pour", "build", new LeastWait.Days(3), MOST - 1)),
                plan("year 9999", () -> stages(problem().weight(1000).trip("t", "9999-12-01", 31), 10, 8)),
                noPlan(
                        "materials that are never to be had",
                        () -> weekends(4)
                                .material("gold", m -> m.availableFrom("+999999999-12-31"))
                                .stage("gild", 8, s -> s.needs("gold", 8))),
                either(
                        "stock that comes at the end of time",
                        () -> weekends(4)
                                .material("gold", m -> m.shelfLife(10))
                                .stock("gold", 3, "+999999999-12-31")
                                .stage("gild", 8, s -> s.needs("gold", 8))),
                plan(
                        "no limit to speak of",
                        () -> weekends(4)
                                .material("sand")
                                .spending(Long.MAX_VALUE, true)
                                .stage("dig", 8, s -> s.needs("sand", 3))),
                noPlan(
                        "nothing to spend",
                        () -> weekends(4).material("sand").spending(0, true).stage("dig", 8, s -> s.needs("sand", 3))),
                plan(
                        "nothing to spend, but more is",
                        () -> weekends(4).material("sand").spending(0, false).stage("dig", 8, s -> s.needs("sand", 3))),
                plan(
                        "tools",
                        () -> stages(weekends(4).tool("nail", MOST), 1, 8)
                                .stage("a", 8, s -> s.uses("nail", MOST))
                                .stage("b", 8, s -> s.uses("nail", MOST))
                                .stage("c", 8, s -> s.uses("nail", 1))),
                plan(
                        "supplier's truck",
                        () -> weekends(4)
                                .material("sand", m -> m.grams(1_000_000))
                                .offer(quarry(Long.MAX_VALUE, 10))
                                .stage("dig", 8, s -> s.needs("sand", 30))),
                either(
                        "supplier's truck and its packs",
                        () -> weekends(4)
                                .material("sand", m -> m.grams(GREAT))
                                .offer(quarry(Long.MAX_VALUE, 10))
                                .stage("dig", 8, s -> s.needs("sand", 30))),
                either(
                        "supplier's fee",
                        () -> weekends(4)
                                .material("sand", m -> m.grams(1_000_000))
                                .offer(quarry(2_000_000, GREAT))
                                .stage("dig", 8, s -> s.needs("sand", 30))),
                plan(
                        "share over a whole",
                        () -> problem()
                                .trip("t", "2027-05-01", 4, t -> t.rig(rig(500_000, 1_700)))
                                .material("sand")
                                .stage("dig", 8, s -> s.needs("sand", 8))),
                noPlan(
                        "share without end",
                        () -> problem()
                                .trip("t", "2027-05-01", 4, t -> t.rig(rig(500_000, MOST)))
                                .material("sand")
                                .stage("dig", 8, s -> s.needs("sand", 8))));
    }

    private static Rig rig(long most, int share) {
        return new Rig(
                "van",
                "Van",
                List.of(new Bay("back", "Back", most, 5_000)),
                List.of(new MassLimit("Payload", most, Map.of("back", share))));
    }

    private record Stopped(String name, Supplier<Problems> problem, Effort effort) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Stopped> stopped() {
        Effort lasting = new Effort(1_000_000, 1, 30);
        Effort proof = new Effort(20, 1, 30);
        return Stream.of(
                new Stopped("search", () -> loaded(500, 400, 64), lasting),
                new Stopped("search, 100000 waits", () -> fromAllToAll(3), lasting),
                new Stopped("200 stages on 150 days", () -> stages(season(150), 200, 20), new Effort(5_000, 1, 30)),
                new Stopped("proof, 200 stages on 150 days", () -> stages(season(150), 200, 20), proof),
                new Stopped("proof, 200 stages with draws on 150 days", () -> drawing(season(150), 200), proof),
                new Stopped("proof, 60 stages in a tight season", () -> tight(weekends(40), 60), proof),
                new Stopped("proof, 150 stages in a tight season of 150 days", () -> tight(season(150), 150), proof),
                new Stopped("proof, 20 subprojects on 60 weekends", () -> twentySubprojects(weekends(60)), proof),
                new Stopped("proof, 200 stages with loads on 75 weekends", () -> loaded(75, 200, 20), proof),
                new Stopped("proof, 20 subprojects on 1000 days", () -> twentySubprojects(season(1000)), proof));
    }

    /** The hours do, but in blocks that hardly fit beside each other. */
    private static Problems tight(Problems problem, int count) {
        for (int s = 0; s < count; s++) {
            int quarters = 17 + s % 7 * 4;
            String lane = s % 2 == 0 ? "barn" : "cabin";
            problem.stage(
                    "s" + s,
                    quarters,
                    d -> d.of(lane).leastBlock(9 + quarters % 5).draws(200).needs("wood", 3));
            if (s >= 7) {
                problem.wait("s" + (s - 7), "s" + s, new LeastWait.Days(2), 40);
            }
        }
        return problem.subproject("barn", 3)
                .material("wood", m -> m.dry())
                .battery(6_000)
                .generator(6_000);
    }

    @ParameterizedTest
    @MethodSource("stopped")
    void ends_soon_after_a_stop(Stopped what, TestReporter reporter) {
        Style style = what.name().endsWith("weekends") ? Style.LEAST_MONEY : Style.SOONEST;
        PlanningProblem problem = what.problem().get().build().withStyle(style);
        for (int after : STOPS_AFTER_MILLIS) {
            Duration took = assertTimeoutPreemptively(NET, () -> afterStop(problem, what.effort(), after));
            reporter.publishEntry(what + ", after " + after, took.toMillis() + " ms");
            assertThat(took).isLessThan(Duration.ofSeconds(2));
        }
    }

    /** What the planner still took of the processor after it was told to stop; nothing when it ended before. */
    private static Duration afterStop(PlanningProblem problem, Effort effort, int after) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long planning = Thread.currentThread().threadId();
        Stop stop = new Stop();
        AtomicLong atStop = new AtomicLong(Long.MAX_VALUE);
        Thread stopper = Thread.ofPlatform().daemon().start(() -> {
            sleep(after);
            atStop.set(threads.getThreadCpuTime(planning));
            stop.stop();
        });
        new ConstructivePlanner().plan(problem, effort, (built, of) -> {}, stop);
        long took = threads.getCurrentThreadCpuTime() - atStop.get();
        stopper.interrupt();
        return Duration.ofNanos(Math.max(0, took));
    }

    private static void sleep(int millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static DeliveryOffer quarry(long grams, long cents) {
        return new DeliveryOffer("quarry", "Quarry", Set.of("sand"), grams, Problems.STATUS_DATE, ANY_DAY, cents);
    }
}
