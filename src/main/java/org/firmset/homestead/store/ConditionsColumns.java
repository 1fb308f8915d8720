package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import org.firmset.homestead.Conditions;
import org.firmset.measure.Temperature;
import org.jspecify.annotations.Nullable;

@Embeddable
record ConditionsColumns(
        @Column(name = "coldest_night_degc") @Nullable Temperature coldestNight,
        @Column(name = "hottest_day_degc") @Nullable Temperature hottestDay,
        @Column(name = "dry_day") boolean dryDay) {

    static @Nullable ConditionsColumns of(@Nullable Conditions conditions) {
        return conditions == null
                ? null
                : new ConditionsColumns(conditions.coldestNight(), conditions.hottestDay(), conditions.dryDay());
    }

    Conditions toRecord() {
        return new Conditions(coldestNight, hottestDay, dryDay);
    }
}
