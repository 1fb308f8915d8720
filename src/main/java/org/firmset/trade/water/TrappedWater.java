package org.firmset.trade.water;

/**
 * Water shut in a pipe, as a simple estimate: how its pressure changes with its temperature, and what it takes to raise
 * it. Pipe and water are taken to have one temperature and the pipe to be free to grow.
 *
 * @param bore inside diameter in metres, over 0
 * @param wall thickness of the pipe's wall in metres, over 0
 * @param air share of the volume that is air when there is no pressure, 0 to 0.1
 */
public record TrappedWater(PipeMaterial material, double bore, double wall, double air) {
    private static final double ATMOSPHERE = 101_325;

    public TrappedWater {
        Must.beOver0("bore", bore);
        Must.beOver0("wall", wall);
        Must.lie("air", air, 0, 0.1);
    }

    /** By how much the bore's volume grows for a pascal: 5/4 D / (E e), a thin closed pipe that is free to grow. */
    private double give() {
        return 1.25 * bore / (material.modulus() * wall);
    }

    /**
     * Share of the volume that goes in for a pascal more.
     *
     * @param pascals gauge pressure, 0 or more
     */
    public double compliance(double pascals) {
        double absolute = ATMOSPHERE + Must.be0OrMore("pascals", pascals);
        return Water.COMPRESSIBILITY + give() + air * ATMOSPHERE / (absolute * absolute);
    }

    /**
     * Pascals by which the pressure rises: (ln(rho1 / rho2) - 3 alpha dT) / compliance; under 0 for a fall.
     *
     * @param from temperature at first, 0 to 40 °C
     * @param to temperature at last, 0 to 40 °C
     * @param pascals gauge pressure, 0 or more
     */
    public double pressureChange(double from, double to, double pascals) {
        double water = Math.log(Water.density(from) / Water.density(to));
        double pipe = 3 * material.expansion() * (to - from);
        return (water - pipe) / compliance(pascals);
    }

    /**
     * Share of the volume that must be pumped in to raise it from no pressure.
     *
     * @param pascals gauge pressure, 0 or more
     */
    public double shareToPump(double pascals) {
        double p = Must.be0OrMore("pascals", pascals);
        return p * (Water.COMPRESSIBILITY + give()) + air * (1 - ATMOSPHERE / (ATMOSPHERE + p));
    }
}
