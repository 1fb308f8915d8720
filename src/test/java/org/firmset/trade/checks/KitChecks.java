package org.firmset.trade.checks;

import java.util.ArrayList;
import java.util.List;
import org.firmset.trade.power.Sun;

/** What vehicles carry and panels give. */
final class KitChecks {
    private KitChecks() {}

    static List<Row> rows() {
        List<Row> rows = new ArrayList<>(HaulChecks.rows());
        rows.add(Row.of(
                        "EN-05",
                        "Peak sun hours to energy, 8.1 kW in January",
                        "PVWatts v1 values for Fort Worth TX",
                        "verified: monthly values; energy by arithmetic")
                .value("nameplate, kWh", 1084.8, 0.5, () -> 31 * Sun.wattHours(8100, 4.32, 100) / 1000)
                .value("at 77 %, kWh", 835.3, 0.5, () -> 31 * Sun.wattHours(8100, 4.32, 77) / 1000));
        return rows;
    }
}
