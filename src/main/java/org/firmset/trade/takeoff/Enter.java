package org.firmset.trade.takeoff;

import org.firmset.measure.Area;
import org.firmset.measure.Length;
import org.firmset.measure.Volume;

/** What a refusal asks for instead, rounded to the side on which the figure said is itself allowed. */
final class Enter {
    private static final double PARTS = 1000;
    /** What binary fractions may add; far less than a thousandth. */
    private static final double FORGIVEN = 1e-6;

    private Enter() {}

    /** @param metres rounded up to a millimetre */
    static String atLeast(double metres) {
        return "Enter at least " + Length.ofMetres(Math.ceil(metres * PARTS - FORGIVEN) / PARTS);
    }

    /** @param metres rounded down to a millimetre */
    static String atMost(double metres) {
        return "Enter at most " + Length.ofMetres(down(metres));
    }

    /** @param metres rounded down to a millimetre */
    static String under(double metres) {
        return "Enter less than " + Length.ofMetres(down(metres));
    }

    /** @param squareMetres rounded down to a thousandth */
    static String underArea(double squareMetres) {
        return "Enter less than " + Area.ofSquareMetres(down(squareMetres));
    }

    /** @param cubicMetres rounded down to a litre */
    static String underVolume(double cubicMetres) {
        return "Enter less than " + Volume.ofCubicMetres(down(cubicMetres));
    }

    /** @param cubicMetres rounded down to a litre */
    static String atMostVolume(double cubicMetres) {
        return "Enter at most " + Volume.ofCubicMetres(down(cubicMetres));
    }

    private static double down(double value) {
        return Math.floor(value * PARTS + FORGIVEN) / PARTS;
    }
}
