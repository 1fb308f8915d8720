package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.math.BigDecimal;
import java.util.List;
import org.firmset.homestead.BudgetItem;
import org.firmset.homestead.Budgeting;
import org.firmset.homestead.TripSharing;
import org.jspecify.annotations.Nullable;

@Embeddable
record BudgetingColumns(
        @Column(name = "budget_tax_percent") BigDecimal taxPercent,
        @Column(name = "budget_reserve_percent") BigDecimal reservePercent,
        @Column(name = "budget_paid_down_percent") BigDecimal paidDownPercent,

        @Column(name = "budget_trips_shared") @Enumerated(EnumType.STRING)
        TripSharing tripsShared) {

    static @Nullable BudgetingColumns of(@Nullable Budgeting budgeting) {
        return budgeting == null
                ? null
                : new BudgetingColumns(
                        budgeting.taxPercent(),
                        budgeting.reservePercent(),
                        budgeting.paidDownPercent(),
                        budgeting.tripsShared());
    }

    Budgeting toRecord(List<BudgetItem> items) {
        return new Budgeting(taxPercent, reservePercent, paidDownPercent, tripsShared, items);
    }
}
