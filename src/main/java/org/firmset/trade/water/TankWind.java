package org.firmset.trade.water;

/** Wind on a tank as a rigid body that stands free: SI units, forces in newtons. Uplift and shaking are left out. */
public final class TankWind {
    /** Density of air in kg/m3 at 15 °C and sea level: ICAO standard atmosphere, from memory. */
    public static final double AIR = 1.225;
    /** Wanted against sliding and tipping; common practice. */
    public static final double SAFETY = 1.5;

    private TankWind() {}

    /**
     * Force of wind in newtons: rho v2 C A / 2.
     *
     * @param speed in m/s, 0 or more
     * @param drag factor C, over 0
     * @param area seen by the wind in m2, over 0
     */
    public static double force(double speed, double drag, double area) {
        double v = Must.be0OrMore("speed", speed);
        return AIR / 2 * v * v * Must.beOver0("drag", drag) * Must.beOver0("area", area);
    }

    /**
     * How many times the force it takes to slide.
     *
     * @param kilograms that stand on the ground, 0 or more
     * @param friction coefficient, over 0
     * @param force in newtons, over 0
     */
    public static double slidingSafety(double kilograms, double friction, double force) {
        return Must.be0OrMore("kilograms", kilograms)
                * Water.GRAVITY
                * Must.beOver0("friction", friction)
                / Must.beOver0("force", force);
    }

    /**
     * How many times the force it takes to tip over an edge.
     *
     * @param kilograms 0 or more
     * @param width between the edges in metres, over 0
     * @param force in newtons, over 0
     * @param arm height at which the force acts in metres, over 0
     */
    public static double tippingSafety(double kilograms, double width, double force, double arm) {
        double holding = Must.be0OrMore("kilograms", kilograms) * Water.GRAVITY * Must.beOver0("width", width) / 2;
        return holding / (Must.beOver0("force", force) * Must.beOver0("arm", arm));
    }

    /**
     * Mass in kilograms that must press down in all, for a safety against sliding.
     *
     * @param force in newtons, 0 or more
     * @param friction coefficient, over 0
     * @param safety over 0
     */
    public static double massAgainstSliding(double force, double friction, double safety) {
        return Must.beOver0("safety", safety)
                * Must.be0OrMore("force", force)
                / (Must.beOver0("friction", friction) * Water.GRAVITY);
    }

    /**
     * Mass in kilograms that must press down in all, in the middle, for a safety against tipping.
     *
     * @param force in newtons, 0 or more
     * @param width between the edges in metres, over 0
     * @param arm height at which the force acts in metres, over 0
     * @param safety over 0
     */
    public static double massAgainstTipping(double force, double width, double arm, double safety) {
        double moment = Must.be0OrMore("force", force) * Must.beOver0("arm", arm);
        return Must.beOver0("safety", safety) * moment * 2 / (Must.beOver0("width", width) * Water.GRAVITY);
    }
}
