package org.firmset.trade.checks;

import java.util.Locale;
import java.util.function.DoubleSupplier;

/**
 * One published value and what the program computes for it.
 *
 * @param what the figure with its unit: "blocks for 100 ft2"
 * @param tolerance how far the computed value may lie from the expected one, in the same unit
 */
public record Check(Row row, String what, double expected, double tolerance, DoubleSupplier computed) {

    /** How it reads in the report of the tests: the source is part of it. */
    String title() {
        return row.id() + " " + row.quantity() + ", " + what + ": " + plain(expected) + "; " + row.source() + "; "
                + row.known();
    }

    boolean holds(double value) {
        // a billionth forgives only binary fractions
        return Math.abs(value - expected) <= tolerance + Math.abs(expected) * 1e-9;
    }

    /** Shown to as many digits as the tolerance makes sense of, one more than that. */
    String plain(double value) {
        int decimals = tolerance <= 0
                ? decimalsOf(expected)
                : Math.max(decimalsOf(expected), (int) Math.ceil(-Math.log10(tolerance)) + 1);
        return trimmed(String.format(Locale.ROOT, "%." + Math.clamp(decimals, 0, 9) + "f", value));
    }

    private static int decimalsOf(double value) {
        String text = trimmed(String.format(Locale.ROOT, "%.9f", value));
        return text.contains(".") ? text.length() - text.indexOf('.') - 1 : 0;
    }

    private static String trimmed(String text) {
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}
