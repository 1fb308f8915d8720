package org.firmset.season.money;

import java.util.Optional;
import org.firmset.spend.HireOrBuy;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * A tool that is not there yet: to buy or to hire, over all trips of the plan that use it.
 *
 * @param trips how many use it
 * @param days on which it is used
 * @param buying price less resale, with upkeep; null when it is not to be bought
 * @param hiring every day's hire with fetching; null when it cannot be hired
 * @param buy whether buying was chosen
 * @param buyFrom from how many such trips on buying is cheaper; empty when that cannot be said
 */
public record ToolChoice(
        String key,
        String name,
        int trips,
        int days,
        @Nullable Money buying,
        @Nullable Money hiring,
        boolean buy,
        Optional<Integer> buyFrom) {

    /** What the choice costs. */
    public Money cost() {
        Money cost = buy ? buying : hiring;
        return java.util.Objects.requireNonNull(cost);
    }

    static ToolChoice of(String key, String name, HireOrBuy both, boolean mayBuy, boolean mayHire) {
        return new ToolChoice(
                key,
                name,
                both.uses().size(),
                both.days(),
                mayBuy ? both.buying() : null,
                mayHire ? both.hiring() : null,
                mayBuy && (!mayHire || both.buy()),
                mayBuy && mayHire ? both.buyFromUses() : Optional.empty());
    }
}
