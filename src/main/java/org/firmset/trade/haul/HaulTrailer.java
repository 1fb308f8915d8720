package org.firmset.trade.haul;

import org.jspecify.annotations.Nullable;

/**
 * A trailer as its plate and a scale tell it.
 *
 * @param grossGrams gross trailer weight rating
 * @param tonguePercent of its mass that rests on the vehicle: weighed when it is empty, aimed at when it is loaded
 * @param bay its deck
 * @param deck null when it was not measured; the tongue is then taken as {@code tonguePercent} of all its mass
 */
public record HaulTrailer(
        String name,
        long grossGrams,
        long emptyGrams,
        int tonguePercent,
        Bay bay,
        @Nullable TrailerDeck deck) {
    public HaulTrailer {
        Must.notBeNegative(grossGrams, "grossGrams");
        Must.notBeNegative(emptyGrams, "emptyGrams");
        if (tonguePercent < 0 || tonguePercent > 100) {
            throw new IllegalArgumentException("tonguePercent [%d] must be 0 to 100".formatted(tonguePercent));
        }
    }

    /** What rests on the vehicle when nothing is on the deck. */
    public double emptyTongueGrams() {
        return emptyGrams * (double) tonguePercent / 100;
    }
}
