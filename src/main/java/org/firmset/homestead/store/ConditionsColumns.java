package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import org.firmset.homestead.Conditions;
import org.firmset.measure.Speed;
import org.firmset.measure.Temperature;
import org.jspecify.annotations.Nullable;

@Embeddable
record ConditionsColumns(
        @Column(name = "coldest_night_degc") @Nullable Temperature coldestNight,
        @Column(name = "hottest_day_degc") @Nullable Temperature hottestDay,
        @Column(name = "dry_day") boolean dryDay,
        @Column(name = "coldest_day_degc") @Nullable Temperature coldestDay,
        @Column(name = "most_wind_m_s") @Nullable Speed mostWind,
        @Column(name = "unfrozen_ground") boolean unfrozenGround,
        @Column(name = "least_odds_percent") @Nullable Integer leastOdds) {

    static @Nullable ConditionsColumns of(@Nullable Conditions conditions) {
        return conditions == null
                ? null
                : new ConditionsColumns(
                        conditions.coldestNight(),
                        conditions.hottestDay(),
                        conditions.dryDay(),
                        conditions.coldestDay(),
                        conditions.mostWind(),
                        conditions.unfrozenGround(),
                        conditions.leastOdds());
    }

    Conditions toRecord() {
        return new Conditions(coldestNight, hottestDay, dryDay, coldestDay, mostWind, unfrozenGround, leastOdds);
    }
}
