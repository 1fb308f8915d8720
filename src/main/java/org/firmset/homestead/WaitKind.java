package org.firmset.homestead;

/** Why a wait is there. */
public enum WaitKind {
    FOLLOWS,
    CURE,
    DRY,
    SETTLE,
    INSPECTION,
    DELIVERY,
    NOTICE
}
