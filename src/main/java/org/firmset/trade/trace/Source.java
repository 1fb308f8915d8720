package org.firmset.trade.trace;

/**
 * Where a formula or figure comes from.
 *
 * @param text standard and clause, with its edition; empty when there is none
 */
public record Source(String text, Known known) {
    public static final Source ARITHMETIC = new Source("", Known.ARITHMETIC);
    public static final Source PRACTICE = new Source("", Known.PRACTICE);

    public static Source seen(String text) {
        return new Source(text, Known.SEEN);
    }

    public static Source memory(String text) {
        return new Source(text, Known.MEMORY);
    }

    public static Source practice(String text) {
        return new Source(text, Known.PRACTICE);
    }

    /** "EN 1992-1-1 Eq. 3.2 (seen)". */
    public String words() {
        return text.isEmpty() ? known.words() : text + " (" + known.words() + ")";
    }
}
