package org.firmset.trade.haul;

/**
 * What holds packs of one kind in one bay.
 *
 * @param tieRatingGrams what its tie-downs together must be rated for at least: half the mass tied
 * @param leastTies by length and mass, and one for each stack
 * @param cover loose things and what must stay dry are covered, the cover tied
 * @param upright stands, and is strapped so that it cannot fall
 * @param overFront millimetres out in front of the bay
 * @param overRear millimetres out behind the bay: a flag, and a light in the dark, where the law asks for one
 */
public record Restraint(
        Cargo cargo,
        long tieRatingGrams,
        int leastTies,
        boolean cover,
        boolean upright,
        long overFront,
        long overRear) {
    public boolean flag() {
        return overFront > 0 || overRear > 0;
    }
}
