package org.firmset.trade.haul;

import org.jspecify.annotations.Nullable;

/**
 * A rack on the roof.
 *
 * @param bay its room and the longest piece
 * @param middleMillimetres its middle behind the front axle; null for over the seats
 */
public record RoofRack(Bay bay, long ratingGrams, @Nullable Long middleMillimetres) {
    public RoofRack {
        Must.notBeNegative(ratingGrams, "ratingGrams");
    }
}
