package org.firmset.homestead.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import jakarta.persistence.PersistenceException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Person;
import org.firmset.homestead.Pin;
import org.firmset.homestead.Place;
import org.firmset.homestead.Stage;
import org.firmset.homestead.StockLot;
import org.firmset.homestead.Storage;
import org.firmset.homestead.Subproject;
import org.firmset.homestead.Travel;
import org.firmset.homestead.Wait;
import org.firmset.homestead.WaitKind;
import org.firmset.measure.Cash;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** What {@link Homesteads} promises on every database; a subclass says only which one. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class HomesteadsContract {
    private static final Homestead RICH = RichHomestead.make();
    private static final Homestead PLAIN = PlainHomestead.make();

    private Store store;
    private Homesteads homesteads;

    /** What to set in the environment so that the program uses this database. */
    abstract Map<String, Object> environment() throws Exception;

    @BeforeAll
    void open() throws Exception {
        store = Store.open(environment());
        homesteads = store.homesteads();
    }

    @AfterAll
    void close() throws Exception {
        store.close();
    }

    private void restart() throws Exception {
        store.close();
        open();
    }

    private Homestead found(Kept kept) {
        return homesteads.find(kept.id()).orElseThrow().homestead();
    }

    @Nested
    class WhatWasSaved {
        @Test
        void isFoundWholeAfterARestart() throws Exception {
            Kept rich = homesteads.add(RICH);
            Kept plain = homesteads.add(PLAIN);
            restart();
            assertThat(homesteads.find(rich.id())).contains(rich);
            assertThat(homesteads.find(plain.id())).contains(plain);
        }

        @Test
        void isFoundWholeWhenEveryPartWasTakenAwayOrAdded() {
            Kept rich = homesteads.add(RICH);
            Kept plain = homesteads.replace(rich.id(), rich.version(), PLAIN);
            assertThat(found(plain)).isEqualTo(PLAIN);
            Kept again = homesteads.replace(plain.id(), plain.version(), RICH);
            assertThat(found(again)).isEqualTo(RICH);
        }

        @Test
        void keepsTheOrderOfEveryList() {
            Kept kept = homesteads.add(RICH);
            Homestead reversed = RecordTree.reversed(RICH);
            Kept replaced = homesteads.replace(kept.id(), kept.version(), reversed);
            assertThat(found(replaced)).isEqualTo(reversed).isNotEqualTo(RICH);
        }

        @Test
        void mayHoldTheSameEntryTwice() {
            Homestead doubled = RecordTree.with(
                    RICH,
                    "pins",
                    Stream.concat(RICH.pins().stream(), RICH.pins().stream()).toList());
            Kept kept = homesteads.add(doubled);
            assertThat(found(kept)).isEqualTo(doubled);
        }

        @Test
        void keepsThatNobodyNeedMeetADelivery() {
            Homestead unmet = RecordTree.with(
                    RICH,
                    "suppliers",
                    RICH.suppliers().stream()
                            .map(s -> RecordTree.with(
                                    s,
                                    "delivery",
                                    RecordTree.with(Objects.requireNonNull(s.delivery()), "attended", false)))
                            .toList());
            assertThat(found(homesteads.add(unmet))).isEqualTo(unmet).isNotEqualTo(RICH);
        }

        @Test
        void carriesTheTimeOfTheChangeAndANewVersion() {
            Kept added = homesteads.add(RICH);
            Kept same = homesteads.replace(added.id(), added.version(), RICH);
            assertThat(same.changedAt()).isEqualTo(Store.NOW);
            assertThat(same.version()).isNotEqualTo(added.version());
            assertThat(homesteads.find(added.id())).contains(same);
        }

        @Test
        void isListedByName() {
            Kept second = homesteads.add(RichHomestead.named("b"));
            Kept first = homesteads.add(RichHomestead.named("a"));
            assertThat(homesteads.list())
                    .containsSubsequence(
                            new Listed(first.id(), "a", Store.NOW), new Listed(second.id(), "b", Store.NOW));
        }

        @Test
        void isReadWithAsManyQueriesForManyStagesAsForFew() {
            Kept few = homesteads.add(RICH);
            Kept many = homesteads.add(RecordTree.with(
                    RICH,
                    "stages",
                    Stream.concat(RICH.stages().stream(), manyStages(90)).toList()));
            long forFew = store.statementsDuring(() -> homesteads.find(few.id()));
            long forMany = store.statementsDuring(() -> homesteads.find(many.id()));
            assertThat(forFew).isLessThanOrEqualTo(35);
            assertThat(forMany).isEqualTo(forFew);
        }

        private Stream<Stage> manyStages(int count) {
            Stage stage = RICH.stages().getFirst();
            return IntStream.range(0, count).mapToObj(i -> RecordTree.with(stage, "key", "more-" + i));
        }
    }

    @Nested
    class Replacing {
        @Test
        void keepsTheIdsOfWhatStays() {
            Kept kept = homesteads.add(RICH);
            List<UUID> before = store.idsOf("stage", kept.id());
            Homestead changed = RecordTree.with(
                    RICH,
                    "stages",
                    RICH.stages().stream()
                            .map(stage -> RecordTree.with(stage, "name", "Other name"))
                            .toList());
            homesteads.replace(kept.id(), kept.version(), changed);
            assertThat(store.idsOf("stage", kept.id()))
                    .isEqualTo(before)
                    .startsWith(Kind.STAGE.idOf(kept.id(), "footings"));
        }

        @Test
        void removesTheRowsOfWhatIsGone() {
            homesteads.add(RICH);
            Map<String, Long> before = store.rowCounts();
            Kept kept = homesteads.add(PLAIN);
            Map<String, Long> withPlain = store.rowCounts();
            Kept rich = homesteads.replace(kept.id(), kept.version(), RICH);
            homesteads.replace(kept.id(), rich.version(), PLAIN);
            assertThat(store.rowCounts()).isEqualTo(withPlain).isNotEqualTo(before);
            assertThat(store.idsOf("stage", kept.id()))
                    .containsExactly(Kind.STAGE.idOf(kept.id(), "roof"), Kind.STAGE.idOf(kept.id(), "footings"));
        }

        @Test
        void movesAStageFromASubprojectThatGoesToOneThatComes() {
            Kept kept = homesteads.add(PLAIN);
            Homestead moved = RecordTree.with(
                    RecordTree.with(
                            PLAIN,
                            "subprojects",
                            List.of(new Subproject("shop", "Shop", Cash.ofCents(100, "CHF"), 1, null))),
                    "stages",
                    PLAIN.stages().stream()
                            .map(stage -> RecordTree.with(stage, "subproject", "shop"))
                            .toList());
            Kept replaced = homesteads.replace(kept.id(), kept.version(), moved);
            assertThat(found(replaced)).isEqualTo(moved);
        }

        @Test
        void ofWhatSomeoneChangedMeanwhileIsRefused() {
            Kept first = homesteads.add(RICH);
            Kept second = homesteads.replace(first.id(), first.version(), PLAIN);
            assertThatThrownBy(() -> homesteads.replace(first.id(), first.version(), RICH))
                    .isInstanceOf(ChangedMeanwhile.class)
                    .hasMessage("version [1] of homestead [Plain] is not the latest [2]: it was changed meanwhile at"
                            + " 2027-04-03T10:15:30.123456Z, and nothing was saved.\n"
                            + "Maybe load it again and make the change once more.");
            assertThat(homesteads.find(first.id())).contains(second);
        }

        @Test
        void ofWhatSomeoneRemovedMeanwhileIsRefused() {
            Kept kept = homesteads.add(PLAIN);
            homesteads.remove(kept.id());
            assertThatThrownBy(() -> homesteads.replace(kept.id(), kept.version(), PLAIN))
                    .isInstanceOf(ChangedMeanwhile.class)
                    .hasMessageStartingWith("homestead [Plain] was removed meanwhile, and nothing was saved.");
        }
    }

    @Nested
    class Removing {
        @Test
        void leavesNoRowBehindAndTouchesNoOther() {
            Kept other = homesteads.add(RICH);
            Map<String, Long> before = store.rowCounts();
            Kept kept = homesteads.add(RICH);
            homesteads.remove(kept.id());
            assertThat(store.rowCounts()).isEqualTo(before);
            assertThat(homesteads.find(kept.id())).isEmpty();
            assertThat(found(other)).isEqualTo(RICH);
        }

        @Test
        void whatIsNotThereDoesNothing() {
            Map<String, Long> before = store.rowCounts();
            homesteads.remove(new UUID(1, 2));
            assertThat(store.rowCounts()).isEqualTo(before);
        }
    }

    @Nested
    class TwoHomesteadsWithTheSameKeys {
        @Test
        void liveSideBySide() {
            Kept one = homesteads.add(RichHomestead.named("one"));
            Kept two = homesteads.add(RichHomestead.named("two"));
            Kept changed = homesteads.replace(two.id(), two.version(), PLAIN);
            assertThat(homesteads.find(one.id())).contains(one);
            assertThat(homesteads.find(two.id())).contains(changed);
        }
    }

    @Nested
    class ASaveThatFails {
        @Test
        void leavesEverythingAsItWas() {
            Kept kept = homesteads.add(RICH);
            Map<String, Long> before = store.rowCounts();
            for (Homestead broken : brokenOnes()) {
                assertThat(catchThrowable(() -> homesteads.replace(kept.id(), kept.version(), broken)))
                        .isNotNull()
                        .isNotInstanceOf(ChangedMeanwhile.class);
                assertThat(catchThrowable(() -> homesteads.add(broken))).isNotNull();
            }
            assertThat(store.rowCounts()).isEqualTo(before);
            assertThat(homesteads.find(kept.id())).contains(kept);
        }

        private List<Homestead> brokenOnes() {
            return List.of(
                    RecordTree.with(PLAIN, "waits", List.of(waitFor("moat"))),
                    RecordTree.with(PLAIN, "pins", List.of(new Pin("moat", List.of(), "why"))),
                    RecordTree.with(
                            PLAIN,
                            "stock",
                            List.of(new StockLot(
                                    "cement", -1, RICH.stock().getFirst().since()))),
                    RecordTree.with(PLAIN, "currency", "EUR"));
        }

        @Test
        void forAnUnknownKeySaysWhich() {
            Homestead broken = RecordTree.with(PLAIN, "waits", List.of(waitFor("moat")));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> homesteads.add(broken))
                    .withMessage("stage [moat] is named but is not in the homestead.\n"
                            + "Maybe it was removed, or its key is misspelt.");
        }

        @Test
        void forAKeyThatStandsTwiceSaysWhich() {
            Person person = new Person("abe", "Abe", Mass.ofKilograms(80), 100);
            Homestead broken = RecordTree.with(PLAIN, "people", List.of(person, person));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> homesteads.add(broken))
                    .withMessage("key [abe] of a person in homestead [Plain] must be unique");
        }

        @Test
        void forAnotherCurrencySaysWhich() {
            Travel travel = RecordTree.with(PLAIN.travel(), "costPerDay", Cash.ofCents(1234, "EUR"));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> homesteads.add(RecordTree.with(PLAIN, "travel", travel)))
                    .withMessage("currency of amount [12.34 EUR] in homestead [Plain] must be its one currency [CHF]");
        }

        @Test
        void forAValueThatCannotBeIsRefusedByTheDatabaseItself() {
            Storage lessThanNothing = new Storage(Volume.ofCubicMetres(-1));
            Place beyondThePole = new Place(new BigDecimal("90.1"), BigDecimal.ZERO, "UTC", List.of(), null, List.of());
            assertThatThrownBy(() -> homesteads.add(RecordTree.with(PLAIN, "storage", lessThanNothing)))
                    .isInstanceOf(PersistenceException.class);
            assertThatThrownBy(() -> homesteads.add(RecordTree.with(PLAIN, "place", beyondThePole)))
                    .isInstanceOf(PersistenceException.class);
        }

        private Wait waitFor(String stage) {
            return new Wait("new", "New", WaitKind.DRY, "roof", stage, 1, null, null);
        }
    }

    @Nested
    class AtTheSameTime {
        @Test
        void ofTwoChangesOfOneVersionOneIsRefused() throws Exception {
            Kept kept = homesteads.add(PLAIN);
            List<Object> outcomes = together(
                    () -> homesteads.replace(kept.id(), kept.version(), RICH),
                    () -> homesteads.replace(kept.id(), kept.version(), RecordTree.reversed(RICH)));
            assertThat(outcomes).hasAtLeastOneElementOfType(ChangedMeanwhile.class);
            Kept winner = outcomes.stream()
                    .filter(Kept.class::isInstance)
                    .map(Kept.class::cast)
                    .findFirst()
                    .orElseThrow();
            assertThat(homesteads.find(kept.id())).contains(winner);
        }

        @Test
        void aReaderNeverSeesHalfAChange() throws Exception {
            Kept kept = homesteads.add(RICH);
            List<Object> outcomes = together(() -> replaceOverAndOver(kept, 20), () -> readOverAndOver(kept, 60));
            assertThat(outcomes).allMatch("done"::equals);
        }

        private String replaceOverAndOver(Kept first, int times) {
            Kept kept = first;
            for (int i = 0; i < times; i++) {
                kept = homesteads.replace(kept.id(), kept.version(), i % 2 == 0 ? PLAIN : RICH);
            }
            return "done";
        }

        private String readOverAndOver(Kept kept, int times) {
            for (int i = 0; i < times; i++) {
                assertThat(found(kept)).isIn(PLAIN, RICH);
            }
            return "done";
        }

        /** What each gives back or throws. */
        private List<Object> together(Callable<?> one, Callable<?> other) throws Exception {
            CountDownLatch start = new CountDownLatch(1);
            try (var threads = Executors.newFixedThreadPool(2)) {
                List<Future<Object>> futures = Stream.of(one, other)
                        .map(work -> threads.submit(() -> outcome(start, work)))
                        .toList();
                start.countDown();
                return List.of(futures.get(0).get(), futures.get(1).get());
            }
        }

        private Object outcome(CountDownLatch start, Callable<?> work) throws Exception {
            start.await();
            try {
                return work.call();
            } catch (Exception | AssertionError e) {
                return e;
            }
        }
    }
}
