package org.firmset.plan;

/** How the labour of a stage may lie on site days. */
public enum Layout {
    /** All of it on one site day, as a pour has to be. */
    IN_ONE_GO,
    /** In blocks on any site days. */
    SPLITTABLE,
    /** On site days whose dates follow each other without a gap. */
    UNBROKEN_DAYS
}
