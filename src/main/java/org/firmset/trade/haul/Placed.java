package org.firmset.trade.haul;

/**
 * A mass of cargo at its place.
 *
 * @param bay id of the bay
 * @param middle millimetres from the front edge of the bay to the middle of the mass; of no matter on a roof
 */
public record Placed(String bay, long grams, double middle) {
    public Placed {
        Must.notBeNegative(grams, "grams");
    }
}
