package org.firmset.trade.takeoff;

import org.firmset.measure.Worded;

/**
 * Sizes of reinforcing bars: numbers of ASTM A615 (eighths of an inch up to no. 8), and metric bars by their nominal
 * diameter.
 */
public enum BarSize implements Worded {
    NO_3(0.375),
    NO_4(0.5),
    NO_5(0.625),
    NO_6(0.75),
    NO_7(0.875),
    NO_8(1),
    NO_9(1.128),
    NO_10(1.27),
    NO_11(1.41),
    MM_8(8 / 25.4),
    MM_10(10 / 25.4),
    MM_12(12 / 25.4),
    MM_16(16 / 25.4),
    MM_20(20 / 25.4);

    private static final double METRES_PER_INCH = 0.0254;
    /** 490 lb/ft3. */
    static final double STEEL_KILOGRAMS_PER_CUBIC_METRE = 490 * 0.45359237 / (0.3048 * 0.3048 * 0.3048);

    private final double inches;

    BarSize(double inches) {
        this.inches = inches;
    }

    /** Nominal diameter in metres. */
    public double diameter() {
        return inches * METRES_PER_INCH;
    }

    /** Nominal section in square metres. */
    public double section() {
        return Math.PI / 4 * diameter() * diameter();
    }

    /** Mass of a metre in kilograms. */
    public double kilogramsPerMetre() {
        return section() * STEEL_KILOGRAMS_PER_CUBIC_METRE;
    }

    /** Whether it is a no. 5, 16 mm or thinner, of which ties are bent in a narrower circle. */
    boolean isThin() {
        return inches < 0.65;
    }

    /** Whether it is thicker than a no. 6, which takes longer to develop. */
    boolean isOverNo6() {
        return inches > 0.76;
    }

    /** Whether it is a no. 9 or thicker, which bends in a wider circle. */
    boolean isThick() {
        return inches > 1.05;
    }

    /** As people say it: "#4", "12 mm". */
    @Override
    public String words() {
        return name().startsWith("NO_") ? "#" + name().substring(3) : name().substring(3) + " mm";
    }
}
