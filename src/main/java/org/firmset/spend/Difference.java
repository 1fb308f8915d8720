package org.firmset.spend;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * Why a sum differs from the budget, told as price, quantity and change of scope, which add up to it exactly.
 *
 * <p>For something in both, with quantities q0, q1 and prices p0, p1: quantity is (q1 - q0) x p0, rounded to the cent,
 * and price is the rest, which is (p1 - p0) x q1. So the joint term (q1 - q0) x (p1 - p0) counts as price, as in the
 * usual price variance at actual quantity. Something in only one of the two is a change of scope; a change of the mix
 * between things shows as the quantities of each.
 */
public record Difference(Money price, Money quantity, Money scope) {
    /**
     * Something that was to be bought or was bought.
     *
     * @param key what makes it the same in both, such as stage and material
     * @param quantity packs, 0 or more
     * @param amount for all of it
     */
    public record Item(String key, BigDecimal quantity, Money amount) {
        public Item {
            if (quantity.signum() < 0) {
                throw new IllegalArgumentException("quantity [" + quantity + "] of [" + key + "] must not be negative");
            }
        }
    }

    /** Of one key, and why. */
    public record Told(String key, Difference difference) {}

    public Money sum() {
        return price.add(quantity).add(scope);
    }

    public Difference plus(Difference other) {
        return new Difference(price.add(other.price), quantity.add(other.quantity), scope.add(other.scope));
    }

    private static Difference none(String currency) {
        Money zero = Cash.ofCents(0, currency);
        return new Difference(zero, zero, zero);
    }

    /** Item by item, those of the budget first; items that did not change are left out. */
    public static List<Told> told(String currency, List<Item> budget, List<Item> now) {
        Map<String, Item> before = byKey(budget);
        Map<String, Item> after = byKey(now);
        List<Told> told = new ArrayList<>();
        before.forEach((key, item) -> told.add(new Told(key, of(currency, item, after.get(key)))));
        after.forEach((key, item) -> {
            if (!before.containsKey(key)) {
                told.add(new Told(key, of(currency, null, item)));
            }
        });
        told.removeIf(t -> t.difference().equals(none(currency)));
        return told;
    }

    /** All of it. */
    public static Difference between(String currency, List<Item> budget, List<Item> now) {
        return told(currency, budget, now).stream().map(Told::difference).reduce(none(currency), Difference::plus);
    }

    private static Map<String, Item> byKey(List<Item> items) {
        Map<String, Item> map = new LinkedHashMap<>();
        for (Item item : items) {
            map.merge(
                    item.key(),
                    item,
                    (a, b) -> new Item(
                            a.key(), a.quantity().add(b.quantity()), a.amount().add(b.amount())));
        }
        return map;
    }

    private static Difference of(String currency, @Nullable Item budget, @Nullable Item now) {
        Difference none = none(currency);
        if (budget == null || budget.quantity().signum() == 0) {
            Money before = budget == null ? none.scope() : budget.amount();
            Money after = now == null ? none.scope() : now.amount();
            return new Difference(none.price(), none.quantity(), after.subtract(before));
        }
        if (now == null || now.quantity().signum() == 0) {
            Money after = now == null ? none.scope() : now.amount();
            return new Difference(none.price(), none.quantity(), after.subtract(budget.amount()));
        }
        BigDecimal more = now.quantity().subtract(budget.quantity());
        Money quantity = Cash.of(
                Cash.amountOf(budget.amount()).multiply(more).divide(budget.quantity(), 2, RoundingMode.HALF_EVEN),
                currency);
        Money price = now.amount().subtract(budget.amount()).subtract(quantity);
        return new Difference(price, quantity, none.scope());
    }
}
