package org.firmset.trade.water;

/** What water weighs, how thick it is, and what pressure its height makes. */
public final class Water {
    /** Standard gravity in m/s2. */
    public static final double GRAVITY = 9.80665;
    /** Density for weights in kg/m3: a little more than water ever has. */
    public static final double HEAVIEST = 1000;
    /** Compressibility in 1/Pa: bulk modulus 2.18 GPa at 20 °C, within 10 % from 0 to 40 °C; from memory. */
    public static final double COMPRESSIBILITY = 1 / 2.18e9;

    private static final double MOST_CELSIUS = 40;

    private Water() {}

    /**
     * Density of pure water in kg/m3: Tanaka et al. 2001, Metrologia 38, 301.
     *
     * @param celsius 0 to 40 °C
     */
    public static double density(double celsius) {
        double t = Must.lie("celsius", celsius, 0, MOST_CELSIUS);
        double off = t - 3.983035;
        return 999.974950 * (1 - off * off * (t + 301.797) / (522528.9 * (t + 69.34881)));
    }

    /**
     * Dynamic viscosity in Pa s: IAPWS SR6-08 for liquid water at 0.1 MPa, from memory.
     *
     * @param celsius 0 to 40 °C
     */
    public static double viscosity(double celsius) {
        double t = (Must.lie("celsius", celsius, 0, MOST_CELSIUS) + 273.15) / 300;
        return 1e-6
                * (280.68 * Math.pow(t, -1.9)
                        + 511.45 * Math.pow(t, -7.7)
                        + 61.131 * Math.pow(t, -19.6)
                        + 0.45903 * Math.pow(t, -40));
    }

    /**
     * Kinematic viscosity in m2/s.
     *
     * @param celsius 0 to 40 °C
     */
    public static double kinematicViscosity(double celsius) {
        return viscosity(celsius) / density(celsius);
    }

    /**
     * Pressure in pascals of a height of water: p = rho g h.
     *
     * @param head in metres; under 0 for suction
     * @param density in kg/m3, over 0
     */
    public static double pressure(double head, double density) {
        return Must.lie("head", head, -1e6, 1e6) * Must.beOver0("density", density) * GRAVITY;
    }

    /**
     * Height of water in metres that makes a pressure: h = p / (rho g).
     *
     * @param pascals under 0 for suction
     * @param density in kg/m3, over 0
     */
    public static double head(double pascals, double density) {
        return Must.lie("pascals", pascals, -1e10, 1e10) / (Must.beOver0("density", density) * GRAVITY);
    }
}
