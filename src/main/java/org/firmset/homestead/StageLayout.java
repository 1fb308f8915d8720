package org.firmset.homestead;

/** How the labour of a stage may lie on site days. */
public enum StageLayout {
    IN_ONE_GO,
    SPLITTABLE,
    UNBROKEN_DAYS
}
