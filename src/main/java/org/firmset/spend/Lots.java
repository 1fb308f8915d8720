package org.firmset.spend;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;

/**
 * Stock of one material that carries what was paid for it: the oldest lot is used first (first in, first out), and what
 * is left over is worth what is left of its cost.
 *
 * @param lots oldest first
 */
public record Lots(String currency, List<Lot> lots) {
    public Lots {
        lots = lots.stream().sorted(Comparator.comparing(Lot::since)).toList();
    }

    /**
     * @param packs above zero
     * @param cost of all of them, tax included
     */
    public record Lot(LocalDate since, int packs, Money cost) {
        public Lot {
            if (packs <= 0) {
                throw new IllegalArgumentException("packs [" + packs + "] of a lot must be above zero");
            }
        }
    }

    /**
     * What using packs came to.
     *
     * @param cost of the packs that were there
     * @param missing packs that were asked for and are not there
     * @param left what stays
     */
    public record Use(Money cost, int missing, Lots left) {}

    public Lots plus(Lot lot) {
        List<Lot> more = new ArrayList<>(lots);
        more.add(lot);
        return new Lots(currency, more);
    }

    public int packs() {
        return lots.stream().mapToInt(Lot::packs).sum();
    }

    public Money value() {
        return lots.stream().map(Lot::cost).reduce(Cash.ofCents(0, currency), Money::add);
    }

    /** @param packs 0 or more */
    public Use use(int packs) {
        if (packs < 0) {
            throw new IllegalArgumentException("packs [" + packs + "] to use must not be negative");
        }
        int missing = packs;
        Money cost = Cash.ofCents(0, currency);
        List<Lot> left = new ArrayList<>();
        for (Lot lot : lots) {
            int taken = Math.min(missing, lot.packs());
            List<Money> parts = Allocation.split(
                    lot.cost(), List.of(BigDecimal.valueOf(taken), BigDecimal.valueOf(lot.packs() - taken)));
            cost = cost.add(parts.getFirst());
            missing -= taken;
            if (taken < lot.packs()) {
                left.add(new Lot(lot.since(), lot.packs() - taken, parts.getLast()));
            }
        }
        return new Use(cost, missing, new Lots(currency, left));
    }
}
