package org.firmset.trade.water;

/**
 * A pipe of one bore with its fittings.
 *
 * @param length in metres, 0 or more
 * @param bore inside diameter in metres, over 0
 * @param k sum of the loss coefficients of its fittings, 0 or more
 */
public record PipeRun(double length, double bore, PipeMaterial material, double k) {
    public PipeRun {
        Must.be0OrMore("length", length);
        Must.beOver0("bore", bore);
        Must.be0OrMore("k", k);
    }

    /**
     * Head in metres that friction along the straight pipe takes.
     *
     * @param flow in m3/s, 0 or more
     * @param viscosity kinematic, in m2/s, over 0
     */
    public double frictionHead(double flow, FrictionLaw law, double viscosity) {
        return switch (law) {
            case DARCY_WEISBACH -> Friction.darcy(flow, length, bore, material.roughness(), viscosity);
            case HAZEN_WILLIAMS -> Friction.hazenWilliams(flow, length, bore, material.hazenWilliams());
        };
    }

    /**
     * Head in metres that the fittings take.
     *
     * @param flow in m3/s, 0 or more
     */
    public double fittingHead(double flow) {
        return k * Friction.velocityHead(flow, bore);
    }

    /**
     * Head in metres that pipe and fittings take.
     *
     * @param flow in m3/s, 0 or more
     * @param viscosity kinematic, in m2/s, over 0
     */
    public double head(double flow, FrictionLaw law, double viscosity) {
        return frictionHead(flow, law, viscosity) + fittingHead(flow);
    }
}
