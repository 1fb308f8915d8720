package org.firmset.season.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.measure.Hours;
import org.firmset.measure.Mass;
import org.firmset.plan.Effort;
import org.firmset.plan.Load;
import org.firmset.plan.Material;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.Style;
import org.firmset.plan.Trip;
import org.firmset.season.TwoWeekendsFile;
import org.firmset.season.problem.OutfitWriter;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.PlannedSeason;
import org.firmset.trade.haul.MassLimit;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class LoadChangeTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Mass NOBODY = Mass.ofKilograms(0);

    private static PlannedSeason season(Homestead homestead) {
        SeasonPlanner.Result result = new SeasonPlanner().plan(homestead, TODAY, Style.SOONEST, new Effort(300, 1));
        return ((SeasonPlanner.Result.Planned) result).season();
    }

    /** Planned by hand in docs/two-weekends.md; what is expected here follows from its tables. */
    @Nested
    class TwoWeekends {
        private static final String FIRST = "2027-05-08";
        private static final Homestead PLACE = TwoWeekendsFile.read();
        private static final PlannedSeason SEASON = season(PLACE);

        @Test
        void without_a_change_all_goes_in_and_on() {
            ChangedTrip changed = LoadChange.of(PLACE, SEASON, DayChange.had(FIRST, Map.of()));
            assertThat(changed.words())
                    .containsExactly(
                            "Goes in now, Van: 24 sacks of Gravel 8/16 mm, 25 kg; 9 bags of Post concrete, 25 kg; 4 posts"
                                    + " of Post 9 x 9 cm, 2.4 m.",
                            "All work of this trip goes on in full.");
        }

        @Test
        void a_stage_in_one_go_must_not_start_with_too_few_bags() {
            // by hand: 9 bags for 16 quarter-hours, rounded up; 5 bags are enough for 8
            ChangedTrip changed = LoadChange.of(PLACE, SEASON, DayChange.had(FIRST, Map.of("post-concrete-25", 5)));
            assertThat(changed.missing()).containsExactly(new ChangedTrip.Packs("post-concrete-25", 4));
            assertThat(changed.work())
                    .filteredOn(r -> r.stage().equals("posts"))
                    .containsExactly(new ChangedTrip.Reach(
                            "posts",
                            LocalDate.of(2027, 5, 9),
                            Hours.ofWhole(4),
                            Hours.ofWhole(2),
                            Hours.NONE,
                            List.of(new ChangedTrip.Lack("post-concrete-25", 5, 9)),
                            null));
            assertThat(changed.words())
                    .contains(
                            "Not to be had: 4 bags of Post concrete, 25 kg.",
                            "Set four posts in concrete on Sun 9 May must not start: 5 of 9 bags of Post concrete, 25 kg,"
                                    + " enough for 2 h of 4 h, and it has to be done in one go.",
                            "Goes on in full: Dig out and level the bed on Sat 8 May; Spread and tamp the gravel on Sat"
                                    + " 8 May.");
        }

        @Test
        void what_comes_after_a_stage_that_is_not_finished_cannot_start() {
            // by hand: 2 sacks a quarter-hour; 18 sacks are enough for 9 of 12
            ChangedTrip changed = LoadChange.of(PLACE, SEASON, DayChange.had(FIRST, Map.of("gravel-25", 18)));
            assertThat(changed.words())
                    .contains(
                            "Spread and tamp the gravel on Sat 8 May: 18 of 24 sacks of Gravel 8/16 mm, 25 kg, enough"
                                    + " for 2.25 h of 3 h.",
                            "Set four posts in concrete on Sun 9 May cannot start: Spread and tamp the gravel comes"
                                    + " first and will not be finished.");
        }

        @Test
        void with_a_helper_on_board_what_is_needed_last_stays() {
            // by hand: 900 - 100 = 800 kg: 24 sacks are 600, 8 bags 200; the ninth bag and the posts stay
            ChangedTrip changed =
                    LoadChange.of(PLACE, SEASON, new DayChange(FIRST, Map.of(), false, Mass.ofKilograms(100)));
            assertThat(changed.stays())
                    .containsExactlyInAnyOrder(
                            new ChangedTrip.Packs("post-concrete-25", 1), new ChangedTrip.Packs("post", 4));
            assertThat(changed.another()).isEmpty();
            assertThat(changed.words())
                    .anySatisfy(
                            w -> assertThat(w).startsWith("Set four posts in concrete on Sun 9 May must not start"));
        }

        @Test
        void a_trip_that_is_not_planned_is_a_programmers_mistake() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> LoadChange.of(PLACE, SEASON, DayChange.had("2027-05-10", Map.of())))
                    .withMessageContaining("2027-05-10");
            assertThatIllegalArgumentException().isThrownBy(() -> DayChange.had(FIRST, Map.of("post", -1)));
        }
    }

    @Nested
    class Demo {
        private static final Homestead PLACE = SeedHomesteads.demo(TODAY);
        private static final PlannedSeason SEASON = season(PLACE);
        private static final List<String> TRIPS = SEASON.plan().schedule().runs().stream()
                .filter(r -> r.kind() != RunKind.DELIVERY)
                .map(Run::trip)
                .distinct()
                .toList();

        private static Map<String, Integer> planned(String trip) {
            return packs(SEASON.plan().schedule().runs().stream()
                    .filter(r -> r.trip().equals(trip) && r.kind() != RunKind.DELIVERY)
                    .flatMap(r -> r.loads().stream()));
        }

        private static Map<String, Integer> packs(Stream<Load> loads) {
            Map<String, Integer> packs = new HashMap<>();
            loads.forEach(l -> packs.merge(l.material(), l.packs(), Integer::sum));
            return packs;
        }

        private static List<DayChange> changes(String trip) {
            Map<String, Integer> halves = new HashMap<>();
            planned(trip).forEach((material, packs) -> halves.put(material, packs / 2));
            return List.of(
                    new DayChange(trip, Map.of(), true, NOBODY),
                    new DayChange(trip, Map.of(), false, Mass.ofKilograms(250)),
                    DayChange.had(trip, halves),
                    new DayChange(trip, halves, true, Mass.ofKilograms(90)));
        }

        @Test
        void without_a_change_every_trip_goes_on_in_full_in_the_runs_of_the_plan() {
            for (String trip : TRIPS) {
                ChangedTrip changed = LoadChange.of(PLACE, SEASON, DayChange.had(trip, Map.of()));
                assertThat(changed.words())
                        .as(trip)
                        .last()
                        .isIn("All work of this trip goes on in full.", "This trip has no work.");
                assertThat(packs(changed.runs().stream().flatMap(List::stream)))
                        .as(trip)
                        .isEqualTo(planned(trip));
                assertThat(changed.another()).as(trip).isEmpty();
            }
        }

        @Test
        void every_pack_is_accounted_for_once() {
            for (String trip : TRIPS) {
                for (DayChange change : changes(trip)) {
                    ChangedTrip changed = LoadChange.of(PLACE, SEASON, change);
                    Map<String, Integer> all = packs(Stream.concat(changed.runs().stream(), changed.another().stream())
                            .flatMap(List::stream));
                    Stream.concat(changed.stays().stream(), changed.missing().stream())
                            .forEach(p -> all.merge(p.material(), p.packs(), Integer::sum));
                    changed.unfit()
                            .forEach(u -> all.merge(u.cargo().kind(), u.cargo().count(), Integer::sum));
                    assertThat(all).as(change.toString()).isEqualTo(planned(trip));
                }
            }
        }

        @Test
        void the_loads_keep_to_the_bed_when_the_trailer_stays_home() {
            long payload = pickupPayloadGrams();
            for (String trip : TRIPS) {
                ChangedTrip changed = LoadChange.of(PLACE, SEASON, new DayChange(trip, Map.of(), true, NOBODY));
                for (List<Load> run : changed.runs()) {
                    assertThat(run).allMatch(l -> l.bay().equals(OutfitWriter.BED));
                    assertThat(run.stream().mapToLong(this::grams).sum()).isLessThanOrEqualTo(payload);
                }
            }
        }

        private long grams(Load load) {
            return material(load.material()).grams() * load.packs();
        }

        private static Material material(String id) {
            return SEASON.problem().materials().stream()
                    .filter(m -> m.id().equals(id))
                    .findFirst()
                    .orElseThrow();
        }

        /** By hand from the file: 7,000 - 5,100 - 140 lb and the lightest crew of one, 165 lb. */
        private static long pickupPayloadGrams() {
            return Math.round((7_000 - 5_100 - 140 - 165) * 453.59237);
        }

        @Test
        void more_people_never_bring_more_under_the_limits() {
            for (String trip : TRIPS) {
                ChangedTrip changed =
                        LoadChange.of(PLACE, SEASON, new DayChange(trip, Map.of(), false, Mass.ofKilograms(250)));
                Trip planned = SEASON.problem().trips().stream()
                        .filter(t -> t.id().equals(trip))
                        .findFirst()
                        .orElseThrow();
                MassLimit payload = planned.rig().limits().getFirst();
                for (List<Load> run : changed.runs()) {
                    long counted = run.stream()
                            .mapToLong(l -> grams(l) * payload.shareOf(l.bay()))
                            .sum();
                    assertThat(counted / 1000).isLessThanOrEqualTo(Math.max(0, payload.grams() - 250_000));
                }
            }
        }

        @Test
        void what_is_short_only_for_later_trips_is_said_to_be() {
            // the first trip of the demo brings concrete that is used from the third on
            ChangedTrip changed =
                    LoadChange.of(PLACE, SEASON, DayChange.had(TRIPS.getFirst(), Map.of("concrete-80", 19)));
            assertThat(changed.words())
                    .containsSubsequence(
                            "All work of this trip goes on in full.",
                            "What is short now is for later trips: plan these again once it is known.");
        }

        @Test
        void another_run_is_told_with_its_hours_and_cost() {
            List<ChangedTrip> changed = TRIPS.stream()
                    .map(trip -> LoadChange.of(PLACE, SEASON, new DayChange(trip, Map.of(), true, NOBODY)))
                    .toList();
            assertThat(changed).anySatisfy(c -> {
                assertThat(c.another()).hasSize(1);
                assertThat(c.words())
                        .anySatisfy(w -> assertThat(w)
                                .matches("The other run takes 4 h of \\w+ \\d+ \\w+, .* costs \\$58\\.00\\."));
            });
            assertThat(changed)
                    .anySatisfy(c -> assertThat(c.words())
                            .anySatisfy(w -> assertThat(w)
                                    .matches(
                                            "No run of this vehicle can carry \\d+ bars of Rebar #4, 20 ft: too long for every"
                                                    + " place in it\\.")));
        }

        @Test
        void half_of_everything_touches_some_work_and_says_so() {
            List<String> words = new ArrayList<>();
            for (String trip : TRIPS) {
                words.addAll(LoadChange.of(PLACE, SEASON, changes(trip).get(2)).words());
            }
            assertThat(words)
                    .anySatisfy(w -> assertThat(w).contains(" must not start: ", "one go"))
                    .anySatisfy(w -> assertThat(w).matches(".*: \\d+ of \\d+ .* enough for .* h of .* h\\."))
                    .anySatisfy(w -> assertThat(w).startsWith("Not to be had: "));
        }

        @Test
        void a_change_is_split_anew_at_once() {
            LoadChange.of(PLACE, SEASON, changes(TRIPS.getFirst()).getFirst());
            List<Double> millis = new ArrayList<>();
            for (String trip : TRIPS) {
                for (DayChange change : changes(trip)) {
                    long start = System.nanoTime();
                    LoadChange.of(PLACE, SEASON, change);
                    millis.add((System.nanoTime() - start) / 1e6);
                }
            }
            double[] sorted = millis.stream().mapToDouble(m -> m).sorted().toArray();
            // the middle one, so that a busy machine does not fail it
            assertThat(sorted[sorted.length / 2]).as(Arrays.toString(sorted)).isLessThan(100);
        }
    }
}
