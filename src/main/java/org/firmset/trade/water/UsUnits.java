package org.firmset.trade.water;

/**
 * US units in SI, for limits that standards state in them; exact by definition of the inch, the pound and the gallon.
 */
final class UsUnits {
    static final double FOOT = 0.3048;
    static final double PSI = 6894.757293168361;
    static final double LB_PER_FT2 = PSI / 144;
    /** In litres, so also a gallon a minute in litres a minute. */
    static final double GALLON = 3.785411784;

    private UsUnits() {}
}
