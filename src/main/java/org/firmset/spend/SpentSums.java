package org.firmset.spend;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;

/**
 * Adds up what receipts came to, one after the other, so that none has to be kept. Whole cents: thousands are added up
 * while somebody waits for the page. Not thread-safe.
 */
public final class SpentSums {
    private final String currency;
    private final Map<Forecast.Of, Cents> rows = new LinkedHashMap<>();
    private long heldBack;

    public SpentSums(String currency) {
        this.currency = currency;
    }

    private record Cents(long spent, long committed) {
        Cents plus(Cents other) {
            return new Cents(spent + other.spent, committed + other.committed);
        }
    }

    /** @param apart of a receipt without faults */
    public void add(ReceiptCosts.Apart apart) {
        for (int i = 0; i < apart.costs().size(); i++) {
            ReceiptCosts.Cost cost = apart.costs().get(i);
            long paid = Cash.cents(apart.paid().get(i));
            if (cost.kind() == LineKind.DEPOSIT) {
                heldBack += paid;
            } else {
                rows.merge(
                        new Forecast.Of(cost.subproject(), cost.stage(), cost.kind()),
                        new Cents(paid, Cash.cents(cost.amount()) - paid),
                        Cents::plus);
            }
        }
    }

    /** What was spent and is on order so far; nothing is still to buy. */
    public Forecast forecast() {
        Money none = Cash.ofCents(0, currency);
        List<Forecast.Row> sums = new ArrayList<>();
        rows.forEach((of, cents) -> sums.add(new Forecast.Row(
                of,
                Cash.ofCents(cents.spent(), currency),
                Cash.ofCents(cents.committed(), currency),
                none,
                none,
                none)));
        return new Forecast(currency, sums, Cash.ofCents(heldBack, currency), List.of());
    }
}
