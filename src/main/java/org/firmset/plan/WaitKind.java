package org.firmset.plan;

/** Why a wait is there. */
public enum WaitKind {
    /** The work after needs the work before; nothing has to pass between them but what is said. */
    FOLLOWS,
    CURE,
    DRY,
    SETTLE,
    INSPECTION,
    DELIVERY,
    NOTICE
}
