package org.firmset.trade.haul;

/**
 * The lever rule for a body on two supports: moments about the front one, divided by the distance between them. Used for
 * a vehicle on its axles and for a trailer on coupler and axle. Statics; exact but for binary fractions.
 */
public final class Lever {
    private Lever() {}

    /**
     * The part of a mass that the rear support carries: 0 over the front one, 1 over the rear one, over 1 behind it.
     *
     * @param behindFront millimetres behind the front support; negative for in front of it
     * @param span millimetres between the supports, over 0
     */
    public static double rearShare(double behindFront, double span) {
        if (span <= 0) {
            throw new IllegalArgumentException("span [%s] must be over 0".formatted(span));
        }
        return behindFront / span;
    }

    /**
     * The part of a mass that the front support carries. Negative for a mass behind the rear support: it lightens the
     * front.
     */
    public static double frontShare(double behindFront, double span) {
        return 1 - rearShare(behindFront, span);
    }

    /**
     * How far a trailer's axle has to move towards the coupler so that a share of all its mass rests on the tongue.
     * Negative for away from it.
     *
     * @param tongueGrams what rests on the tongue now
     * @param totalGrams all of the trailer's mass, over 0
     * @param couplerToAxle millimetres
     * @param wantedShare 0.1 for 10 %
     * @return millimetres
     */
    public static double axleShift(double tongueGrams, double totalGrams, double couplerToAxle, double wantedShare) {
        // the middle of mass stays where it is: D x (total - tongue) = (D - shift) x (1 - wanted) x total would move
        // the
        // wheels exactly; the trade's form takes the coupler's distance as unchanged, which is good for small shifts
        return (tongueGrams - wantedShare * totalGrams) / totalGrams * couplerToAxle;
    }
}
