package org.firmset.plan.explain;

/** What kind of thing a single change is. In the order in which changes are tried when there are too many for all. */
public enum ChangeKind {
    /**
     * The status date moved. With it go what follows from it alone: trips that lie before it, work recorded since, the
     * stock on site, lead times that count from it, and pins to dates that are over.
     */
    TIME_WENT_ON,
    TRIP_ADDED,
    /** Of trips that change places one has to go first; it is added again later. */
    TRIP_GONE,
    /** Also another trip on dates of one that is gone. */
    TRIP_CHANGED,
    /** With its waits, its pins and the place it had in the plan before, and with what it names and was not there. */
    STAGE_ADDED,
    /** With its waits, its pins and the place it had in the plan before. */
    STAGE_GONE,
    /** When it was finished, with the days that its cures take from then. */
    STAGE_CHANGED,
    WAIT_ADDED,
    WAIT_GONE,
    WAIT_CHANGED,
    /** The id is that of the stage. */
    PINS_CHANGED,
    DRY_STORAGE_CHANGED,
    /** Battery or generator. */
    POWER_CHANGED,
    /** Stock on site, the status date being the same. */
    STOCK_CHANGED,
    SPENDING_CHANGED,
    TOOL_ADDED,
    TOOL_GONE,
    TOOL_CHANGED,
    OFFER_ADDED,
    OFFER_GONE,
    OFFER_CHANGED,
    SUBPROJECT_ADDED,
    SUBPROJECT_GONE,
    /** Its weight, say. */
    SUBPROJECT_CHANGED,
    MATERIAL_ADDED,
    MATERIAL_GONE,
    MATERIAL_CHANGED,
    /** The same is said in another way: another order, or dates on which nobody is there. */
    WRITTEN_OTHERWISE
}
