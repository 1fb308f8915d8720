package org.firmset.homestead;

/** Work that can hurt someone; each brings its usual caution onto the trip sheet. */
public enum Hazard {
    WET_CEMENT,
    DUST,
    LIFTING,
    REBAR,
    VEHICLE,
    DIGGING,
    COMPACTOR,
    FORMS,
    TANK,
    PRESSURE_TEST,
    GENERATOR,
    TEMPORARY_POWER,
    BATTERY,
    HEIGHTS,
    ALONE,
    FIRE
}
