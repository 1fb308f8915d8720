package org.firmset.trade.water;

import org.jspecify.annotations.Nullable;

/**
 * How much head an outlet itself takes: h = c Q2.
 *
 * @param c in s2/m5, over 0
 * @param hasPressure whether there is pressure before it while it runs; a bare end has none
 */
record Opening(double c, boolean hasPressure) {
    private static final double LITRES_PER_MINUTE = 60_000;

    /** @param bore of its branch in metres */
    static Opening of(@Nullable Rating rating, double bore, double density) {
        if (rating == null) {
            return new Opening(Fitting.EXIT.k() * Friction.velocityHead(1, bore), false);
        }
        double flow = rating.flow().amount() / LITRES_PER_MINUTE;
        return new Opening(Water.head(rating.pressure().amount(), density) / (flow * flow), true);
    }

    double head(double flow) {
        return c * flow * flow;
    }

    /** Flow in m3/s when nothing else takes head. */
    double flow(double head) {
        return Math.sqrt(head / c);
    }
}
