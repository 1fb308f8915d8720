package org.firmset.trade.haul;

/**
 * One limit and what is on it.
 *
 * @param onItGrams rounded up; of the payload people, kit, cargo and tongue; of the rest the whole mass, empty mass
 *     included; an axle or a tongue that is lifted has less than 0
 * @param ratingGrams of the payload the gross rating less the empty mass
 * @param binds it has the least left of all
 */
public record LoadLimit(LimitKind kind, long onItGrams, long ratingGrams, boolean binds) {
    /** Less than 0 when it is over. */
    public long leftGrams() {
        return ratingGrams - onItGrams;
    }

    public long overGrams() {
        return Math.max(0, -leftGrams());
    }
}
