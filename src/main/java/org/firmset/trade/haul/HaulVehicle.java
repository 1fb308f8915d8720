package org.firmset.trade.haul;

import org.jspecify.annotations.Nullable;

/**
 * A vehicle as its sticker, its maker and a scale tell it.
 *
 * @param grossGrams gross vehicle weight rating
 * @param emptyGrams with fuel, without people, kit and cargo
 * @param bay where cargo goes
 * @param axles null when they were not weighed and measured
 * @param combinationGrams rating of vehicle, trailer and all that is in them; null when not known
 * @param towGrams the heaviest loaded trailer; null when it tows none
 * @param tongueGrams the most its hitch takes from above; null when not known
 */
public record HaulVehicle(
        String name,
        long grossGrams,
        long emptyGrams,
        Bay bay,
        @Nullable VehicleAxles axles,
        @Nullable Long combinationGrams,
        @Nullable Long towGrams,
        @Nullable Long tongueGrams,
        @Nullable RoofRack roof) {
    public HaulVehicle {
        Must.notBeNegative(grossGrams, "grossGrams");
        Must.notBeNegative(emptyGrams, "emptyGrams");
    }
}
