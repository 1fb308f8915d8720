package org.firmset.plan.search;

/** In which order sources are asked once the trip's own arrival run and those of earlier made trips are full. */
enum Fetching {
    /** Another run on the trip, then a delivery, then trips made just to bring things. */
    EXTRA_RUN_FIRST,
    /** A delivery, then another run, then trips made just to bring things. */
    DELIVERY_FIRST,
    /** Trips made just to bring things, then another run, then a delivery. */
    AHEAD_FIRST
}
