package org.firmset.spend;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
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
 * @param date the day it was bought or ordered on; what was not paid later left the purse then
 * @param deposit what was paid down on an order on its date, also when its rest is paid by now; zero otherwise
 * @param restOn the day the rest of an order is due on or, when it is paid, was paid on; null when an order names none
 *     and when all was paid at once
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
        @Nullable LocalDate restOn,
        @Nullable Money total,
        @Nullable ContentHash document) {
    public Receipt {
        key = key.strip();
        supplier = supplier.strip();
        lines = List.copyOf(lines);
    }

    /** Without a day of its own for a rest. */
    public Receipt(
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
        this(key, date, supplier, state, lines, tax, discount, deposit, null, total, document);
    }

    /** The same under another key. */
    public Receipt withKey(String other) {
        return new Receipt(other, date, supplier, state, lines, tax, discount, deposit, restOn, total, document);
    }

    /** The same of another day; the day of its rest moves along. */
    public Receipt withDate(LocalDate other) {
        LocalDate rest = restOn == null ? null : restOn.plusDays(ChronoUnit.DAYS.between(date, other));
        return new Receipt(key, other, supplier, state, lines, tax, discount, deposit, rest, total, document);
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

    /** When a part of what is paid left the purse after its date; empty for an order and for what was paid at once. */
    public Optional<LocalDate> restPaidOn() {
        return Optional.ofNullable(restOn).filter(day -> state.isPaid() && day.isAfter(date));
    }

    /** What of {@link #paid} left the purse on its date. */
    public Money paidAtOnce() {
        return restPaidOn().isPresent() ? deposit : paid();
    }

    /** What still has to be paid for an order; zero otherwise. */
    public Money committed() {
        return sum().subtract(paid());
    }
}
