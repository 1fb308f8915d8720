package org.firmset.trade.water;

import org.firmset.measure.Worded;

/** What a pressure test says. */
public enum Verdict implements Worded {
    NOT_MADE("not made yet"),
    PASSES("passes"),
    FAILS("does not pass"),
    CANNOT_TELL("cannot tell");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }

    /**
     * Passes when the drop is allowed both as it was read and once the whole effect of temperature is taken out; does
     * not pass when it is allowed neither way. Where the two differ nobody can tell: air, ground and clamps make the
     * effect of temperature anything between none and the whole.
     *
     * @param drop from start to end in pascals; under 0 for a rise
     * @param thermal what the change of temperature does to the reading in pascals, under 0 for a fall
     * @param allowed in pascals, 0 or more
     */
    public static Verdict of(double drop, double thermal, double allowed) {
        Must.be0OrMore("allowed", allowed);
        boolean asRead = Must.lie("drop", drop, -1e9, 1e9) <= allowed;
        boolean corrected = drop + Must.lie("thermal", thermal, -1e9, 1e9) <= allowed;
        if (asRead != corrected) {
            return CANNOT_TELL;
        }
        return asRead ? PASSES : FAILS;
    }
}
