package org.firmset.spend;

import org.firmset.measure.Worded;

/** What became of a purchase. */
public enum ReceiptState implements Worded {
    PAID("paid"),
    /** Nothing or only a down payment has been paid; the rest is committed. */
    ORDERED("ordered"),
    /** Things went back: all quantities and amounts are negative. */
    RETURNED("returned");

    private final String words;

    ReceiptState(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
