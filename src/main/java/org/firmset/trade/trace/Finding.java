package org.firmset.trade.trace;

/**
 * Something that the person who asked ought to know about the result.
 *
 * @param text one or two plain sentences
 */
public record Finding(Weight weight, String text) {

    /** How much it matters. */
    public enum Weight {
        /** Good to know, such as where published figures differ. */
        NOTE,
        /** Something goes beyond a limit or a formula's range. */
        WARNING,
        /** So near a limit, or beyond it, that this arithmetic must not decide. */
        ENGINEER
    }

    public static Finding note(String text) {
        return new Finding(Weight.NOTE, text);
    }

    public static Finding warning(String text) {
        return new Finding(Weight.WARNING, text);
    }

    /** Ends with the advice to ask a licensed engineer. */
    public static Finding engineer(String text) {
        return new Finding(Weight.ENGINEER, text + " Ask a licensed engineer.");
    }
}
