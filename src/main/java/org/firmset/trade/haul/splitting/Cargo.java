package org.firmset.trade.haul.splitting;

/**
 * Packs of one kind that have to go. The same kind may come in several lines with another {@code order}.
 *
 * @param kind id of what it is
 * @param grams mass of a pack, 0 to {@link #MOST}
 * @param millilitres volume of a pack, 0 to {@link #MOST}
 * @param longestMillimetres its longest side, 0 or more
 * @param count how many packs, 1 to {@link #MOST_PACKS}
 * @param order when it is needed: the smallest number first; any numbers, gaps allowed
 */
public record Cargo(String kind, long grams, long millilitres, long longestMillimetres, int count, int order) {
    /** A thousand tonnes, or a thousand cubic metres: sums stay exact. */
    public static final long MOST = 1_000_000_000L;

    public static final int MOST_PACKS = 100_000;

    public Cargo {
        if (grams < 0 || millilitres < 0 || longestMillimetres < 0 || grams > MOST || millilitres > MOST) {
            throw new IllegalArgumentException(
                    "grams [%d] and millilitres [%d] of cargo [%s] must be 0 to %d, longestMillimetres [%d] 0 or more"
                            .formatted(grams, millilitres, kind, MOST, longestMillimetres));
        }
        if (count < 1 || count > MOST_PACKS) {
            throw new IllegalArgumentException(
                    "count [%d] of cargo [%s] must be 1 to %d".formatted(count, kind, MOST_PACKS));
        }
    }

    /** The same kind, so many packs. */
    public Cargo withCount(int other) {
        return new Cargo(kind, grams, millilitres, longestMillimetres, other, order);
    }
}
