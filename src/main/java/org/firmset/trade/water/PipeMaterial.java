package org.firmset.trade.water;

/**
 * What a pipe is made of. Roughness and C as in handbooks of hydraulics (drawn tubing and plastic 0.0015 mm, galvanized
 * 0.15 mm; plastic 140 to 150, copper 130 to 140, galvanized 120; old steel 100 with the roughness that fits it);
 * expansion and modulus as in ASME B31 Table 919.3.1 and tables of thermoplastics, seen second-hand; that of
 * cross-linked polyethylene from memory.
 */
public enum PipeMaterial {
    PVC(1.5e-6, 150, 5.4e-5, 2.8e9),
    CPVC(1.5e-6, 150, 6.3e-5, 2.9e9),
    POLYETHYLENE(1.5e-6, 150, 1.6e-4, 0.83e9),
    PEX(1.5e-6, 150, 1.6e-4, 0.6e9),
    COPPER(1.5e-6, 140, 1.7e-5, 117e9),
    GALVANIZED_STEEL(1.5e-4, 120, 1.14e-5, 190e9),
    OLD_STEEL(5e-4, 100, 1.14e-5, 190e9);

    private final double roughness;
    private final double hazenWilliams;
    private final double expansion;
    private final double modulus;

    PipeMaterial(double roughness, double hazenWilliams, double expansion, double modulus) {
        this.roughness = roughness;
        this.hazenWilliams = hazenWilliams;
        this.expansion = expansion;
        this.modulus = modulus;
    }

    /** Height of the roughness in metres. */
    public double roughness() {
        return roughness;
    }

    /** The coefficient C of Hazen and Williams. */
    public double hazenWilliams() {
        return hazenWilliams;
    }

    /** Linear expansion for a kelvin. */
    public double expansion() {
        return expansion;
    }

    /** Modulus of elasticity in pascals; that of plastic is for a load of minutes. */
    public double modulus() {
        return modulus;
    }

    /** Whether it creeps under load: its pressure falls for a while after pumping up. */
    public boolean plastic() {
        return modulus < 10e9;
    }
}
