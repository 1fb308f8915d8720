package org.firmset.trade.takeoff;

import org.firmset.trade.trace.Whole;

/** Volumes of ground as it lies, loose and compacted. Volumes in cubic metres, shares as fractions. */
public final class Earthwork {

    /** Ground by how much it swells when dug. Field values spread by ten points. */
    public enum Ground {
        EARTH(0.25),
        CLAY(0.40),
        SAND_OR_GRAVEL(0.12),
        BLASTED_ROCK(0.65);

        private final double swell;

        Ground(double swell) {
            this.swell = swell;
        }

        /** What it gains in volume: 0.25 for a quarter more. */
        public double swell() {
            return swell;
        }

        /** Volume in the ground for a loose one. */
        public double loadFactor() {
            return 1 / (1 + swell);
        }
    }

    private Earthwork() {}

    /** Loose volume of what lay in the ground. @param swell 0 or more */
    public static double loose(double inGround, double swell) {
        requireAmount("inGround", inGround);
        requireShare("swell", swell, 0, 1);
        return inGround * (1 + swell);
    }

    /** What has to be dug for a compacted fill. @param shrink loss against the ground, under 1 */
    public static double inGroundFor(double compacted, double shrink) {
        requireAmount("compacted", compacted);
        requireShare("shrink", shrink, 0, 0.9);
        return compacted / (1 - shrink);
    }

    /**
     * Layers for a compacted depth.
     *
     * @param depth compacted, over 0
     * @param looseLift height of a layer before it is compacted, over 0
     * @param compactedShare compacted height for a loose one, over 0, up to 1
     */
    public static long lifts(double depth, double looseLift, double compactedShare) {
        if (!(depth > 0 && looseLift > 0)) {
            throw new IllegalArgumentException(
                    "depth [" + depth + "] and looseLift [" + looseLift + "] must be over 0");
        }
        requireShare("compactedShare", compactedShare, 1e-3, 1);
        return Whole.up(depth / (looseLift * compactedShare));
    }

    /**
     * Dry mass of a fill in kilograms at a relative compaction, ASTM D698/D1557.
     *
     * @param greatestDryDensity of the laboratory test in kg/m3
     * @param relative share of it that is reached, over 0
     */
    public static double dryMass(double compacted, double greatestDryDensity, double relative) {
        requireAmount("compacted", compacted);
        requireAmount("greatestDryDensity", greatestDryDensity);
        requireShare("relative", relative, 1e-3, 1.1);
        return compacted * greatestDryDensity * relative;
    }

    /** The same with its water. @param water share of the dry mass */
    public static double moistMass(double dryMass, double water) {
        requireAmount("dryMass", dryMass);
        requireShare("water", water, 0, 1);
        return dryMass * (1 + water);
    }

    private static void requireAmount(String name, double value) {
        if (!(value >= 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(name + " [" + value + "] must be 0 or more");
        }
    }

    private static void requireShare(String name, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(name + " [" + value + "] must be from " + least + " to " + most);
        }
    }
}
