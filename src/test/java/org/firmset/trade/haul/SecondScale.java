package org.firmset.trade.haul;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Weighs a placed load again, by moments about the other axle, about the trailer's axle and pack by pack, so that it
 * shares no arithmetic with the room. Newtons are left out: all is in kilograms and metres.
 */
final class SecondScale {
    private static final double KILO = 1000.0;

    final Map<LimitKind, Double> onIt = new HashMap<>();
    final Map<LimitKind, Double> rated = new HashMap<>();
    double tongue;
    double towed;

    SecondScale(Outfit outfit, List<Stowed> stowed) {
        HaulVehicle vehicle = outfit.vehicle();
        HaulTrailer trailer = outfit.trailer();
        double inVehicle = (outfit.peopleGrams() + outfit.kitGrams()) / KILO;
        double roof = 0;
        double deck = 0;
        double tongueMoment = 0;
        for (Stowed s : stowed) {
            double mass = s.packs() * s.cargo().packs().grams() / KILO;
            switch (s.cargo().bay()) {
                case "bed" -> inVehicle += mass;
                case "roof" -> {
                    inVehicle += mass;
                    roof += mass;
                }
                default -> {
                    deck += mass;
                    TrailerDeck place = Objects.requireNonNull(trailer).deck();
                    if (place != null) {
                        tongueMoment += mass * (place.axleMillimetres() - place.frontMillimetres() - s.middle()) / KILO;
                    }
                }
            }
        }
        if (trailer != null) {
            towed = trailer.emptyGrams() / KILO + deck;
            TrailerDeck measured = trailer.deck();
            tongue = measured == null
                    ? towed * trailer.tonguePercent() / 100
                    : trailer.emptyGrams() / KILO * trailer.tonguePercent() / 100
                            + tongueMoment / (measured.axleMillimetres() / KILO);
            put(LimitKind.TRAILER_RATING, towed, trailer.grossGrams());
            put(LimitKind.TOW_RATING, towed, vehicle.towGrams());
            put(LimitKind.TONGUE_RATING, tongue, vehicle.tongueGrams());
            put(LimitKind.COMBINATION, vehicle.emptyGrams() / KILO + inVehicle + towed, vehicle.combinationGrams());
            if (measured != null) {
                put(LimitKind.TRAILER_AXLE, towed - tongue, measured.axleRatingGrams());
            }
        }
        put(LimitKind.PAYLOAD, inVehicle + tongue, vehicle.grossGrams() - vehicle.emptyGrams());
        if (vehicle.roof() != null) {
            put(LimitKind.ROOF, roof, vehicle.roof().ratingGrams());
        }
        if (vehicle.axles() != null) {
            axles(outfit, vehicle.axles(), stowed, inVehicle);
        }
    }

    private void put(LimitKind kind, double kilograms, @Nullable Long rating) {
        if (rating != null) {
            onIt.put(kind, kilograms);
            rated.put(kind, rating / KILO);
        }
    }

    /** Turns about the rear axle: what lies before it presses the front down, what lies behind lifts it. */
    private void axles(Outfit outfit, VehicleAxles axles, List<Stowed> stowed, double inVehicle) {
        double base = axles.wheelbaseMillimetres() / KILO;
        double turn = outfit.peopleGrams() / KILO * (base - axles.seatsMillimetres() / KILO)
                + outfit.kitGrams() / KILO * (base - axles.kitMillimetres() / KILO);
        for (Stowed s : stowed) {
            double mass = s.packs() * s.cargo().packs().grams() / KILO;
            if (s.cargo().bay().equals("bed")) {
                turn += mass * (base - (axles.bayFrontMillimetres() + s.middle()) / KILO);
            } else if (s.cargo().bay().equals("roof")) {
                Long middle = Objects.requireNonNull(outfit.vehicle().roof()).middleMillimetres();
                turn += mass * (base - (middle == null ? axles.seatsMillimetres() : middle) / KILO);
            }
        }
        if (outfit.trailer() != null) {
            turn += tongue * (base - Objects.requireNonNull(axles.hitchMillimetres()) / KILO);
        }
        double front = axles.frontEmptyGrams() / KILO + turn / base;
        put(LimitKind.FRONT_AXLE, front, axles.frontRatingGrams());
        double all = outfit.vehicle().emptyGrams() / KILO + inVehicle + tongue;
        put(LimitKind.REAR_AXLE, all - front, axles.rearRatingGrams());
    }

    /** What is over, in words; empty when all holds to a gram. */
    List<String> broken(boolean tongueCounts) {
        List<String> result = new ArrayList<>();
        onIt.forEach((kind, on) -> {
            if (on > Objects.requireNonNull(rated.get(kind)) + 0.001) {
                result.add(kind.words());
            }
        });
        if (tongueCounts && tongue < 0.10 * towed - 0.001) {
            result.add("tongue light");
        }
        if (tongueCounts && tongue > 0.15 * towed + 0.001) {
            result.add("tongue heavy");
        }
        return result;
    }

    /** Bays in which some stretch holds more than its room, reckoned on a hundred and twenty slices of the length. */
    static List<String> crowded(Outfit outfit, List<Stowed> stowed) {
        List<String> result = new ArrayList<>();
        for (Bay bay : outfit.bays()) {
            double[] slices = new double[120];
            double length = outfit.lengthOf(bay);
            for (Stowed s : stowed) {
                if (s.cargo().bay().equals(bay.id())) {
                    int from = (int) Math.round(s.from() / length * 120);
                    int to = (int) Math.round((s.from() + s.length()) / length * 120);
                    for (int i = from; i < to; i++) {
                        slices[i] += (double) s.packs() * s.cargo().packs().millilitres() / (to - from);
                    }
                }
            }
            for (double slice : slices) {
                // a zone's share is cut to whole millilitres, so a few may go astray
                if (slice > bay.millilitres() / 120.0 + 10) {
                    result.add(bay.name());
                    break;
                }
            }
        }
        return result;
    }
}
