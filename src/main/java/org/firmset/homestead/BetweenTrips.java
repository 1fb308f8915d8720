package org.firmset.homestead;

/** Where battery and panels are while nobody is on site. */
public enum BetweenTrips {
    /** The battery is taken along and is full when a trip begins. */
    CHARGED_AT_HOME,
    /** Panels and battery stay on site, and the sun charges it until the next trip. */
    PANELS_LEFT_OUT
}
