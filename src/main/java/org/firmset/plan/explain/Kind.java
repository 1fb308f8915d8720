package org.firmset.plan.explain;

/** What can keep a stage from being done when one wants it; each can be lifted in thought. */
public enum Kind {
    /** A material can be had from a certain date only. */
    LEAD_TIME,
    /** A material goes off. */
    SHELF_LIFE,
    /** What may be spent in a month. */
    SPENDING,
    /** A tool is there only so many times. */
    TOOL,
    /** Battery, sun and generator. */
    POWER,
    /** Dates on which a stage may not be done. */
    SEASON,
    /** A stage needs several people at once. */
    CREW,
    /** A stage is held to certain dates. */
    PIN,
    /** What vehicles carry. */
    VEHICLES,
    /** Room that stays dry. */
    DRY_ROOM,
    /** A stage may not start too long after another. */
    LONGEST_WAIT,
    /** Days that must pass between two stages. */
    LEAST_WAIT,
    /** A stage is done on one day, on unbroken days, or in blocks of a least or most size. */
    IN_ONE_GO,
    /** Hours of the site days. */
    HOURS,
    /** The dates on which the other subprojects finish in the plan. */
    OTHER_FINISH
}
