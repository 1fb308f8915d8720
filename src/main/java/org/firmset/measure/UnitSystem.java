package org.firmset.measure;

/** Which units a person reads and writes; what is stored does not depend on it. */
public enum UnitSystem {
    METRIC,
    US
}
