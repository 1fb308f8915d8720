package org.firmset.trade.water;

/** What chlorine comes in. */
public enum Disinfectant {
    /** Sodium hypochlorite: plain bleach. */
    LIQUID,
    /** Calcium hypochlorite: granules or tablets without stabilizer. */
    DRY
}
