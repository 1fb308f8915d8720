package org.firmset.spend;

import java.time.LocalDate;
import java.util.Locale;
import java.util.regex.Pattern;
import org.firmset.measure.Cash;

/**
 * What makes two receipts look alike: day, supplier and sum. Two bags bought twice on one day look alike too, so people
 * decide whether they are the same.
 *
 * @param supplier kept in small letters with single blanks, as people type names in several ways
 * @param sumCents what it comes to; negative for what went back
 */
public record Likeness(LocalDate date, String supplier, long sumCents) {
    private static final Pattern SPACES = Pattern.compile("\\s+");

    public Likeness {
        supplier = SPACES.matcher(supplier.strip().toLowerCase(Locale.ROOT)).replaceAll(" ");
    }

    public static Likeness of(Receipt receipt) {
        return new Likeness(receipt.date(), receipt.supplier(), Cash.cents(receipt.sum()));
    }
}
