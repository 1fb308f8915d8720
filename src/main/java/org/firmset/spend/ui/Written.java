package org.firmset.spend.ui;

import java.time.YearMonth;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;

/**
 * What stands on receipts that can be asked for, each once.
 *
 * @param suppliers capitals do not count
 * @param months in which anything was bought, ordered or paid, the latest first
 * @param materials keys
 */
record Written(
        NavigableSet<String> suppliers,
        NavigableSet<YearMonth> months,
        Set<Bearers.Bearer> bearers,
        Set<String> materials) {
    Written() {
        this(
                new TreeSet<>(String.CASE_INSENSITIVE_ORDER),
                new TreeSet<>(Comparator.reverseOrder()),
                new LinkedHashSet<>(),
                new LinkedHashSet<>());
    }

    void add(Receipt receipt) {
        suppliers.add(receipt.supplier());
        months.add(YearMonth.from(receipt.date()));
        receipt.restPaidOn().map(YearMonth::from).ifPresent(months::add);
        for (ReceiptLine line : receipt.lines()) {
            line.shares().forEach(s -> bearers.add(Bearers.Bearer.of(s)));
            Optional.ofNullable(line.material()).ifPresent(materials::add);
        }
    }
}
