package org.firmset.trade.takeoff;

/**
 * What a base is filled with: compacted volume as a share of loose volume, and mass of a compacted cubic metre. Field
 * values spread by ten points and more.
 */
public enum FillMaterial {
    /** Sand and crushed rock: loose 1.11, compacted 0.95 of the volume in the ground. */
    CRUSHED_ROCK(0.95 / 1.11, 1.5),
    SAND(0.95 / 1.11, 1.4),
    /** Common earth: 1.25 and 0.90. */
    EARTH(0.90 / 1.25, 1.35),
    /** 1.43 and 0.90. */
    CLAY(0.90 / 1.43, 1.35);

    /** One short ton in a cubic yard. */
    private static final double SHORT_TON_PER_CUBIC_YARD = 2000 * 0.45359237 / (0.9144 * 0.9144 * 0.9144);

    private final double compactedShare;
    private final double tonsPerCubicYard;

    FillMaterial(double compactedShare, double tonsPerCubicYard) {
        this.compactedShare = compactedShare;
        this.tonsPerCubicYard = tonsPerCubicYard;
    }

    /** Compacted volume for a loose one, FM 5-434 Table 1-1. */
    public double compactedShare() {
        return compactedShare;
    }

    /** Kilograms in a compacted cubic metre; a rule of thumb, 10 % either way. */
    public double compactedDensity() {
        return tonsPerCubicYard * SHORT_TON_PER_CUBIC_YARD;
    }
}
