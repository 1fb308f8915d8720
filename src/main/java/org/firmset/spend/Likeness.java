package org.firmset.spend;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;

/**
 * What makes two receipts look alike: day, supplier and sum. Two bags bought twice on one day look alike too, so people
 * decide whether they are the same.
 *
 * @param supplier in small letters with single blanks, as people type names in several ways
 */
public record Likeness(LocalDate date, String supplier, BigDecimal sum) {
    public static Likeness of(Receipt receipt) {
        return of(receipt.date(), receipt.supplier(), receipt.sum());
    }

    /** @param sum negative for what went back */
    public static Likeness of(LocalDate date, String supplier, Money sum) {
        String name = supplier.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        return new Likeness(date, name, Cash.amountOf(sum));
    }
}
