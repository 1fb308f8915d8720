package org.firmset.trade.cure;

/** What is placed. */
public enum PourWork {
    /** Concrete in forms or on the ground. */
    CONCRETE,
    /** Units laid in mortar, and their core fill. */
    MASONRY
}
