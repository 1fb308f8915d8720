package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.List;
import org.firmset.homestead.DeliveryTerms;
import org.firmset.measure.Mass;
import org.jspecify.annotations.Nullable;

@Embeddable
record DeliveryColumns(
        @Column(name = "delivery_fee") BigDecimal fee,
        @Column(name = "delivery_largest_mass_kg") Mass largestMass,
        @Column(name = "delivery_lead_days") int leadDays) {

    static @Nullable DeliveryColumns of(@Nullable DeliveryTerms terms, HomesteadRow homestead) {
        return terms == null
                ? null
                : new DeliveryColumns(homestead.amount(terms.fee()), terms.largestMass(), terms.leadDays());
    }

    DeliveryTerms toRecord(HomesteadRow homestead, List<DayOfWeek> weekdays) {
        return new DeliveryTerms(homestead.money(fee), largestMass, leadDays, weekdays);
    }
}
