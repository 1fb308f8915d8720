package org.firmset.trade.haul;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Placements of random loads, weighed on {@link SecondScale}. Seeds are printed; repeat with -Dfirmset.seed=... */
class PlacementPropertiesTest {
    private static final long BASE = Long.getLong("firmset.seed", 20_270_418L);
    private static final int TRIPS = 1000;

    private static boolean holds(Trips trip, List<Stowed> stowed) {
        return new SecondScale(trip.outfit(), stowed).broken(tongueCounts(trip)).isEmpty()
                && SecondScale.crowded(trip.outfit(), stowed).isEmpty();
    }

    private static boolean tongueCounts(Trips trip) {
        HaulTrailer trailer = trip.outfit().trailer();
        return trailer != null
                && trailer.deck() != null
                && trip.cargo().stream().anyMatch(c -> c.bay().equals("deck"));
    }

    @Test
    void a_thousand_random_trips_are_placed_as_a_second_scale_agrees() {
        int held = 0;
        for (long seed = BASE; seed < BASE + TRIPS; seed++) {
            Trips trip = Trips.of(seed);
            Placement placement = Placement.of(trip.outfit(), trip.cargo());
            String who = "seed %d%n%s%n%s".formatted(seed, trip.told(), placement.excesses());
            for (Cargo cargo : trip.cargo()) {
                assertThat(placement.stowed().stream()
                                .filter(s -> s.cargo().equals(cargo))
                                .mapToInt(Stowed::packs)
                                .sum())
                        .as(who)
                        .isEqualTo(cargo.packs().count());
            }
            assertThat(holds(trip, placement.stowed())).as(who).isEqualTo(placement.holds());
            agree(placement.sheet(), new SecondScale(trip.outfit(), placement.stowed()), who);
            held += placement.holds() ? 1 : 0;
        }
        assertThat(held).as("both kinds of trips are there").isBetween(TRIPS / 4, TRIPS * 3 / 4);
    }

    private static void agree(LoadSheet sheet, SecondScale scale, String who) {
        assertThat(sheet.limits().stream().map(LoadLimit::kind))
                .as(who)
                .containsExactlyInAnyOrderElementsOf(scale.onIt.keySet());
        for (LoadLimit limit : sheet.limits()) {
            double grams = Objects.requireNonNull(scale.onIt.get(limit.kind())) * 1000;
            assertThat((double) limit.onItGrams())
                    .as("%s, %s", limit.kind(), who)
                    .isBetween(grams - 0.01, grams + 1.01);
        }
    }

    @Test
    void loads_that_are_known_to_have_a_place_nearly_always_find_one_and_soon() {
        int placed = 0;
        long begun = System.nanoTime();
        int trips = 150;
        for (long seed = BASE; seed < BASE + trips; seed++) {
            Trips trip = PlantedTrips.of(seed, 20, 10);
            placed += Placement.of(trip.outfit(), trip.cargo()).holds() ? 1 : 0;
        }
        long millis = (System.nanoTime() - begun) / 1_000_000 / trips;
        assertThat(placed).as("of %d planted loads from seed %d", trips, BASE).isGreaterThanOrEqualTo(trips * 95 / 100);
        assertThat(millis)
                .as("milliseconds for each, about 200 packs of 40 kinds")
                .isLessThan(100);
    }

    @Test
    void no_small_load_has_a_place_that_was_not_found() {
        int without = 0;
        for (long seed = BASE; seed < BASE + 200; seed++) {
            Trips planted = PlantedTrips.of(seed, 2, 2);
            Trips trip = new Trips(planted.outfit(), planted.cargo());
            // every second one is made harder than it was planted, so that some have no place
            trip = seed % 2 == 0 ? trip : new Trips(heavier(planted.outfit()), planted.cargo());
            if (!Placement.of(trip.outfit(), trip.cargo()).holds()) {
                without++;
                assertThat(hasPlace(trip, 0, new ArrayList<>()))
                        .as("seed %d%n%s", seed, trip.told())
                        .isFalse();
            }
        }
        assertThat(without).as("loads without a place").isPositive();
    }

    private static Outfit heavier(Outfit o) {
        return new Outfit(o.vehicle(), o.trailer(), o.peopleGrams() + 700, o.kitGrams() + 500);
    }

    /** Tries every zone for every pack by itself. */
    private static boolean hasPlace(Trips trip, int from, List<Stowed> stowed) {
        List<Cargo> packs = trip.cargo().stream()
                .flatMap(c -> java.util.stream.Stream.generate(() -> c)
                        .limit(c.packs().count()))
                .toList();
        if (from == packs.size()) {
            return holds(trip, stowed);
        }
        Cargo cargo = packs.get(from);
        long length = trip.outfit().lengthOf(trip.outfit().bay(cargo.bay()));
        int zones = length < 3000 ? 3 : 4;
        for (int zone = 0; zone < zones; zone++) {
            long start = length * zone / zones;
            long end = length * (zone + 1) / zones;
            stowed.add(new Stowed(cargo, 1, start, end - start, (start + end) / 2.0, 0, 0));
            if (hasPlace(trip, from + 1, stowed)) {
                return true;
            }
            stowed.removeLast();
        }
        return false;
    }
}
