package org.firmset.trade.haul;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Outfits and loads made by chance: pickups, vans and trailers as they are on the road. The same seed, the same trip. */
record Trips(Outfit outfit, List<Cargo> cargo) {
    static Trips of(long seed) {
        Random random = new Random(seed);
        boolean tows = random.nextInt(3) > 0;
        Outfit outfit = outfit(random, tows);
        List<Cargo> cargo = new ArrayList<>();
        for (Bay bay : outfit.bays()) {
            load(random, bay, random.nextInt(bay.id().equals("roof") ? 3 : 10), cargo);
        }
        return new Trips(outfit, cargo);
    }

    private static int between(Random random, int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    static Outfit outfit(Random random, boolean tows) {
        long empty = between(random, 1_500_000, 3_000_000);
        long bed = between(random, 1400, 2500);
        boolean roof = random.nextInt(4) == 0;
        HaulVehicle vehicle = new HaulVehicle(
                "Vehicle",
                empty + between(random, 400_000, 1_500_000),
                empty,
                new Bay("bed", "Bed", between(random, 1_000_000, 4_000_000), bed + between(random, 0, 1000)),
                random.nextInt(5) == 0 ? null : axles(random, empty, bed),
                tows && random.nextBoolean() ? empty + between(random, 1_500_000, 5_000_000) : null,
                tows ? (long) between(random, 1_000_000, 4_000_000) : null,
                tows && random.nextBoolean() ? (long) between(random, 150_000, 400_000) : null,
                roof
                        ? new RoofRack(
                                new Bay("roof", "Roof", 600_000, 3500),
                                between(random, 50_000, 150_000),
                                random.nextBoolean() ? null : (long) between(random, 1000, 2500))
                        : null);
        return new Outfit(
                vehicle, tows ? trailer(random) : null, between(random, 60_000, 250_000), between(random, 0, 100_000));
    }

    private static VehicleAxles axles(Random random, long empty, long bed) {
        long wheelbase = between(random, 2800, 4200);
        long bayFront = wheelbase - between(random, 700, 1500);
        return new VehicleAxles(
                wheelbase,
                empty * between(random, 64, 80) / 100,
                empty * between(random, 75, 110) / 100,
                empty * between(random, 52, 60) / 100,
                bayFront,
                bed,
                between(random, 1200, 2000),
                between(random, 1500, 4000),
                bayFront + bed + between(random, 0, 300));
    }

    private static HaulTrailer trailer(Random random) {
        long empty = between(random, 250_000, 900_000);
        long axle = between(random, 2500, 4500);
        long length = between(random, 2200, 5000);
        boolean measured = random.nextInt(5) > 0;
        return new HaulTrailer(
                "Trailer",
                empty + between(random, 500_000, 2_500_000),
                empty,
                between(random, 8, 15),
                new Bay("deck", "Deck", between(random, 2_000_000, 9_000_000), length + between(random, 0, 2500)),
                measured ? deck(random, axle, length) : null);
    }

    private static TrailerDeck deck(Random random, long axle, long length) {
        @Nullable Long rating = random.nextBoolean() ? (long) between(random, 1_000_000, 3_200_000) : null;
        // most decks lie with their middle a little before the axle
        long front = Math.max(200, axle - length * between(random, 54, 66) / 100);
        return new TrailerDeck(axle, front, length, rating);
    }

    private static void load(Random random, Bay bay, int kinds, List<Cargo> cargo) {
        for (int k = 0; k < kinds; k++) {
            boolean isLong = random.nextInt(5) == 0;
            boolean great = random.nextInt(12) == 0;
            int size = great ? between(random, 100_000, 900_000) : between(random, 2_000, 40_000);
            cargo.add(new Cargo(
                    bay.id(),
                    new Packs(
                            bay.id() + k,
                            "Kind " + k,
                            great ? 1 : between(random, 1, 14),
                            great ? between(random, 30_000, 250_000) : between(random, 500, 20_000),
                            size,
                            isLong ? between(random, 1000, (int) bay.longestMillimetres()) : 0,
                            random.nextBoolean(),
                            random.nextInt(6) == 0,
                            random.nextInt(8) == 0,
                            between(random, 1, 6))));
        }
    }

    /** How a trip reads in the report of a test. */
    String told() {
        return outfit + "\n"
                + String.join("\n", cargo.stream().map(Object::toString).toList());
    }
}
