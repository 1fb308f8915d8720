package org.firmset.season.money;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.firmset.plan.Run;
import org.firmset.spend.Forecast;
import org.firmset.spend.Receipt;
import org.javamoney.moneta.Money;

/** When the rests of orders are to be paid. */
final class OrdersAhead {
    private final Books books;
    private final Ledger ledger;

    OrdersAhead(Books books, Ledger ledger) {
        this.books = books;
        this.ledger = ledger;
    }

    /** @param brought what the plan's runs bring; empty without a plan */
    void write(List<Receipt> orders, List<Brought> brought, List<MadeTrip> made) {
        LocalDate next = made.isEmpty() ? books.today() : made.getFirst().trip().firstDate();
        for (Receipt order : orders) {
            Money rest = restOf(order);
            if (!rest.isZero()) {
                LocalDate due = agreed(order).or(() -> comes(order, brought)).orElse(next);
                ledger.payments.add(new Payment(due, Purpose.REST_OF_ORDER, order.supplier(), rest));
            }
        }
    }

    /** The day that was agreed on; what should have been paid before today is due today. */
    private Optional<LocalDate> agreed(Receipt order) {
        return Optional.ofNullable(order.restOn()).map(day -> day.isBefore(books.today()) ? books.today() : day);
    }

    /** When the first of its packs comes. */
    private static Optional<LocalDate> comes(Receipt order, List<Brought> brought) {
        return brought.stream()
                .filter(b -> b.onOrder()
                        && order.lines().stream()
                                .anyMatch(l -> l.isPacks() && b.material().equals(l.material())))
                .map(Brought::run)
                .map(Run::date)
                .findFirst();
    }

    /** What is committed by an order, its refundable deposits left out as everywhere. */
    private static Money restOf(Receipt order) {
        return Forecast.of(order.currency(), List.of(order), List.of(), List.of())
                .whole()
                .committed();
    }
}
