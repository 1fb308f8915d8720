package org.firmset.spend;

import java.time.LocalDate;
import java.util.List;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * A purchase, an order or a return as its paper tells it. Valid when {@link ReceiptRules} finds no fault.
 *
 * @param key its own for good, also when it comes back in a table
 * @param supplier who sold it, as written
 * @param tax on top of the lines, after the discount; negative in a return
 * @param discount taken off the lines; negative in a return
 * @param deposit what has been paid down on an order; zero otherwise
 * @param total what was to be paid in all, as printed; null when it was not written down
 * @param document content hash of the photo or scan; null when there is none
 */
public record Receipt(
        String key,
        LocalDate date,
        String supplier,
        ReceiptState state,
        List<ReceiptLine> lines,
        Money tax,
        Money discount,
        Money deposit,
        @Nullable Money total,
        @Nullable ContentHash document) {
    public Receipt {
        key = key.strip();
        supplier = supplier.strip();
        lines = List.copyOf(lines);
    }

    /** The same under another key. */
    public Receipt withKey(String other) {
        return new Receipt(other, date, supplier, state, lines, tax, discount, deposit, total, document);
    }

    public Receipt withDate(LocalDate other) {
        return new Receipt(key, other, supplier, state, lines, tax, discount, deposit, total, document);
    }

    public String currency() {
        return tax.getCurrency().getCurrencyCode();
    }

    /** Lines less discount plus tax: what the parts come to, whatever is printed. */
    public Money sum() {
        long lineCents = lines.stream().mapToLong(l -> Cash.cents(l.amount())).sum();
        return Cash.ofCents(lineCents - Cash.cents(discount) + Cash.cents(tax), currency());
    }

    /** What has left the purse: all of it, or of an order what was paid down. */
    public Money paid() {
        return state == ReceiptState.ORDERED ? deposit : sum();
    }

    /** What still has to be paid for an order; zero otherwise. */
    public Money committed() {
        return sum().subtract(paid());
    }
}
