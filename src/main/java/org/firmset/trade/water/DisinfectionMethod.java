package org.firmset.trade.water;

import org.firmset.trade.trace.Source;

/** The three ways of ANSI/AWWA C652-11 for a tank, and that of the plumbing codes for pipes. */
public enum DisinfectionMethod {
    /** The whole tank is filled with chlorinated water. */
    FULL_TANK(50, 24, 10),
    /** All walls are sprayed or painted. */
    WETTED_WALLS(200, 3, 0),
    /** The bottom is filled with strong water, then the tank with good water. */
    BOTTOM_THEN_FILL(50, 6, 2),
    /** Pipes are filled. */
    PIPES(50, 24, 5);

    /** Share of the tank that the strong water of the third way fills: AWWA C652, from memory. */
    public static final double BOTTOM_SHARE = 0.05;
    /** Hours the full tank then stands in the third way. */
    public static final double FILLED_HOURS = 24;

    private final double dose;
    private final double hours;
    private final double left;

    DisinfectionMethod(double dose, double hours, double left) {
        this.dose = dose;
        this.hours = hours;
        this.left = left;
    }

    /** Chlorine at first in mg/L; that of a full tank is a habit which leaves enough at the end. */
    public double dose() {
        return dose;
    }

    /** Hours the strong water stays; of the walls, hours they stay untouched. */
    public double hours() {
        return hours;
    }

    /** Free chlorine in mg/L that must be left at the end; 0 where none is measured. */
    public double left() {
        return left;
    }

    Source source() {
        return this == PIPES ? Sources.PIPES : Sources.STORAGE;
    }

    Source doseSource() {
        return this == FULL_TANK ? Sources.SHOCK : source();
    }

    Source timeSource() {
        return switch (this) {
            case FULL_TANK, BOTTOM_THEN_FILL -> Sources.STORAGE_TIMES;
            case WETTED_WALLS -> Sources.WALL_TIME;
            case PIPES -> Sources.PIPES;
        };
    }
}
