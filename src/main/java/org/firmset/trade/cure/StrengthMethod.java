package org.firmset.trade.cure;

import org.firmset.measure.Worded;

/** The published family of curves of strength against age. */
public enum StrengthMethod implements Worded {
    /** exp(s (1 - sqrt(28 / t))). */
    EN_1992("EN 1992-1-1"),
    /** t / (a + b t), moist cured. */
    ACI_209("ACI 209R");

    private final String words;

    StrengthMethod(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
