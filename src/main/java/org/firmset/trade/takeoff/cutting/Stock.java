package org.firmset.trade.takeoff.cutting;

/**
 * Stock of one length.
 *
 * @param length in whole units, 1 or more
 * @param cost of one, in any whole unit, 0 or more; the plan has the least sum
 * @param available how many there are; {@link #UNLIMITED} for what can be bought
 */
public record Stock(long length, long cost, int available) {
    public static final int UNLIMITED = Integer.MAX_VALUE;

    public Stock {
        if (length < 1 || cost < 0 || available < 0) {
            throw new IllegalArgumentException("length [" + length + "] must be 1 or more, cost [" + cost
                    + "] and available [" + available + "] 0 or more");
        }
    }
}
