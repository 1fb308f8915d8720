package org.firmset.trade.haul;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Puts what lies in the bays of an outfit on its limits, by the lever rule. Grams and millimetres. */
final class Balance {
    /** Masses in the bays and their moments about the bays' front edges. */
    record Heap(double bed, double bedMoment, double roof, double deck, double deckMoment) {}

    private final Outfit outfit;
    private final HaulVehicle vehicle;
    private final @Nullable HaulTrailer trailer;
    private final Map<LimitKind, Long> ratings = new EnumMap<>(LimitKind.class);

    Balance(Outfit outfit) {
        this.outfit = outfit;
        this.vehicle = outfit.vehicle();
        this.trailer = outfit.trailer();
        rate(LimitKind.PAYLOAD, vehicle.grossGrams() - vehicle.emptyGrams());
        VehicleAxles axles = vehicle.axles();
        if (axles != null) {
            rate(LimitKind.FRONT_AXLE, axles.frontRatingGrams());
            rate(LimitKind.REAR_AXLE, axles.rearRatingGrams());
        }
        rate(LimitKind.ROOF, vehicle.roof() == null ? null : vehicle.roof().ratingGrams());
        if (trailer != null) {
            rate(LimitKind.TRAILER_RATING, trailer.grossGrams());
            rate(
                    LimitKind.TRAILER_AXLE,
                    trailer.deck() == null ? null : trailer.deck().axleRatingGrams());
            rate(LimitKind.TOW_RATING, vehicle.towGrams());
            rate(LimitKind.TONGUE_RATING, vehicle.tongueGrams());
            rate(LimitKind.COMBINATION, vehicle.combinationGrams());
        }
    }

    private void rate(LimitKind kind, @Nullable Long grams) {
        if (grams != null) {
            ratings.put(kind, grams);
        }
    }

    List<LimitKind> kinds() {
        return new ArrayList<>(ratings.keySet());
    }

    long rating(LimitKind kind) {
        return Objects.requireNonNull(ratings.get(kind));
    }

    Heap heap(List<Placed> cargo) {
        double bed = 0;
        double bedMoment = 0;
        double roof = 0;
        double deck = 0;
        double deckMoment = 0;
        for (Placed placed : cargo) {
            Bay bay = outfit.bay(placed.bay());
            if (bay.equals(vehicle.bay())) {
                bed += placed.grams();
                bedMoment += placed.grams() * placed.middle();
            } else if (trailer != null && bay.equals(trailer.bay())) {
                deck += placed.grams();
                deckMoment += placed.grams() * placed.middle();
            } else {
                roof += placed.grams();
            }
        }
        return new Heap(bed, bedMoment, roof, deck, deckMoment);
    }

    /** What rests on the hitch; 0 without a trailer. */
    double tongue(Heap heap) {
        if (trailer == null) {
            return 0;
        }
        TrailerDeck deck = trailer.deck();
        double ofDeck = deck == null
                ? heap.deck() * trailer.tonguePercent() / 100
                : heap.deck() - (heap.deck() * deck.frontMillimetres() + heap.deckMoment()) / deck.axleMillimetres();
        return trailer.emptyTongueGrams() + ofDeck;
    }

    double on(LimitKind kind, Heap heap, double tongue) {
        double towed = trailer == null ? 0 : trailer.emptyGrams() + heap.deck();
        double inVehicle = outfit.peopleGrams() + outfit.kitGrams() + heap.bed() + heap.roof();
        return switch (kind) {
            case PAYLOAD -> inVehicle + tongue;
            case FRONT_AXLE -> vehicle.emptyGrams() + inVehicle + tongue - rear(heap, tongue);
            case REAR_AXLE -> rear(heap, tongue);
            case ROOF -> heap.roof();
            case TRAILER_RATING, TOW_RATING -> towed;
            case TRAILER_AXLE -> towed - tongue;
            case TONGUE_RATING -> tongue;
            case COMBINATION -> vehicle.emptyGrams() + inVehicle + towed;
        };
    }

    private double rear(Heap heap, double tongue) {
        VehicleAxles axles = Objects.requireNonNull(vehicle.axles());
        double moment = outfit.peopleGrams() * (double) axles.seatsMillimetres()
                + outfit.kitGrams() * (double) axles.kitMillimetres()
                + heap.bed() * axles.bayFrontMillimetres()
                + heap.bedMoment();
        RoofRack roof = vehicle.roof();
        if (roof != null) {
            Long middle = roof.middleMillimetres();
            moment += heap.roof() * (middle == null ? axles.seatsMillimetres() : middle);
        }
        if (trailer != null) {
            moment += tongue * Objects.requireNonNull(axles.hitchMillimetres());
        }
        return vehicle.emptyGrams() - axles.frontEmptyGrams() + axles.rearShare(moment);
    }
}
