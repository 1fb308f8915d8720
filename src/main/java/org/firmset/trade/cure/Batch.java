package org.firmset.trade.cure;

/**
 * The heat in a batch of concrete: dry aggregate and cement of one temperature and mixing water of another, the solids
 * holding 0.22 of the heat of water (ACI 306R Eq. 3.1, from memory). Water in the aggregate, ice and the heat of mixing
 * are left out.
 *
 * @param solidsKilograms dry aggregate and cement, over 0
 * @param solidsCelsius their temperature, from -30 to 80
 * @param waterKilograms mixing water, over 0
 */
public record Batch(double solidsKilograms, double solidsCelsius, double waterKilograms) {
    /** Heat held by aggregate and cement, as a share of that of as much water. */
    static final double SOLIDS_FACTOR = 0.22;

    public Batch {
        Demand.overZero("solidsKilograms", solidsKilograms);
        Demand.within("solidsCelsius", solidsCelsius, -30, 80);
        Demand.overZero("waterKilograms", waterKilograms);
    }

    private double solidsAsWater() {
        return SOLIDS_FACTOR * solidsKilograms;
    }

    /** Temperature of the fresh concrete in degrees Celsius with mixing water of 0 to 100 °C. */
    public double concreteCelsius(double waterCelsius) {
        Demand.within("waterCelsius", waterCelsius, 0, 100);
        return (solidsAsWater() * solidsCelsius + waterKilograms * waterCelsius) / (solidsAsWater() + waterKilograms);
    }

    /**
     * Temperature of the mixing water in degrees Celsius that makes concrete this warm: the inverse of {@link
     * #concreteCelsius}. Under 0 and over 100 °C no water can do it.
     *
     * @param concreteCelsius from -30 to 80
     */
    public double waterCelsius(double concreteCelsius) {
        Demand.within("concreteCelsius", concreteCelsius, -30, 80);
        return concreteCelsius + solidsAsWater() / waterKilograms * (concreteCelsius - solidsCelsius);
    }
}
