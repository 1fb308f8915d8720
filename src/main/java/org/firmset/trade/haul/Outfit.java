package org.firmset.trade.haul;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A vehicle ready to be loaded: with its trailer, its people and its standing kit.
 *
 * <p>Refused are a trailer on a vehicle whose axles are known and whose hitch is not, and two bays with the same id.
 *
 * @param trailer null when it goes alone
 */
public record Outfit(HaulVehicle vehicle, @Nullable HaulTrailer trailer, long peopleGrams, long kitGrams) {
    public Outfit {
        Must.notBeNegative(peopleGrams, "peopleGrams");
        Must.notBeNegative(kitGrams, "kitGrams");
        VehicleAxles axles = vehicle.axles();
        if (trailer != null && axles != null && axles.hitchMillimetres() == null) {
            throw new IllegalArgumentException(
                    "the hitch of vehicle [%s] that tows must have a place among its axles".formatted(vehicle.name()));
        }
        List<Bay> bays = bays(vehicle, trailer);
        if (bays.stream().map(Bay::id).distinct().count() != bays.size()) {
            throw new IllegalArgumentException("bays %s must have different ids".formatted(bays));
        }
    }

    /** The same without its trailer. */
    public Outfit withoutTrailer() {
        return new Outfit(vehicle, null, peopleGrams, kitGrams);
    }

    /** Its bays: bed, roof, deck, as far as it has them. */
    public List<Bay> bays() {
        return bays(vehicle, trailer);
    }

    private static List<Bay> bays(HaulVehicle vehicle, @Nullable HaulTrailer trailer) {
        List<Bay> bays = new ArrayList<>(List.of(vehicle.bay()));
        if (vehicle.roof() != null) {
            bays.add(vehicle.roof().bay());
        }
        if (trailer != null) {
            bays.add(trailer.bay());
        }
        return bays;
    }

    /**
     * Length of a bay in millimetres from its front edge to its rear edge; where it was not measured, the longest piece it
     * takes.
     */
    public long lengthOf(Bay bay) {
        if (bay.equals(vehicle.bay()) && vehicle.axles() != null) {
            return vehicle.axles().bayLengthMillimetres();
        }
        if (trailer != null && bay.equals(trailer.bay()) && trailer.deck() != null) {
            return trailer.deck().lengthMillimetres();
        }
        return bay.longestMillimetres();
    }

    /** @throws IllegalArgumentException when it has no such bay */
    public Bay bay(String id) {
        return bays().stream()
                .filter(b -> b.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("bay [%s] is none of %s".formatted(id, bays())));
    }
}
