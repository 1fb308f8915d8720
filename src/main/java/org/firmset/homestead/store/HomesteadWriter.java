package org.firmset.homestead.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Travel;

/** Brings the rows of one homestead in step with its record: rows whose key is still there are changed in place. */
final class HomesteadWriter {
    private final Rows rows;
    private final Named named = new Named();

    HomesteadWriter(Rows rows) {
        this.rows = rows;
    }

    void write(Homestead record) {
        List<Row<?>> gone = new ArrayList<>();
        Part.ALL.forEach(part -> gone.addAll(write(part, record)));
        write(record.travel());
        // the last part first: nothing may be removed while something still names it
        gone.reversed().forEach(rows.entities()::remove);
    }

    /** Gives back the rows that the record no longer has. */
    private <T, R extends Row<T>> Collection<R> write(Part<T, R> part, Homestead homestead) {
        Map<UUID, R> before = new HashMap<>();
        rows.of(part.type()).forEach(row -> before.put(row.id(), row));
        int position = 0;
        for (T record : part.records().apply(homestead)) {
            Slot slot = part.slot(rows.homestead(), record, position++);
            R row = before.remove(slot.id());
            if (row == null) {
                add(slot, part.maker().make(slot, record, named));
            } else {
                named.add(slot, row);
                row.moveTo(slot.position());
                row.become(record, named);
            }
        }
        return before.values();
    }

    private void add(Slot slot, Row<?> row) {
        named.add(slot, row);
        rows.entities().persist(row);
    }

    private void write(Travel record) {
        TravelRow travel = rows.travel();
        if (travel == null) {
            rows.entities().persist(new TravelRow(rows.homestead(), record, named));
        } else {
            travel.become(record, named);
        }
    }
}
