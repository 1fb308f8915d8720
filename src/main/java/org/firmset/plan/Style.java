package org.firmset.plan;

/** What makes one plan better than another; the aims that are not named break ties in the order given. */
public enum Style {
    /** Weighted finishes of the subprojects, then trips, then money. */
    SOONEST,
    /** Number of trips, then weighted finishes, then money. */
    FEWEST_TRIPS,
    /** Money, then weighted finishes, then trips. */
    LEAST_MONEY,
    /**
     * Days by which stages finish sooner or later than in the plan before, then weighted finishes, trips and money. Where
     * there was no plan before it is {@link #SOONEST}.
     */
    LEAST_CHANGE
}
