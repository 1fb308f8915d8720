package org.firmset.plan.check;

import static java.time.temporal.ChronoUnit.DAYS;

import java.math.BigInteger;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import org.firmset.plan.Material;

/**
 * The packs of one material on site. Told of arrivals and uses in the order of their dates. The pack that goes off first
 * is used first: if any way of using the packs lasts, this way does. All packs of a material keep equally long, so the
 * first to go off is the first that came.
 */
final class Pile {
    private record Lot(LocalDate arrivedOn, long packs) {}

    private final Material material;
    private final Deque<Lot> good = new ArrayDeque<>();
    private long goneOff;

    Pile(Material material) {
        this.material = material;
    }

    void arrive(LocalDate date, long packs) {
        good.addLast(new Lot(date, packs));
    }

    /** Takes away as many good packs as there are, up to those wanted, and says how many. */
    long use(LocalDate date, long wanted) {
        putAsideGoneOff(date);
        long taken = 0;
        while (taken < wanted && !good.isEmpty()) {
            Lot oldest = good.removeFirst();
            long part = Math.min(oldest.packs(), wanted - taken);
            taken += part;
            if (part < oldest.packs()) {
                good.addFirst(new Lot(oldest.arrivedOn(), oldest.packs() - part));
            }
        }
        return taken;
    }

    private void putAsideGoneOff(LocalDate date) {
        while (!good.isEmpty() && hasGoneOff(good.getFirst(), date)) {
            goneOff += good.removeFirst().packs();
        }
    }

    private boolean hasGoneOff(Lot lot, LocalDate date) {
        return material.shelfLifeDays() != Material.NEVER_GOES_OFF
                && DAYS.between(lot.arrivedOn(), date) > material.shelfLifeDays();
    }

    /** Packs that are on site but were found to have gone off when some were last wanted. */
    long goneOff() {
        return goneOff;
    }

    /** The room that all packs on site take, those that have gone off among them. */
    BigInteger millilitres() {
        long packs = goneOff + good.stream().mapToLong(Lot::packs).sum();
        return BigInteger.valueOf(material.millilitres()).multiply(BigInteger.valueOf(packs));
    }
}
