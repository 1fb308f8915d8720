package org.firmset.spend.table;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.firmset.homestead.file.Fault;
import org.firmset.measure.Cash;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptState;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * Rows with the same receipt number become one receipt. Date, supplier and state must agree; taxes and discounts of its
 * rows are added, of total, deposit, day of the rest and document the first that is written counts.
 */
record Grouping(String currency, List<Fault> faults) {
    Receipt receipt(String key, LocalDate date, List<RowReader.Line> lines) {
        RowReader.Line first = lines.getFirst();
        ReceiptState state =
                first.state().orElse(first.amount().isNegative() ? ReceiptState.RETURNED : ReceiptState.PAID);
        for (RowReader.Line line : lines.subList(1, lines.size())) {
            check(first, line);
        }
        return new Receipt(
                key,
                date,
                first.supplier(),
                state,
                lines.stream().map(RowReader.Line::what).toList(),
                signed(sum(lines, RowReader.Line::tax), state),
                signed(sum(lines, RowReader.Line::discount), state),
                first(lines, RowReader.Line::deposit).orElse(Cash.ofCents(0, currency)),
                first(lines, RowReader.Line::restOn).orElse(null),
                signedOrNull(first(lines, RowReader.Line::total), state),
                first(lines, RowReader.Line::document).orElse(null));
    }

    private void check(RowReader.Line first, RowReader.Line line) {
        boolean alike = line.date().equals(first.date())
                && line.supplier().equals(first.supplier())
                && line.state().equals(first.state());
        if (!alike && faults.size() < Fault.MOST) {
            faults.add(new Fault(
                    "line " + line.line(),
                    line.receipt(),
                    "is the receipt of line " + first.line() + " with another date, supplier or state",
                    "Give it a number of its own, or leave the column of the numbers out"));
        }
    }

    private Money sum(List<RowReader.Line> lines, Function<RowReader.Line, Optional<Money>> part) {
        long cents = lines.stream()
                .flatMap(l -> part.apply(l).stream())
                .mapToLong(Cash::cents)
                .sum();
        return Cash.ofCents(cents, currency);
    }

    private static <T> Optional<T> first(List<RowReader.Line> lines, Function<RowReader.Line, Optional<T>> part) {
        return lines.stream().flatMap(l -> part.apply(l).stream()).findFirst();
    }

    private static Money signed(Money amount, ReceiptState state) {
        return state == ReceiptState.RETURNED ? amount.abs().negate() : amount;
    }

    private static @Nullable Money signedOrNull(Optional<Money> amount, ReceiptState state) {
        return amount.map(m -> signed(m, state)).orElse(null);
    }
}
