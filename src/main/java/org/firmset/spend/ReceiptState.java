package org.firmset.spend;

import org.firmset.measure.Worded;

/** What became of a purchase. */
public enum ReceiptState implements Worded {
    /** Paid, and here: what is left of it lies in stock. */
    PAID("paid"),
    /** All of it is paid, and it is still to come. */
    PAID_AHEAD("paid ahead"),
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

    public boolean isPaid() {
        return this == PAID || this == PAID_AHEAD;
    }

    /** Whether it is on its way, so that it need not be bought. */
    public boolean isToCome() {
        return this == ORDERED || this == PAID_AHEAD;
    }
}
