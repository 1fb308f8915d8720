package org.firmset.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import org.firmset.Firmset;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Stage;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.homestead.store.Changes;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.store.Kept;
import org.firmset.plan.Style;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.store.SeasonPlans;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

/** What plans promise to whoever changes a homestead, on any database. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class SeasonsContract {
    private static final Duration LONGEST = Duration.ofSeconds(60);

    private ConfigurableApplicationContext program;
    private UUID demo;

    /** What the owner of the program would set. */
    abstract Map<String, Object> environment() throws IOException;

    @BeforeAll
    void open() throws IOException {
        program = start();
    }

    @BeforeEach
    void addDemo() {
        Changes.Change added = program.getBean(Changes.class)
                .add(SeedHomesteads.demo(LocalDate.now(java.time.ZoneId.systemDefault())));
        demo = ((Changes.Change.Stored) added).kept().id();
    }

    private ConfigurableApplicationContext start() throws IOException {
        // what is promised does not hang on how long is looked
        List<String> arguments =
                new ArrayList<>(List.of("--server.port=0", "--firmset.planner.plans=800", "--firmset.planner.proof=1"));
        environment().forEach((name, value) -> arguments.add("--" + name + "=" + value));
        return new SpringApplicationBuilder(Firmset.class).run(arguments.toArray(String[]::new));
    }

    @AfterAll
    void close() {
        program.close();
    }

    private Seasons seasons() {
        return program.getBean(Seasons.class);
    }

    private Kept kept() {
        return program.getBean(Homesteads.class).find(demo).orElseThrow();
    }

    /** Plans are made in the background: waits for the state, and says which one came instead. */
    private SeasonState await(Predicate<SeasonState> wanted) {
        Instant until = Instant.now().plus(LONGEST);
        SeasonState state = seasons().state(demo);
        while (!wanted.test(state) && Instant.now().isBefore(until)) {
            try {
                Thread.sleep(20);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            state = seasons().state(demo);
        }
        assertThat(state).matches(wanted);
        return state;
    }

    private SeasonReport keptReport(Predicate<SeasonReport> wanted) {
        await(s -> s instanceof SeasonState.Planned planned
                && planned.last()
                && program.getBean(SeasonPlans.class)
                        .latest(demo)
                        .filter(p -> p.report().equals(s.report()) && wanted.test(p.report()))
                        .isPresent());
        return program.getBean(SeasonPlans.class).latest(demo).orElseThrow().report();
    }

    private Changes.Change changeStage(String key, long version, java.util.function.UnaryOperator<Stage> how) {
        return program.getBean(Changes.class).change(demo, version, h -> StageCopies.withStage(h, key, how));
    }

    @Test
    void aPlanIsTheSameAfterARestart() throws IOException {
        SeasonReport before = keptReport(r -> true);
        program.close();
        program = start();
        assertThat(program.getBean(SeasonPlans.class).latest(demo).orElseThrow().report())
                .isEqualTo(before);
    }

    @Test
    void listenersHearOfThePlanThatFollowsAChange() {
        keptReport(r -> true);
        List<SeasonState> heard = new ArrayList<>();
        Seasons.Listening listening = seasons().listen(demo, heard::add);
        changeStage("cabin-flue", kept().version(), s -> StageCopies.withCrew(s, 2));
        keptReport(r -> true);
        listening.end();
        assertThat(heard).hasAtLeastOneElementOfType(SeasonState.Planning.class);
        assertThat(heard).hasAtLeastOneElementOfType(SeasonState.Planned.class);
    }

    @Test
    void aHomesteadWithoutAPlanKeepsTheLastOneAndNamesTheObstacle() {
        SeasonReport before = keptReport(r -> true);
        changeStage("cabin-flue", kept().version(), s -> StageCopies.withCrew(s, 40));
        SeasonState state = await(s -> s instanceof SeasonState.NoPlan);
        assertThat(state.report()).isEqualTo(before);
        assertThat(((SeasonState.NoPlan) state).obstacles())
                .singleElement()
                .satisfies(o -> assertThat(o.message()).contains("needs 40 people at once"));
        assertThat(program.getBean(SeasonPlans.class).latest(demo).orElseThrow().report())
                .isEqualTo(before);
    }

    @Test
    void anotherStyleIsPlannedAndRemembered() {
        keptReport(r -> true);
        seasons().choose(demo, Style.FEWEST_TRIPS);
        assertThat(keptReport(r -> r.style() == Style.FEWEST_TRIPS).style()).isEqualTo(Style.FEWEST_TRIPS);
    }

    @Test
    void theFirstPlanIsKeptForGood() {
        SeasonReport first = keptReport(r -> true);
        seasons().choose(demo, Style.LEAST_MONEY);
        keptReport(r -> r.style() == Style.LEAST_MONEY);
        Optional<SeasonReport> kept =
                program.getBean(SeasonPlans.class).first(demo).map(p -> p.report());
        assertThat(kept).contains(first);
    }

    @Test
    void aFaultyChangeIsRefusedAndNothingIsStored() {
        long version = kept().version();
        Changes.Change refused = program.getBean(Changes.class)
                .change(
                        demo,
                        version,
                        h -> new Homestead(
                                h.name(),
                                h.units(),
                                "EUR",
                                h.place(),
                                h.travel(),
                                h.openDates(),
                                h.people(),
                                h.subprojects(),
                                h.stages(),
                                h.waits(),
                                h.materials(),
                                h.suppliers(),
                                h.tools(),
                                h.vehicles(),
                                h.trailers(),
                                h.power(),
                                h.spendingLimit(),
                                h.budgeting(),
                                h.storage(),
                                h.stock(),
                                h.pins(),
                                h.takeoffs(),
                                h.water()));
        assertThat(refused).isInstanceOf(Changes.Change.Refused.class);
        assertThat(kept().version()).isEqualTo(version);
    }

    @Test
    void aChangeOfAnOldVersionIsOutdatedAndNothingIsStored() {
        long version = kept().version();
        changeStage("cabin-flue", version, s -> StageCopies.withCrew(s, 2));
        Changes.Change late = changeStage("cabin-flue", version, s -> StageCopies.withCrew(s, 3));
        assertThat(late).isInstanceOf(Changes.Change.Outdated.class);
        assertThat(kept().homestead().stages())
                .filteredOn(s -> s.key().equals("cabin-flue"))
                .allMatch(s -> s.crew() == 2);
    }

    @Test
    void theHomesteadOpenedLastIsTheOneShown() {
        Homesteads homesteads = program.getBean(Homesteads.class);
        UUID second = homesteads.add(kept().homestead()).id();
        assertThat(homesteads.opened()).contains(second);
        homesteads.open(demo);
        assertThat(homesteads.opened()).contains(demo);
    }
}
