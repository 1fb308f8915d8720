package org.firmset.plan;

/** How materials come to site. */
public enum RunKind {
    /** With the people, when they arrive. */
    ARRIVAL,
    /** From site to the yard and back, during the trip. */
    EXTRA,
    /** Brought by a supplier. */
    DELIVERY
}
