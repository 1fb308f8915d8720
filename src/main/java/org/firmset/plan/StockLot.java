package org.firmset.plan;

import java.time.LocalDate;

/** Packs that are on site at the status date, not yet used. */
public record StockLot(String material, int packs, LocalDate arrivedOn) {
    public StockLot {
        Require.notNegative(packs, "packs", "stock of", material);
    }
}
