package org.firmset.season.money;

import java.math.BigDecimal;
import org.javamoney.moneta.Money;

/**
 * What receipts tell of one thing, refundable deposits left out.
 *
 * @param quantity packs or drives, on order or there; 0 for what is not counted
 * @param committed what is still to be paid of orders
 */
public record Bought(BigDecimal quantity, Money spent, Money committed) {
    Bought plus(Bought other) {
        return new Bought(quantity.add(other.quantity), spent.add(other.spent), committed.add(other.committed));
    }

    /** What went into today's budget. */
    public Money amount() {
        return spent.add(committed);
    }
}
