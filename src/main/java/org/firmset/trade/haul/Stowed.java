package org.firmset.trade.haul;

/**
 * Packs at their place in a bay. Millimetres from the bay's front edge towards the rear.
 *
 * @param packs how many of the cargo's packs lie here
 * @param from front end of what they lie on
 * @param length of what they lie on: one zone or several
 * @param middle where their mass acts
 * @param overFront how far they stick out in front of the bay
 * @param overRear how far they stick out behind it
 */
public record Stowed(Cargo cargo, int packs, long from, long length, double middle, long overFront, long overRear) {
    public long grams() {
        return packs * cargo.packs().grams();
    }
}
