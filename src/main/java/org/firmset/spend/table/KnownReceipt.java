package org.firmset.spend.table;

import java.time.LocalDate;
import org.firmset.measure.Cash;
import org.firmset.spend.ContentHash;
import org.firmset.spend.Likeness;
import org.firmset.spend.Receipt;
import org.jspecify.annotations.Nullable;

/**
 * Of a receipt what tells whether another is the same: many thousands are held while a table is looked at.
 *
 * @param text what its first line calls it; for people only
 * @param sumCents what it comes to
 */
public record KnownReceipt(
        String key,
        LocalDate date,
        String supplier,
        String text,
        long sumCents,
        @Nullable ContentHash document) {
    public static KnownReceipt of(Receipt receipt) {
        return new KnownReceipt(
                receipt.key(),
                receipt.date(),
                receipt.supplier(),
                receipt.lines().getFirst().text(),
                Cash.cents(receipt.sum()),
                receipt.document());
    }

    Likeness likeness() {
        return new Likeness(date, supplier, sumCents);
    }
}
