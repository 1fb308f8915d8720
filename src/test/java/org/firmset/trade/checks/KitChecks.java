package org.firmset.trade.checks;

import java.util.ArrayList;
import java.util.List;

/** What vehicles carry and panels give. */
final class KitChecks {
    private KitChecks() {}

    static List<Row> rows() {
        List<Row> rows = new ArrayList<>(HaulChecks.rows());
        rows.addAll(PowerChecks.rows());
        return rows;
    }
}
