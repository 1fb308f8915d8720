package org.firmset.season.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.measure.UnitSystem;
import org.firmset.plan.Effort;
import org.firmset.plan.RunKind;
import org.firmset.plan.Style;
import org.firmset.season.TwoWeekendsFile;
import org.firmset.season.problem.OutfitWriter;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.PlannedSeason;
import org.firmset.season.result.SeasonReport;
import org.firmset.trade.haul.LimitKind;
import org.firmset.trade.haul.LoadLimit;
import org.firmset.trade.haul.Tongue;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class TripLoadsWriterTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

    private static PlannedSeason season(Homestead homestead) {
        SeasonPlanner.Result result = new SeasonPlanner().plan(homestead, TODAY, Style.SOONEST, new Effort(300, 1));
        return ((SeasonPlanner.Result.Planned) result).season();
    }

    private static List<TripLoads> loads(Homestead homestead, PlannedSeason season) {
        return season.report().madeTrips().stream()
                .map(t -> TripLoadsWriter.of(homestead, season, t.key()))
                .toList();
    }

    @Nested
    class Demo {
        /** A trailer with so little on it sways by nothing. */
        private static final long TRIFLE_GRAMS = 20_000;

        private static final Homestead PLACE = SeedHomesteads.demo(TODAY);
        private static final PlannedSeason SEASON = season(PLACE);
        private static final List<TripLoads> LOADS = loads(PLACE, SEASON);
        private static final List<TripLoads.OwnRun> OWN =
                LOADS.stream().flatMap(l -> l.own().stream()).toList();

        @Test
        void every_run_has_a_placement_that_holds_every_limit() {
            assertThat(OWN).hasSizeGreaterThan(10);
            for (TripLoads.OwnRun run : OWN) {
                assertThat(run.placement().excesses())
                        .as(run.about().toString())
                        .isEmpty();
                assertThat(run.placement().sheet().limits())
                        .extracting(LoadLimit::kind)
                        .contains(LimitKind.FRONT_AXLE, LimitKind.REAR_AXLE, LimitKind.TRAILER_AXLE);
            }
        }

        @Test
        void the_tongue_of_a_loaded_trailer_carries_10_to_15_percent_of_it() {
            List<Tongue> loaded = OWN.stream()
                    .filter(r -> onDeck(r) > TRIFLE_GRAMS)
                    .map(r -> Objects.requireNonNull(r.placement().sheet().tongue()))
                    .toList();
            assertThat(loaded).hasSizeGreaterThan(10);
            assertThat(loaded).allMatch(t -> t.share() >= 0.10 && t.share() <= 0.15);
            // the middle of the band is aimed at
            assertThat(loaded.stream().mapToDouble(Tongue::share).average().orElseThrow())
                    .isBetween(0.115, 0.135);
        }

        private static long onDeck(TripLoads.OwnRun run) {
            return run.placement().stowed().stream()
                    .filter(s -> s.cargo().bay().equals(OutfitWriter.DECK))
                    .mapToLong(s -> s.grams())
                    .sum();
        }

        @Test
        void every_pack_of_the_plan_has_its_place_and_its_restraint() {
            for (TripLoads.OwnRun run : OWN) {
                Map<String, Integer> wanted = new HashMap<>();
                run.about().loads().forEach(l -> wanted.merge(l.material(), l.packs(), Integer::sum));
                Map<String, Integer> placed = new HashMap<>();
                run.items()
                        .forEach(i -> placed.merge(
                                i.cargo().packs().kind(),
                                i.places().stream().mapToInt(s -> s.packs()).sum(),
                                Integer::sum));
                assertThat(placed).isEqualTo(wanted);
                assertThat(run.items()).allMatch(i -> i.restraint().leastTies() > 0);
            }
        }

        @Test
        void what_the_work_uses_first_comes_off_first() {
            for (TripLoads.OwnRun run : OWN) {
                assertThat(run.items().stream().map(TripLoads.Item::off))
                        .containsExactlyElementsOf(
                                IntStream.rangeClosed(1, run.items().size())
                                        .boxed()
                                        .toList());
                List<LocalDate> used = run.items().stream()
                        .map(i -> i.use() == null ? LocalDate.MAX : i.use().date())
                        .toList();
                assertThat(used).as(run.about().toString()).isSorted();
            }
        }

        @Test
        void the_binding_limit_is_named_with_what_is_left() {
            LoadWords words = new LoadWords(UnitSystem.US);
            for (TripLoads.OwnRun run : OWN) {
                LoadLimit binding = run.placement().sheet().binding();
                assertThat(words.summary(run))
                        .contains(
                                "the " + binding.kind().words() + " binds: ",
                                words.mass(binding.leftGrams()) + " left.");
                assertThat(words.limits(run.placement().sheet()).rows())
                        .filteredOn(row -> row.getLast().equals("binds"))
                        .hasSize(1);
            }
        }

        @Test
        void stock_before_and_what_comes_is_used_goes_off_or_is_there_after() {
            for (TripLoads trip : LOADS) {
                assertThat(trip.stock())
                        .isNotEmpty()
                        .allMatch(s -> s.before() + s.arrived() == s.used() + s.goneOff() + s.after());
                TripLoads.DryRoom room = Objects.requireNonNull(trip.dryRoom());
                assertThat(room.most().value()).isLessThanOrEqualTo(room.limit().value());
            }
            for (int i = 1; i < LOADS.size(); i++) {
                Map<String, Integer> before = new HashMap<>();
                LOADS.get(i - 1).stock().forEach(s -> before.put(s.material(), s.after()));
                assertThat(LOADS.get(i).stock()).allMatch(s -> before.getOrDefault(s.material(), 0) >= s.before());
            }
        }

        @Test
        void shopping_lists_buy_what_the_runs_carry() {
            for (TripLoads.OwnRun run : OWN) {
                int bought = run.shopping().stops().stream()
                        .flatMap(s -> s.lines().stream())
                        .mapToInt(SeasonSupplies.Line::packs)
                        .sum();
                assertThat(bought)
                        .isEqualTo(run.about().loads().stream()
                                .mapToInt(SeasonReport.LoadPart::packs)
                                .sum());
            }
        }

        @Test
        void deliveries_have_their_truck_and_fee() {
            List<TripLoads.BroughtRun> brought =
                    LOADS.stream().flatMap(l -> l.brought().stream()).toList();
            assertThat(brought).isNotEmpty().allMatch(b -> b.about().kind() == RunKind.DELIVERY);
            // the file's fee of the masonry yard and its largest mass
            assertThat(brought)
                    .filteredOn(b -> b.supplier().equals("masonry-yard"))
                    .isNotEmpty()
                    .allSatisfy(b -> assertThat(new LoadWords(UnitSystem.US).summary(b))
                            .contains("of at most 20,000 lb", "bringing it costs $285.00", "Somebody must be there"));
        }

        @Test
        void fewer_runs_than_the_proof_allows_are_not_told_of() {
            for (TripLoads trip : LOADS) {
                TripLoads.Fewest fewest = trip.fewest();
                assertThat(fewest.planned()).isEqualTo(trip.own().size());
                assertThat(fewest.least()).isLessThanOrEqualTo(fewest.found());
                assertThat(fewest.found()).isLessThanOrEqualTo(fewest.planned());
            }
            assertThat(LoadWords.fewest(new TripLoads.Fewest(2, 2, 2)))
                    .isEqualTo("2 runs; no way of loading needs fewer.");
            assertThat(LoadWords.fewest(new TripLoads.Fewest(2, 1, 1))).contains("1 would do");
            assertThat(LoadWords.fewest(new TripLoads.Fewest(3, 3, 2))).contains("none with fewer than 2");
        }

        @Test
        void a_trip_that_is_not_made_is_a_programmers_mistake() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TripLoadsWriter.of(PLACE, SEASON, "2027-01-01"))
                    .withMessageContaining("2027-01-01");
        }
    }

    /** Planned by hand in docs/two-weekends.md; its van has no axles told and tows nothing. */
    @Nested
    class WithoutAxles {
        private static final Homestead PLACE = TwoWeekendsFile.read();
        private static final PlannedSeason SEASON = season(PLACE);
        private static final TripLoads FIRST = TripLoadsWriter.of(PLACE, SEASON, "2027-05-08");

        @Test
        void only_the_payload_is_held_and_it_is_said_how_to_weigh() {
            TripLoads.OwnRun run = FIRST.own().getFirst();
            assertThat(run.placement().sheet().limits())
                    .extracting(LoadLimit::kind)
                    .containsExactly(LimitKind.PAYLOAD);
            assertThat(run.placement().holds()).isTrue();
            assertThat(new LoadWords(UnitSystem.METRIC).toMind(run))
                    .singleElement()
                    .asString()
                    .contains("Not known: the axles of Van", "A public scale", "each axle by itself");
            assertThat(new LoadWords(UnitSystem.METRIC).tongue(run.placement().sheet()))
                    .isEmpty();
        }

        @Test
        void gravel_comes_off_before_what_is_set_in_concrete() {
            assertThat(FIRST.own().getFirst().items())
                    .extracting(i -> i.cargo().packs().kind())
                    .first()
                    .isEqualTo("gravel-25");
        }
    }
}
