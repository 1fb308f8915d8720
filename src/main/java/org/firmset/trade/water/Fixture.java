package org.firmset.trade.water;

import org.jspecify.annotations.Nullable;

/** What an outlet is, when it is not said what it lets through: the most that EPAct 1992 allows new ones. */
public enum Fixture {
    SHOWER("2.5 gpm at 80 psi"),
    SINK("2.2 gpm at 60 psi"),
    /** The bare end of the branch. */
    OPEN_END(null);

    /** Water of one flush of a toilet in litres: 1.6 gal. */
    public static final double LITRES_PER_FLUSH = 1.6 * UsUnits.GALLON;

    private final @Nullable String lets;

    Fixture(@Nullable String lets) {
        this.lets = lets;
    }

    /** What it lets through; null for the bare end. */
    public @Nullable Rating rating() {
        return lets == null ? null : Rating.parse(lets);
    }
}
