package org.firmset.trade.water;

import org.firmset.trade.trace.Source;

/**
 * Ground and the vertical pressure presumed to be safe on it: IBC 2012 Table 1806.2, and 24 CFR 3285.202 for the
 * unknown.
 */
public enum Soil {
    BEDROCK(12_000),
    SEDIMENTARY_ROCK(4_000),
    GRAVEL(3_000),
    SAND(2_000),
    CLAY(1_500),
    UNKNOWN(1_500),
    PEAT(0),
    ORGANIC_CLAY(0),
    UNCOMPACTED_FILL(0);

    private final double poundsPerSquareFoot;

    Soil(double poundsPerSquareFoot) {
        this.poundsPerSquareFoot = poundsPerSquareFoot;
    }

    /** In lb/ft2, as the tables have it; 0 where nothing may be presumed. */
    public double poundsPerSquareFoot() {
        return poundsPerSquareFoot;
    }

    /** In pascals; 0 where nothing may be presumed. */
    public double presumptive() {
        return poundsPerSquareFoot * UsUnits.LB_PER_FT2;
    }

    Source source() {
        return this == UNKNOWN ? Sources.BEARING_UNKNOWN : Sources.BEARING;
    }
}
