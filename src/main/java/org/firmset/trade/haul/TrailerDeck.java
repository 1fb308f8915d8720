package org.firmset.trade.haul;

import org.jspecify.annotations.Nullable;

/**
 * Where the deck of a trailer lies, in millimetres behind the coupler.
 *
 * @param axleMillimetres the axle, or the middle between two; over 0
 * @param frontMillimetres front edge of the deck
 * @param lengthMillimetres over 0
 * @param axleRatingGrams of all its axles together; null when not known
 */
public record TrailerDeck(
        long axleMillimetres,
        long frontMillimetres,
        long lengthMillimetres,
        @Nullable Long axleRatingGrams) {
    public TrailerDeck {
        Must.beOverZero(axleMillimetres, "axleMillimetres");
        Must.beOverZero(lengthMillimetres, "lengthMillimetres");
    }

    /** The part of a mass that rests on the tongue; negative behind the axle. */
    public double tongueShare(double behindDeckFront) {
        return Lever.frontShare(frontMillimetres + behindDeckFront, (double) axleMillimetres);
    }
}
