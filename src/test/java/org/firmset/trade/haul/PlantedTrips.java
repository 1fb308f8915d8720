package org.firmset.trade.haul;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * Trips that are known to have a placement that holds: packs are laid by chance first, and every rating is then set a
 * little over what lies on it.
 */
final class PlantedTrips {
    private PlantedTrips() {}

    /** @param kinds kinds of packs in each bay */
    static Trips of(long seed, int kinds, int mostPacks) {
        Random random = new Random(seed);
        Outfit outfit = Trips.outfit(random, true);
        while (outfit.vehicle().axles() == null
                || Objects.requireNonNull(outfit.trailer()).deck() == null) {
            outfit = Trips.outfit(random, true);
        }
        HaulTrailer trailer = Objects.requireNonNull(outfit.trailer());
        List<Cargo> cargo = new ArrayList<>();
        List<Placed> placed = new ArrayList<>();
        for (String bay : List.of("bed", "deck")) {
            Floor floor = new Floor(outfit, outfit.bay(bay));
            long[] room = new long[floor.zones];
            for (int zone = 0; zone < floor.zones; zone++) {
                room[zone] = floor.room(zone) * 95 / 100;
            }
            for (int k = 0; k < kinds; k++) {
                Packs packs = packs(random, bay + k, 1 + random.nextInt(mostPacks));
                int laid = 0;
                for (int n = 0; n < packs.count(); n++) {
                    // the front half of a deck, so that the tongue is pressed down
                    int zone = random.nextInt(bay.equals("deck") ? Math.max(1, floor.zones - 1) : floor.zones);
                    if (room[zone] >= packs.millilitres()) {
                        room[zone] -= packs.millilitres();
                        placed.add(new Placed(bay, packs.grams(), (floor.from(zone) + floor.from(zone + 1)) / 2.0));
                        laid++;
                    }
                }
                if (laid > 0) {
                    cargo.add(new Cargo(bay, withCount(packs, laid)));
                }
            }
        }
        Tongue tongue = Objects.requireNonNull(LoadSheet.of(outfit, placed).tongue());
        return tongue.missingGrams() + tongue.extraGrams() > 0
                ? of(seed + 1_000_000_007L, kinds, mostPacks)
                : new Trips(rated(outfit, trailer, LoadSheet.of(outfit, placed)), cargo);
    }

    private static Packs packs(Random random, String kind, int count) {
        return new Packs(
                kind,
                kind,
                count,
                500 + random.nextInt(25_000),
                2_000 + random.nextInt(30_000),
                0,
                false,
                false,
                false,
                1 + random.nextInt(5));
    }

    private static Packs withCount(Packs p, int count) {
        return new Packs(
                p.kind(),
                p.name(),
                count,
                p.grams(),
                p.millilitres(),
                p.longestMillimetres(),
                p.dry(),
                p.upright(),
                p.loose(),
                p.neededFirst());
    }

    /** The same outfit with each rating a kilogram over what is on it. */
    private static Outfit rated(Outfit outfit, HaulTrailer trailer, LoadSheet sheet) {
        HaulVehicle v = outfit.vehicle();
        VehicleAxles a = Objects.requireNonNull(v.axles());
        VehicleAxles axles = new VehicleAxles(
                a.wheelbaseMillimetres(),
                rating(sheet, LimitKind.FRONT_AXLE),
                rating(sheet, LimitKind.REAR_AXLE),
                a.frontEmptyGrams(),
                a.bayFrontMillimetres(),
                a.bayLengthMillimetres(),
                a.seatsMillimetres(),
                a.kitMillimetres(),
                a.hitchMillimetres());
        TrailerDeck d = Objects.requireNonNull(trailer.deck());
        return new Outfit(
                new HaulVehicle(
                        v.name(),
                        v.emptyGrams() + rating(sheet, LimitKind.PAYLOAD),
                        v.emptyGrams(),
                        v.bay(),
                        axles,
                        maybe(sheet, LimitKind.COMBINATION),
                        maybe(sheet, LimitKind.TOW_RATING),
                        maybe(sheet, LimitKind.TONGUE_RATING),
                        v.roof()),
                new HaulTrailer(
                        trailer.name(),
                        rating(sheet, LimitKind.TRAILER_RATING),
                        trailer.emptyGrams(),
                        trailer.tonguePercent(),
                        trailer.bay(),
                        new TrailerDeck(
                                d.axleMillimetres(),
                                d.frontMillimetres(),
                                d.lengthMillimetres(),
                                maybe(sheet, LimitKind.TRAILER_AXLE))),
                outfit.peopleGrams(),
                outfit.kitGrams());
    }

    private static @Nullable Long maybe(LoadSheet sheet, LimitKind kind) {
        return sheet.limit(kind).map(l -> l.onItGrams() + 1000).orElse(null);
    }

    private static long rating(LoadSheet sheet, LimitKind kind) {
        return Objects.requireNonNull(maybe(sheet, kind));
    }
}
