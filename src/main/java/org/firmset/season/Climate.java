package org.firmset.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.firmset.homestead.MonthNormal;
import org.firmset.trade.climate.MonthlyValues;

/** The usual weather of the homestead's place on any date. */
record Climate(MonthlyValues high, MonthlyValues low, MonthlyValues sunHours) {

    static Optional<Climate> of(List<MonthNormal> normals) {
        return normals.isEmpty()
                ? Optional.empty()
                : Optional.of(new Climate(
                        values(normals, n -> n.meanHigh().value().doubleValue()),
                        values(normals, n -> n.meanLow().value().doubleValue()),
                        values(normals, n -> n.sunHours().doubleValue())));
    }

    private static MonthlyValues values(List<MonthNormal> normals, Function<MonthNormal, Double> part) {
        return new MonthlyValues(normals.stream().map(part).toList());
    }

    double meanOn(LocalDate date) {
        return (high.on(date) + low.on(date)) / 2;
    }
}
