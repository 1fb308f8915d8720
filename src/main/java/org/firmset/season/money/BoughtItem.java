package org.firmset.season.money;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.firmset.measure.Cash;
import org.firmset.measure.Measured;
import org.firmset.spend.LineKind;
import org.firmset.spend.ReceiptCosts;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * What was paid or is on order for one thing on one day, refundable deposits left out.
 *
 * @param quantity packs of a material, drives; 0 of what is not counted
 */
public record BoughtItem(Thing thing, BigDecimal quantity, Money amount) {
    /** @param material null for anything but a material */
    public record Thing(
            @Nullable String subproject,
            @Nullable String stage,
            LineKind kind,
            @Nullable String material,
            LocalDate on) {}

    /** Adds up receipts; whole cents, as there are thousands. */
    static final class Sums {
        private final Map<Thing, Sum> sums = new LinkedHashMap<>();

        private record Sum(BigDecimal quantity, long cents) {
            Sum plus(Sum other) {
                return new Sum(quantity.add(other.quantity), cents + other.cents);
            }
        }

        void add(ReceiptCosts.Apart apart) {
            long fuel = apart.costs().stream()
                    .filter(c -> c.kind() == LineKind.FUEL)
                    .mapToLong(c -> Cash.cents(c.amount()))
                    .sum();
            for (ReceiptCosts.Cost cost : apart.costs()) {
                if (cost.kind() != LineKind.DEPOSIT) {
                    Thing thing = new Thing(
                            cost.subproject(),
                            cost.stage(),
                            cost.kind(),
                            cost.kind() == LineKind.MATERIAL ? cost.material() : null,
                            apart.receipt().date());
                    long cents = Cash.cents(cost.amount());
                    sums.merge(thing, new Sum(Measured.normal(quantity(cost, cents, fuel)), cents), Sum::plus);
                }
            }
        }

        /** Packs of a material; a receipt with fuel counts as one drive; nothing else is counted. */
        private static BigDecimal quantity(ReceiptCosts.Cost cost, long cents, long fuel) {
            if (cost.kind() == LineKind.MATERIAL && cost.material() != null) {
                return cost.quantity();
            }
            return cost.kind() == LineKind.FUEL && fuel != 0
                    ? BigDecimal.valueOf(cents).divide(BigDecimal.valueOf(fuel), MathContext.DECIMAL32)
                    : BigDecimal.ZERO;
        }

        /** In the order in which they first came up. */
        List<BoughtItem> all(String currency) {
            List<BoughtItem> all = new ArrayList<>();
            sums.forEach((thing, sum) ->
                    all.add(new BoughtItem(thing, sum.quantity(), Cash.ofCents(sum.cents(), currency))));
            return all;
        }
    }
}
