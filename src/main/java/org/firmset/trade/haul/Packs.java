package org.firmset.trade.haul;

/**
 * Packs of one kind that go together.
 *
 * @param kind id of the kind
 * @param count 1 or more
 * @param grams mass of a pack
 * @param millilitres room a pack takes as it lies
 * @param longestMillimetres its longest side; 0 when it fits anywhere
 * @param dry must stay dry on the way too
 * @param upright must stand
 * @param loose lies in a heap: rock, sand
 * @param neededFirst 1 for what is needed first on site, more for later
 */
public record Packs(
        String kind,
        String name,
        int count,
        long grams,
        long millilitres,
        long longestMillimetres,
        boolean dry,
        boolean upright,
        boolean loose,
        int neededFirst) {
    public Packs {
        Must.beOverZero(count, "count");
        Must.notBeNegative(grams, "grams");
        Must.notBeNegative(millilitres, "millilitres");
        Must.notBeNegative(longestMillimetres, "longestMillimetres");
    }
}
