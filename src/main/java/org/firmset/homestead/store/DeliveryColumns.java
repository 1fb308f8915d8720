package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.List;
import org.firmset.homestead.DeliveryTerms;
import org.firmset.measure.Hours;
import org.firmset.measure.Mass;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

@Embeddable
record DeliveryColumns(
        @Column(name = "delivery_fee") BigDecimal fee,
        @Column(name = "delivery_largest_mass_kg") Mass largestMass,
        @Column(name = "delivery_lead_days") int leadDays,
        @Column(name = "delivery_least_order") @Nullable BigDecimal leastOrder,
        @Column(name = "delivery_small_order_fee") @Nullable BigDecimal smallOrderFee,

        @Column(name = "delivery_truck_empty_mass_kg") @Nullable
        Mass truckEmptyMass,

        @Column(name = "delivery_attended") boolean attended,

        @Column(name = "delivery_place_within_quarter_hours") @Nullable
        Hours placeWithin) {

    static @Nullable DeliveryColumns of(@Nullable DeliveryTerms terms, HomesteadRow homestead) {
        return terms == null
                ? null
                : new DeliveryColumns(
                        homestead.amount(terms.fee()),
                        terms.largestMass(),
                        terms.leadDays(),
                        amount(terms.leastOrder(), homestead),
                        amount(terms.smallOrderFee(), homestead),
                        terms.truckEmptyMass(),
                        terms.attended(),
                        terms.placeWithin());
    }

    private static @Nullable BigDecimal amount(@Nullable Money money, HomesteadRow homestead) {
        return money == null ? null : homestead.amount(money);
    }

    DeliveryTerms toRecord(HomesteadRow homestead, List<DayOfWeek> weekdays) {
        return new DeliveryTerms(
                homestead.money(fee),
                largestMass,
                leadDays,
                weekdays,
                leastOrder == null ? null : homestead.money(leastOrder),
                smallOrderFee == null ? null : homestead.money(smallOrderFee),
                truckEmptyMass,
                attended,
                placeWithin);
    }
}
