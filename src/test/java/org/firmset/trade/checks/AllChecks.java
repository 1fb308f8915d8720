package org.firmset.trade.checks;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The rows of every room, in the order of their ids. */
final class AllChecks {
    private AllChecks() {}

    static List<Row> rows() {
        return Stream.of(
                        TakeoffChecks.rows(),
                        CureChecks.rows(),
                        WaterChecks.rows(),
                        KitChecks.rows(),
                        WeatherChecks.rows(),
                        PlanChecks.rows())
                .flatMap(List::stream)
                .sorted(Comparator.comparing(Row::id))
                .toList();
    }
}
