package org.firmset.trade.water;

/** The usual shapes of tanks; C is the factor of wind force of the UBC table for tanks, 0.8 round and 1.4 square. */
public enum TankShape {
    UPRIGHT_CYLINDER(0.8),
    LYING_CYLINDER(0.8),
    BOX(1.4),
    CONE_BOTTOM(0.8),
    /** Of any shape, upright and about round; its maker says the volume. */
    NOMINAL(0.8);

    private final double drag;

    TankShape(double drag) {
        this.drag = drag;
    }

    double drag() {
        return drag;
    }
}
