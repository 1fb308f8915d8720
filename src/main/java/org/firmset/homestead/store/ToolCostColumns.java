package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import org.firmset.homestead.ToolCost;
import org.javamoney.moneta.Money;
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
                        amount(cost.price(), homestead),
                        amount(cost.resale(), homestead),
                        amount(cost.upkeep(), homestead),
                        amount(cost.hireADay(), homestead),
                        amount(cost.fetching(), homestead));
    }

    private static @Nullable BigDecimal amount(@Nullable Money money, HomesteadRow homestead) {
        return money == null ? null : homestead.amount(money);
    }

    private static @Nullable Money money(@Nullable BigDecimal amount, HomesteadRow homestead) {
        return amount == null ? null : homestead.money(amount);
    }

    ToolCost toRecord(HomesteadRow homestead) {
        return new ToolCost(
                money(price, homestead),
                money(resale, homestead),
                money(upkeep, homestead),
                money(hireADay, homestead),
                money(fetching, homestead));
    }
}
