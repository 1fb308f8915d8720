package org.firmset.trade.cure;

import java.util.OptionalDouble;
import org.firmset.measure.Worded;
import org.firmset.trade.trace.Source;

/**
 * What fresh concrete is waited for to bear, as a share of its 28-day strength and least days. The shares are common
 * practice without a source, so are the days where nothing else is said; the drawing, the maker and local code come
 * first.
 */
public enum Milestone implements Worded {
    WALK_ON_SLAB("walk on the slab and bend bars on it", 0.3, 1),
    STRIP_SIDE_FORMS("strip side forms", 0.3, 1),
    LAY_BLOCK_ON_FOOTING("lay block on the footing", 0.5, 2),
    WHEELBARROW_TRAFFIC("wheel barrows over it", 0.5, 3),
    COMPACT_AGAINST_WALL("compact fill against the filled wall", 0.75, 7),
    SET_TANK("set a tank on it", 0.7, 5),
    STRIP_PROPS("strip soffit forms and props of a short span", 0.75, 7),
    /** A share of one's own. */
    OWN("bear what is planned", 0, 0);

    private final String words;
    private final double share;
    private final int leastDays;

    Milestone(String words, double share, int leastDays) {
        this.words = words;
        this.share = share;
        this.leastDays = leastDays;
    }

    /** What one goes on with: "strip side forms". */
    @Override
    public String words() {
        return words;
    }

    /** The share of the 28-day strength, from 0 to 1; nothing for a share of one's own. */
    public OptionalDouble share() {
        return this == OWN ? OptionalDouble.empty() : OptionalDouble.of(share);
    }

    /** Calendar days to wait at least, however warm it is. */
    public int leastDays() {
        return leastDays;
    }

    /** Where the least days come from. */
    public Source daysSource() {
        return switch (this) {
            case STRIP_SIDE_FORMS, STRIP_PROPS -> Sources.STRIPPING;
            case SET_TANK -> Sources.TANK;
            case WALK_ON_SLAB, LAY_BLOCK_ON_FOOTING, WHEELBARROW_TRAFFIC, COMPACT_AGAINST_WALL -> Source.PRACTICE;
            case OWN -> Source.ARITHMETIC;
        };
    }

    boolean isStripping() {
        return this == STRIP_SIDE_FORMS || this == STRIP_PROPS;
    }
}
