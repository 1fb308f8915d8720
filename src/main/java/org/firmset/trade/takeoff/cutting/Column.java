package org.firmset.trade.takeoff.cutting;

import java.util.Arrays;

/** A pattern inside the search, pieces in the order of the {@link Instance}. */
record Column(int stock, int[] counts) {
    @Override
    public boolean equals(Object other) {
        return other instanceof Column column && column.stock == stock && Arrays.equals(column.counts, counts);
    }

    @Override
    public int hashCode() {
        return 31 * stock + Arrays.hashCode(counts);
    }

    @Override
    public String toString() {
        return stock + ":" + Arrays.toString(counts);
    }
}
