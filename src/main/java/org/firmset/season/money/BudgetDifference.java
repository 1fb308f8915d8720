package org.firmset.season.money;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.firmset.measure.Cash;
import org.firmset.spend.Baseline;
import org.firmset.spend.Difference;
import org.javamoney.moneta.Money;

/**
 * Why what is expected now differs from a kept budget, for each thing of each stage; all of them add up to the whole
 * difference to the cent. Packs and drives are counted; of anything else there is one, so its change counts as price.
 *
 * @param kept what the thing was to cost
 * @param now what it is expected to cost
 */
public record BudgetDifference(Thing thing, Difference difference, Side kept, Side now) {
    /** One thing in one of the two budgets. @param quantity 0 for what is not counted */
    public record Side(BigDecimal quantity, Money amount) {
        Side plus(Side other) {
            return new Side(quantity.add(other.quantity), amount.add(other.amount));
        }

        /** One of what is not counted; none when more went back than came. */
        public BigDecimal counted() {
            return switch (quantity.signum()) {
                case 0 -> amount.isZero() ? BigDecimal.ZERO : BigDecimal.ONE;
                case 1 -> quantity;
                default -> BigDecimal.ZERO;
            };
        }
    }

    /** The largest first; what did not change is left out. */
    public static List<BudgetDifference> of(Baseline kept, Baseline now) {
        Map<Thing, Side> before = sides(kept);
        Map<Thing, Side> after = sides(now);
        Map<String, Thing> things = new LinkedHashMap<>();
        before.keySet().forEach(t -> things.put(t.toString(), t));
        after.keySet().forEach(t -> things.put(t.toString(), t));
        Side nothing = new Side(BigDecimal.ZERO, Cash.ofCents(0, now.currency()));
        List<BudgetDifference> all = new ArrayList<>();
        for (Difference.Told told : Difference.told(now.currency(), items(before), items(after))) {
            Thing thing = Objects.requireNonNull(things.get(told.key()));
            all.add(new BudgetDifference(
                    thing, told.difference(), before.getOrDefault(thing, nothing), after.getOrDefault(thing, nothing)));
        }
        all.sort((a, b) -> b.difference.sum().abs().compareTo(a.difference.sum().abs()));
        return List.copyOf(all);
    }

    private static Map<Thing, Side> sides(Baseline budget) {
        Map<Thing, Side> sides = new LinkedHashMap<>();
        budget.items().forEach(i -> sides.merge(Thing.of(i), new Side(i.quantity(), i.amount()), Side::plus));
        return sides;
    }

    private static List<Difference.Item> items(Map<Thing, Side> sides) {
        return sides.entrySet().stream()
                .map(e -> new Difference.Item(
                        e.getKey().toString(),
                        e.getValue().counted(),
                        e.getValue().amount()))
                .toList();
    }
}
