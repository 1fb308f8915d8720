package org.firmset.season.money;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.firmset.homestead.BudgetItem;
import org.firmset.homestead.BudgetKind;
import org.firmset.measure.Cash;
import org.firmset.season.result.SeasonReport;
import org.firmset.spend.Forecast;
import org.firmset.spend.LineKind;
import org.javamoney.moneta.Money;

/**
 * Permits and the like that are still to be paid: all they cost less what was spent or is on order under the same
 * subproject, stage and kind.
 */
final class ItemsAhead {
    private final Books books;
    private final Ledger ledger;

    ItemsAhead(Books books, Ledger ledger) {
        this.books = books;
        this.ledger = ledger;
    }

    /** @param spent what receipts tell */
    void write(Forecast spent, List<MadeTrip> made) {
        Map<Forecast.Of, Long> paid = new HashMap<>();
        for (BudgetItem item : books.homestead().budgetingOrPlain().items()) {
            Forecast.Of of = new Forecast.Of(item.subproject(), item.stage(), kind(item.kind()));
            long there = paid.computeIfAbsent(of, o -> cents(spent, o));
            long covered = Math.clamp(there, 0, Cash.cents(item.amount()));
            paid.put(of, there - covered);
            Money open = item.amount().subtract(books.cents(covered));
            if (!open.isZero()) {
                LocalDate on = due(item, made);
                Bearer bearer = new Bearer(item.subproject(), item.stage());
                ledger.coming.add(Coming.certain(
                        bearer, Purpose.ITEM, kind(item.kind()), item.name(), BigDecimal.ZERO, open, on));
                ledger.payments.add(new Payment(on, Purpose.ITEM, item.name(), open));
            }
        }
    }

    private static long cents(Forecast spent, Forecast.Of of) {
        Forecast.Row row = spent.sumOf(of::equals);
        return Cash.cents(row.spent().add(row.committed()));
    }

    static LineKind kind(BudgetKind kind) {
        return switch (kind) {
            case FEE -> LineKind.FEE;
            case TOOL -> LineKind.TOOL;
            case OTHER -> LineKind.OTHER;
        };
    }

    /** Its own date, the start of its stage or the next trip, but not before today. */
    private LocalDate due(BudgetItem item, List<MadeTrip> made) {
        LocalDate on = Optional.ofNullable(item.on())
                .or(() -> start(item))
                .or(() -> made.stream().map(t -> t.trip().firstDate()).findFirst())
                .orElse(books.today());
        return on.isBefore(books.today()) ? books.today() : on;
    }

    private Optional<LocalDate> start(BudgetItem item) {
        return item.stage() == null || books.season() == null
                ? Optional.empty()
                : Objects.requireNonNull(books.season())
                        .report()
                        .stage(item.stage())
                        .map(SeasonReport.StagePart::start);
    }
}
