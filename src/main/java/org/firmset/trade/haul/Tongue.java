package org.firmset.trade.haul;

/**
 * How much of a loaded trailer rests on the vehicle. Usual is a tenth to 15 %: less sways, more lifts the front wheels.
 * Guidance of makers and of the road safety office, seen in owner's manuals (check VH-02).
 *
 * @param onHitchGrams negative when the trailer lifts the hitch
 * @param trailerGrams all of the trailer, over 0
 * @param measured false when the deck was not measured and its percent is taken for granted
 */
public record Tongue(double onHitchGrams, long trailerGrams, boolean measured) {
    public static final double LEAST_SHARE = 0.10;
    public static final double MOST_SHARE = 0.15;

    /** What is aimed at where it costs nothing: a load that lies a little otherwise than reckoned stays within. */
    static final double MIDDLE_SHARE = (LEAST_SHARE + MOST_SHARE) / 2;

    /** Part of the trailer's mass: 0.12 is 12 %. */
    public double share() {
        return trailerGrams == 0 ? 0 : onHitchGrams / trailerGrams;
    }

    /** The least that should rest on the hitch, in grams. */
    public double leastGrams() {
        return LEAST_SHARE * trailerGrams;
    }

    /** The most that should rest on the hitch, in grams. */
    public double mostGrams() {
        return MOST_SHARE * trailerGrams;
    }

    /** Grams missing to the usual share, rounded up; 0 when none. */
    public long missingGrams() {
        return Grams.up(Math.max(0, leastGrams() - onHitchGrams));
    }

    /** Grams over the usual share, rounded up; 0 when none. */
    public long extraGrams() {
        return Grams.up(Math.max(0, onHitchGrams - mostGrams()));
    }
}
