package org.firmset.season.money;

import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.firmset.homestead.Supplier;
import org.firmset.measure.Cash;
import org.firmset.spend.LineKind;
import org.firmset.spend.Receipt;

/** What is on order: packs that need not be bought and fees that need not be paid again when the plan has them come. */
final class Orders {
    private final List<Receipt> orders;
    private final Map<String, Integer> packs = new HashMap<>();
    private final Map<String, Long> feeCents = new HashMap<>();

    Orders(List<Receipt> orders) {
        this.orders = orders;
        for (Receipt order : orders) {
            order.lines().forEach(line -> {
                if (line.isPacks() && line.material() != null) {
                    int count = line.quantity().setScale(0, RoundingMode.FLOOR).intValueExact();
                    packs.merge(line.material(), count, Integer::sum);
                } else if (line.kind() == LineKind.FEE) {
                    feeCents.merge(name(order.supplier()), Cash.cents(line.amount()), Long::sum);
                }
            });
        }
    }

    List<Receipt> all() {
        return orders;
    }

    /** Takes packs of what is on order: as many of the wanted ones as there are. */
    int take(String material, int wanted) {
        int taken = Math.min(wanted, packs.getOrDefault(material, 0));
        packs.merge(material, -taken, Integer::sum);
        return taken;
    }

    /** Takes a fee of a delivery out of the orders of its supplier; what is left is still to be paid, in cents. */
    long feeLeft(Supplier supplier, long fee) {
        String name = name(supplier.name());
        long taken = Math.min(fee, Math.max(0, feeCents.getOrDefault(name, 0L)));
        feeCents.merge(name, -taken, Long::sum);
        return fee - taken;
    }

    private static String name(String supplier) {
        return supplier.strip().toLowerCase(Locale.ROOT);
    }
}
