package org.firmset.spend;

import java.util.List;
import java.util.Optional;
import org.firmset.measure.Cash;
import org.firmset.spend.ReceiptCosts.Cost;
import org.javamoney.moneta.Money;

/**
 * What of some receipts a filter lets through, by the same sharing as the {@link Forecast}, so that each of its figures
 * is the sum of its receipts.
 *
 * @param heldBack refundable deposits, which are in no other sum
 */
public record Selected(Money spent, Money committed, Money heldBack) {
    public static Selected none(String currency) {
        Money zero = Cash.ofCents(0, currency);
        return new Selected(zero, zero, zero);
    }

    /** The part of a receipt the filter lets through; empty when it is none of it. */
    public static Optional<Selected> of(Receipt receipt, ReceiptFilter filter) {
        if (!filter.takes(receipt)) {
            return Optional.empty();
        }
        List<Cost> costs = ReceiptCosts.of(receipt);
        List<Money> paid = ReceiptCosts.paid(receipt, costs);
        Selected sum = none(receipt.currency());
        boolean any = false;
        for (int i = 0; i < costs.size(); i++) {
            if (filter.takes(costs.get(i))) {
                sum = sum.plus(costs.get(i), paid.get(i));
                any = true;
            }
        }
        return any ? Optional.of(sum) : Optional.empty();
    }

    private Selected plus(Cost cost, Money paid) {
        return cost.kind() == LineKind.DEPOSIT
                ? new Selected(spent, committed, heldBack.add(paid))
                : new Selected(spent.add(paid), committed.add(cost.amount().subtract(paid)), heldBack);
    }

    public Selected plus(Selected other) {
        return new Selected(spent.add(other.spent), committed.add(other.committed), heldBack.add(other.heldBack));
    }
}
