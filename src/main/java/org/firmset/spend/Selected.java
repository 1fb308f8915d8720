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
        return ofCents(0, 0, 0, currency);
    }

    /** The part of a receipt the filter lets through; empty when it is none of it. */
    public static Optional<Selected> of(Receipt receipt, ReceiptFilter filter) {
        if (!filter.takes(receipt)) {
            return Optional.empty();
        }
        List<Cost> costs = ReceiptCosts.of(receipt);
        List<Money> paid = ReceiptCosts.paid(receipt, costs);
        // whole cents: thousands of receipts are added up while somebody waits for the page
        long[] cents = new long[3];
        boolean any = false;
        for (int i = 0; i < costs.size(); i++) {
            Cost cost = costs.get(i);
            if (filter.takes(cost)) {
                any = true;
                long its = Cash.cents(paid.get(i));
                if (cost.kind() == LineKind.DEPOSIT) {
                    cents[2] += its;
                } else {
                    cents[0] += its;
                    cents[1] += Cash.cents(cost.amount()) - its;
                }
            }
        }
        return any ? Optional.of(ofCents(cents[0], cents[1], cents[2], receipt.currency())) : Optional.empty();
    }

    private static Selected ofCents(long spent, long committed, long heldBack, String currency) {
        return new Selected(
                Cash.ofCents(spent, currency), Cash.ofCents(committed, currency), Cash.ofCents(heldBack, currency));
    }

    public Selected plus(Selected other) {
        return new Selected(spent.add(other.spent), committed.add(other.committed), heldBack.add(other.heldBack));
    }
}
