package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import org.firmset.homestead.SpendingLimit;
import org.jspecify.annotations.Nullable;

@Embeddable
record SpendingColumns(
        @Column(name = "spending_limit_a_month") BigDecimal aMonth,
        @Column(name = "spending_limit_firm") boolean firm) {

    static @Nullable SpendingColumns of(@Nullable SpendingLimit limit, HomesteadRow homestead) {
        return limit == null ? null : new SpendingColumns(homestead.amount(limit.aMonth()), limit.firm());
    }

    SpendingLimit toRecord(HomesteadRow homestead) {
        return new SpendingLimit(homestead.money(aMonth), firm);
    }
}
