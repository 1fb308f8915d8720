package org.firmset.trade.water;

/** From water supply fixture units to the flow that is likely at one time. */
public final class FixtureUnits {
    private static final double[] UNITS = {3, 5, 8, 10, 13};
    private static final double[] GALLONS_PER_MINUTE = {3, 4.5, 7, 8, 10};

    private FixtureUnits() {}

    /**
     * Flow in L/min for flush tanks: NSPC Table B.5.4, straight lines between its points. Other codes' tables differ
     * and must not be mixed with it.
     *
     * @param units 3 to 13
     */
    public static double litresPerMinute(double units) {
        double u = Must.lie("units", units, UNITS[0], UNITS[UNITS.length - 1]);
        int i = 1;
        while (UNITS[i] < u) {
            i++;
        }
        double share = (u - UNITS[i - 1]) / (UNITS[i] - UNITS[i - 1]);
        double gallons = GALLONS_PER_MINUTE[i - 1] * (1 - share) + GALLONS_PER_MINUTE[i] * share;
        return gallons * UsUnits.GALLON;
    }
}
