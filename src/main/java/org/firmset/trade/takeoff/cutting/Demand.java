package org.firmset.trade.takeoff.cutting;

/** Pieces of one length in whole units that are wanted; both 1 or more. */
public record Demand(long length, int count) {
    public Demand {
        if (length < 1 || count < 1) {
            throw new IllegalArgumentException("length [" + length + "] and count [" + count + "] must be 1 or more");
        }
    }
}
