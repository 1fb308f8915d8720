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
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptCosts;

/**
 * What receipts tell of one thing and one day, refundable deposits left out. The rest of an order is of the day it was paid
 * or is due, with no quantity of its own; one without such a day is of the day of the order.
 */
public record PurchasedItem(Thing thing, LocalDate on, Bought bought) {
    /** Adds up receipts; whole cents, as there are thousands. */
    static final class Sums {
        private final Map<Of, Sum> sums = new LinkedHashMap<>();

        private record Of(Thing thing, LocalDate on) {}

        private record Sum(BigDecimal quantity, long spent, long committed) {
            Sum plus(Sum other) {
                return new Sum(quantity.add(other.quantity), spent + other.spent, committed + other.committed);
            }
        }

        void add(ReceiptCosts.Apart apart) {
            long fuel = apart.costs().stream()
                    .filter(c -> c.kind() == LineKind.FUEL)
                    .mapToLong(c -> Cash.cents(c.amount()))
                    .sum();
            for (int i = 0; i < apart.costs().size(); i++) {
                ReceiptCosts.Cost cost = apart.costs().get(i);
                if (cost.kind() != LineKind.DEPOSIT) {
                    long all = Cash.cents(cost.amount());
                    long paid = Cash.cents(apart.paid().get(i));
                    long later = paid - Cash.cents(apart.atOnce().get(i));
                    add(
                            Thing.of(cost),
                            apart.receipt(),
                            new Sum(Measured.normal(quantity(cost, all, fuel)), paid - later, 0),
                            new Sum(BigDecimal.ZERO, later, all - paid));
                }
            }
        }

        private void add(Thing thing, Receipt receipt, Sum atOnce, Sum rest) {
            LocalDate restOn = receipt.restOn() == null ? receipt.date() : receipt.restOn();
            sums.merge(new Of(thing, receipt.date()), atOnce, Sum::plus);
            if (rest.spent() != 0 || rest.committed() != 0) {
                sums.merge(new Of(thing, restOn), rest, Sum::plus);
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
        List<PurchasedItem> all(String currency) {
            List<PurchasedItem> all = new ArrayList<>();
            sums.forEach((of, sum) -> all.add(new PurchasedItem(
                    of.thing(),
                    of.on(),
                    new Bought(
                            sum.quantity(),
                            Cash.ofCents(sum.spent(), currency),
                            Cash.ofCents(sum.committed(), currency)))));
            return all;
        }
    }
}
