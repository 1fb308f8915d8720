package org.firmset.plan;

import java.time.LocalDate;

/**
 * Packs that are on site from a date on without a run, not yet used. After the status date it is what comes by itself, such as
 * rain; packs that must be kept dry take their room in the planner's sums from the beginning all the same.
 */
public record StockLot(String material, int packs, LocalDate arrivedOn) {
    public StockLot {
        Require.notNegative(packs, "packs", "stock of", material);
    }
}
