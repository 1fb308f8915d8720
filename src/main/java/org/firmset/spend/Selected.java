package org.firmset.spend;

import java.util.Optional;
import org.firmset.measure.Cash;
import org.firmset.spend.ReceiptCosts.Cost;
import org.javamoney.moneta.Money;

/**
 * What of some receipts a filter lets through, by the same sharing as the {@link Forecast}, so that each of its figures
 * is the sum of its receipts. Whole cents: one is kept for each of thousands of receipts, and they are added up while
 * somebody waits for the page.
 */
public record Selected(String currency, long spentCents, long committedCents, long heldBackCents) {
    public static Selected none(String currency) {
        return new Selected(currency, 0, 0, 0);
    }

    /** The part of a receipt the filter lets through; empty when it is none of it. */
    public static Optional<Selected> of(Receipt receipt, ReceiptFilter filter) {
        if (!filter.takes(receipt)) {
            return Optional.empty();
        }
        ReceiptCosts.Apart apart = ReceiptCosts.apart(receipt);
        Selected sum = none(receipt.currency());
        boolean any = false;
        for (int i = 0; i < apart.costs().size(); i++) {
            Cost cost = apart.costs().get(i);
            if (filter.takes(cost)) {
                any = true;
                sum = sum.plus(cost, Cash.cents(apart.paid().get(i)));
            }
        }
        return any ? Optional.of(sum) : Optional.empty();
    }

    private Selected plus(Cost cost, long paid) {
        return cost.kind() == LineKind.DEPOSIT
                ? new Selected(currency, spentCents, committedCents, heldBackCents + paid)
                : new Selected(
                        currency, spentCents + paid, committedCents + Cash.cents(cost.amount()) - paid, heldBackCents);
    }

    public Selected plus(Selected other) {
        return new Selected(
                currency,
                spentCents + other.spentCents,
                committedCents + other.committedCents,
                heldBackCents + other.heldBackCents);
    }

    public Money spent() {
        return Cash.ofCents(spentCents, currency);
    }

    public Money committed() {
        return Cash.ofCents(committedCents, currency);
    }

    /** Refundable deposits, which are in no other sum. */
    public Money heldBack() {
        return Cash.ofCents(heldBackCents, currency);
    }
}
