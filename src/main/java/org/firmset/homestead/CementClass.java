package org.firmset.homestead;

/** How fast a cement gains strength, by the classes of EN 1992-1-1, 3.1.2(6). */
public enum CementClass {
    RAPID,
    NORMAL,
    SLOW
}
