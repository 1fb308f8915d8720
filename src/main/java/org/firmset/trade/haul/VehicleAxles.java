package org.firmset.trade.haul;

import org.jspecify.annotations.Nullable;

/**
 * What the axles of a vehicle may carry and where its load lies. Every place is told in millimetres behind the front
 * axle, to the middle of what lies there; a place in front of it is negative.
 *
 * @param wheelbaseMillimetres from axle to axle, over 0
 * @param frontEmptyGrams what a scale shows under the front axle when the vehicle is empty; the rear carries the rest
 * @param bayFrontMillimetres front edge of the bay
 * @param bayLengthMillimetres over 0
 * @param hitchMillimetres the ball; null when it tows none
 */
public record VehicleAxles(
        long wheelbaseMillimetres,
        long frontRatingGrams,
        long rearRatingGrams,
        long frontEmptyGrams,
        long bayFrontMillimetres,
        long bayLengthMillimetres,
        long seatsMillimetres,
        long kitMillimetres,
        @Nullable Long hitchMillimetres) {
    public VehicleAxles {
        Must.beOverZero(wheelbaseMillimetres, "wheelbaseMillimetres");
        Must.beOverZero(bayLengthMillimetres, "bayLengthMillimetres");
        Must.notBeNegative(frontRatingGrams, "frontRatingGrams");
        Must.notBeNegative(rearRatingGrams, "rearRatingGrams");
        Must.notBeNegative(frontEmptyGrams, "frontEmptyGrams");
    }

    /** The part of a mass that the rear axle carries; over 1 behind it. */
    public double rearShare(double behindFrontAxle) {
        return Lever.rearShare(behindFrontAxle, (double) wheelbaseMillimetres);
    }

    /** The middle of the bay, in millimetres behind the front axle. */
    public double bayMiddle() {
        return bayFrontMillimetres + bayLengthMillimetres / 2.0;
    }
}
