package org.firmset.season.money;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.firmset.spend.Baseline;
import org.firmset.spend.Difference;
import org.firmset.spend.LineKind;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * Why what is expected now differs from a kept budget, for each thing of each stage; all of them add up to the whole
 * difference to the cent. Packs and drives are counted; of anything else there is one, so its change counts as price.
 */
public record BudgetDifference(Thing thing, Difference difference) {
    /** What is the same in both budgets. @param material null for anything but a material */
    public record Thing(
            @Nullable String subproject,
            @Nullable String stage,
            LineKind kind,
            @Nullable String material) {}

    /** The largest first; what did not change is left out. */
    public static List<BudgetDifference> of(Baseline kept, Baseline now) {
        Map<String, Thing> things = new LinkedHashMap<>();
        List<Difference.Told> told = Difference.told(now.currency(), items(kept, things), items(now, things));
        return told.stream()
                .map(t -> new BudgetDifference(things.getOrDefault(t.key(), NONE), t.difference()))
                .sorted((a, b) ->
                        b.difference.sum().abs().compareTo(a.difference.sum().abs()))
                .toList();
    }

    private static final Thing NONE = new Thing(null, null, LineKind.OTHER, null);

    private static List<Difference.Item> items(Baseline budget, Map<String, Thing> things) {
        Map<Thing, Sum> sums = new LinkedHashMap<>();
        for (Baseline.Item item : budget.items()) {
            Thing thing = new Thing(item.subproject(), item.stage(), item.kind(), item.material());
            things.put(thing.toString(), thing);
            sums.merge(thing, new Sum(item.quantity(), item.amount()), Sum::plus);
        }
        List<Difference.Item> items = new ArrayList<>();
        sums.forEach((thing, sum) -> items.add(new Difference.Item(thing.toString(), sum.counted(), sum.amount())));
        return items;
    }

    private record Sum(BigDecimal quantity, Money amount) {
        Sum plus(Sum other) {
            return new Sum(quantity.add(other.quantity), amount.add(other.amount));
        }

        /** One of what is not counted; none when more went back than came. */
        BigDecimal counted() {
            return switch (quantity.signum()) {
                case 0 -> amount.isZero() ? BigDecimal.ZERO : BigDecimal.ONE;
                case 1 -> quantity;
                default -> BigDecimal.ZERO;
            };
        }
    }
}
