package org.firmset.season.load;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import org.firmset.plan.Material;

/**
 * The good packs of one material on site. Told of what happens by date, ascending; the oldest packs are used first, and what
 * is past its shelf life is no longer here.
 */
final class Pile {
    private final Material material;
    private final Deque<Lot> lots = new ArrayDeque<>();

    /** @param marked whether these packs are of those whose use is to be known */
    private record Lot(LocalDate arrived, int packs, boolean marked) {}

    /** @param marked how many of the packs were marked */
    record Taken(int packs, int marked) {}

    Pile(Material material) {
        this.material = material;
    }

    /** Of a date to come too: those packs are not there before it. */
    void arrive(LocalDate date, int packs, boolean marked) {
        if (packs > 0) {
            Deque<Lot> later = new ArrayDeque<>();
            while (!lots.isEmpty() && lots.getLast().arrived().isAfter(date)) {
                later.addFirst(lots.removeLast());
            }
            lots.addLast(new Lot(date, packs, marked));
            lots.addAll(later);
        }
    }

    /** Good packs on a date. */
    int good(LocalDate date) {
        takeGoneOff(date);
        return lots.stream()
                .filter(l -> !l.arrived().isAfter(date))
                .mapToInt(Lot::packs)
                .sum();
    }

    /** Takes away what has gone off by a date, and says how many packs that were. */
    int takeGoneOff(LocalDate date) {
        int packs = 0;
        while (!lots.isEmpty() && !material.goodOn(date, lots.getFirst().arrived())) {
            packs += lots.removeFirst().packs();
        }
        return packs;
    }

    /** As many good packs as there are, up to those wanted. */
    Taken use(LocalDate date, int wanted) {
        takeGoneOff(date);
        int taken = 0;
        int marked = 0;
        while (taken < wanted && !lots.isEmpty() && !lots.getFirst().arrived().isAfter(date)) {
            Lot oldest = lots.removeFirst();
            int part = Math.min(oldest.packs(), wanted - taken);
            taken += part;
            marked += oldest.marked() ? part : 0;
            if (part < oldest.packs()) {
                lots.addFirst(new Lot(oldest.arrived(), oldest.packs() - part, oldest.marked()));
            }
        }
        return new Taken(taken, marked);
    }
}
