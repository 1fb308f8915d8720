package org.firmset.trade.water;

/** What water loses on its way through a full round pipe. SI units throughout: metres, m3/s, m2/s. */
public final class Friction {
    /** Under this Reynolds number flow is laminar. */
    public static final double LAMINAR = 2300;
    /** Over this Reynolds number flow is taken as turbulent; between the two nothing is certain. */
    public static final double TURBULENT = 4000;

    private static final double EXACT = 1e-12;

    private Friction() {}

    /**
     * Mean speed in m/s.
     *
     * @param flow in m3/s, 0 or more
     * @param bore inside diameter in metres, over 0
     */
    public static double velocity(double flow, double bore) {
        double b = Must.beOver0("bore", bore);
        return Must.be0OrMore("flow", flow) / (Math.PI / 4 * b * b);
    }

    /**
     * Reynolds number v d / nu.
     *
     * @param flow in m3/s, 0 or more
     * @param bore in metres, over 0
     * @param viscosity kinematic, in m2/s, over 0
     */
    public static double reynolds(double flow, double bore, double viscosity) {
        return velocity(flow, bore) * bore / Must.beOver0("viscosity", viscosity);
    }

    /**
     * Darcy friction factor of turbulent flow: Colebrook 1939, 1/sqrt(f) = -2 log10(e/3.7 + 2.51/(Re sqrt(f))), solved
     * to 1e-10 or better.
     *
     * @param reynolds 2,300 to 1e9
     * @param relativeRoughness height of the roughness over the bore, 0 to 0.1
     */
    public static double colebrook(double reynolds, double relativeRoughness) {
        double re = Must.lie("reynolds", reynolds, LAMINAR, 1e9);
        double rough = Must.lie("relativeRoughness", relativeRoughness, 0, 0.1) / 3.7;
        // the first guess is that of Swamee and Jain 1976
        double x = -2 * Math.log10(rough + 5.74 / Math.pow(re, 0.9));
        double step;
        do {
            double inner = rough + 2.51 * x / re;
            double off = x + 2 * Math.log10(inner);
            step = off / (1 + 2 / Math.log(10) * 2.51 / (re * inner));
            x -= step;
        } while (Math.abs(step) > EXACT * x);
        return 1 / (x * x);
    }

    /**
     * Darcy friction factor of any flow: 64/Re while laminar, Colebrook while turbulent, between them a straight line
     * that is no more than a bridge.
     *
     * @param reynolds over 0, up to 1e9
     * @param relativeRoughness 0 to 0.1
     */
    public static double factor(double reynolds, double relativeRoughness) {
        double re = Must.beOver0("reynolds", reynolds);
        if (re <= LAMINAR) {
            return 64 / re;
        }
        if (re >= TURBULENT) {
            return colebrook(re, relativeRoughness);
        }
        double share = (re - LAMINAR) / (TURBULENT - LAMINAR);
        return 64 / LAMINAR * (1 - share) + colebrook(TURBULENT, relativeRoughness) * share;
    }

    /** Whether the Reynolds number lies where neither law of friction is certain. */
    public static boolean uncertain(double reynolds) {
        return reynolds > LAMINAR && reynolds < TURBULENT;
    }

    /**
     * Head lost in metres by Darcy and Weisbach: f L/d v2/2g.
     *
     * @param flow in m3/s, 0 or more
     * @param length in metres, 0 or more
     * @param bore in metres, over 0
     * @param roughness in metres, at most a tenth of the bore
     * @param viscosity kinematic, in m2/s, over 0
     */
    public static double darcy(double flow, double length, double bore, double roughness, double viscosity) {
        double l = Must.be0OrMore("length", length);
        double re = reynolds(flow, bore, viscosity);
        return re > 0 ? factor(re, roughness / bore) * l / bore * velocityHead(flow, bore) : 0;
    }

    /**
     * Head lost in metres by Hazen and Williams: 10.67 L Q^1.852 / (C^1.852 d^4.8704); for turbulent water near 15 °C.
     *
     * @param flow in m3/s, 0 or more
     * @param length in metres, 0 or more
     * @param bore in metres, over 0
     * @param c the coefficient of the pipe, over 0
     */
    public static double hazenWilliams(double flow, double length, double bore, double c) {
        double q = Must.be0OrMore("flow", flow) / Must.beOver0("c", c);
        return 10.67
                * Must.be0OrMore("length", length)
                * Math.pow(q, 1.852)
                / Math.pow(Must.beOver0("bore", bore), 4.8704);
    }

    /**
     * Head of the speed in metres: v2/2g. Fittings lose so many of it.
     *
     * @param flow in m3/s, 0 or more
     * @param bore in metres, over 0
     */
    public static double velocityHead(double flow, double bore) {
        double v = velocity(flow, bore);
        return v * v / (2 * Water.GRAVITY);
    }

    /**
     * Length of straight pipe in metres that loses as much as fittings do: k d / f.
     *
     * @param k sum of the loss coefficients, 0 or more
     * @param bore in metres, over 0
     * @param factor Darcy friction factor, over 0
     */
    public static double equivalentLength(double k, double bore, double factor) {
        return Must.be0OrMore("k", k) * Must.beOver0("bore", bore) / Must.beOver0("factor", factor);
    }
}
