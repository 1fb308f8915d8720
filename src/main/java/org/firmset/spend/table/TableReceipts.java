package org.firmset.spend.table;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.firmset.homestead.file.Fault;
import org.firmset.spend.Receipt;

/**
 * The receipts of a table, each made again from its rows whenever it is asked for: thousands are gone through a few times
 * and need not be kept.
 */
final class TableReceipts extends AbstractList<Receipt> {
    private final String currency;
    private final Function<List<Fault>, RowReader> readers;
    private final List<Group> groups = new ArrayList<>();

    /** @param readers makes a reader that tells its faults to a list */
    TableReceipts(String currency, Function<List<Fault>, RowReader> readers) {
        this.currency = currency;
        this.readers = readers;
    }

    /** Rows with the same receipt number. */
    record Group(String key, List<SpendTable.Row> rows) {
        long line() {
            return rows.getFirst().line();
        }
    }

    /**
     * Adds the receipt of these rows, unless they have no date.
     *
     * @param faults where it is told that rows do not fit together
     */
    Optional<Receipt> add(Group group, List<Fault> faults) {
        Optional<Receipt> receipt = receipt(group, faults);
        receipt.ifPresent(r -> groups.add(group));
        return receipt;
    }

    private Optional<Receipt> receipt(Group group, List<Fault> faults) {
        // what is wrong in a row was told when it was first read
        RowReader reader = readers.apply(new ArrayList<>());
        List<RowReader.Line> lines = group.rows().stream().map(reader::read).toList();
        return lines.getFirst().date().map(date -> new Grouping(currency, faults).receipt(group.key(), date, lines));
    }

    @Override
    public Receipt get(int index) {
        return receipt(groups.get(index), new ArrayList<>()).orElseThrow();
    }

    @Override
    public int size() {
        return groups.size();
    }
}
