package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import org.firmset.homestead.ToolCost;
import org.jspecify.annotations.Nullable;

/** Never empty as a whole: the rules want a price or a hire. */
@Embeddable
record ToolCostColumns(
        @Column(name = "cost_price") @Nullable BigDecimal price,
        @Column(name = "cost_resale") @Nullable BigDecimal resale,
        @Column(name = "cost_upkeep") @Nullable BigDecimal upkeep,
        @Column(name = "cost_hire_a_day") @Nullable BigDecimal hireADay,
        @Column(name = "cost_fetching") @Nullable BigDecimal fetching) {

    static @Nullable ToolCostColumns of(@Nullable ToolCost cost, HomesteadRow homestead) {
        return cost == null
                ? null
                : new ToolCostColumns(
                        homestead.amountOrNull(cost.price()),
                        homestead.amountOrNull(cost.resale()),
                        homestead.amountOrNull(cost.upkeep()),
                        homestead.amountOrNull(cost.hireADay()),
                        homestead.amountOrNull(cost.fetching()));
    }

    ToolCost toRecord(HomesteadRow homestead) {
        return new ToolCost(
                homestead.moneyOrNull(price),
                homestead.moneyOrNull(resale),
                homestead.moneyOrNull(upkeep),
                homestead.moneyOrNull(hireADay),
                homestead.moneyOrNull(fetching));
    }
}
