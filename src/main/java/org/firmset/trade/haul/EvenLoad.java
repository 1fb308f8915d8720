package org.firmset.trade.haul;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Limits for planning, before anybody knows where each pack will lie: cargo of a bed taken evenly over its length, of a
 * deck so that the trailer's usual percent of it rests on the tongue. What is left after people, kit and an empty trailer
 * is rounded down, shares are rounded up, and a bay that lightens a limit does not count.
 */
public final class EvenLoad {
    /** A tonne to try with: shares come out exact to a millionth. */
    private static final double TRIAL = 1_000_000;

    private static final double HAIR = 1e-6;
    private static final Balance.Heap NOTHING = new Balance.Heap(0, 0, 0, 0, 0);

    private EvenLoad() {}

    /**
     * What the bays may put on one limit.
     *
     * @param name of the limit that is returned
     * @return empty when the outfit has no such limit, or no bay weighs on it
     */
    public static Optional<MassLimit> limit(Outfit outfit, LimitKind kind, String name) {
        Balance balance = new Balance(outfit);
        if (!balance.kinds().contains(kind)) {
            return Optional.empty();
        }
        double before = balance.on(kind, NOTHING, balance.tongue(NOTHING));
        Map<String, Integer> shares = new HashMap<>();
        for (Bay bay : outfit.bays()) {
            Balance.Heap heap = trial(outfit, bay);
            double more = balance.on(kind, heap, balance.tongue(heap)) - before;
            int permille = (int) Math.ceil(more * 1000 / TRIAL - HAIR);
            if (permille > 0) {
                shares.put(bay.id(), permille);
            }
        }
        long left = Math.max(0, (long) Math.floor(balance.rating(kind) - before + HAIR));
        return shares.isEmpty() ? Optional.empty() : Optional.of(new MassLimit(name, left, shares));
    }

    private static Balance.Heap trial(Outfit outfit, Bay bay) {
        HaulTrailer trailer = outfit.trailer();
        if (bay.equals(outfit.vehicle().bay())) {
            return new Balance.Heap(TRIAL, TRIAL * outfit.lengthOf(bay) / 2.0, 0, 0, 0);
        }
        if (trailer == null || !bay.equals(trailer.bay())) {
            return new Balance.Heap(0, 0, TRIAL, 0, 0);
        }
        TrailerDeck deck = trailer.deck();
        double middle = deck == null
                ? 0
                : deck.axleMillimetres() * (100 - trailer.tonguePercent()) / 100.0 - deck.frontMillimetres();
        return new Balance.Heap(0, 0, 0, TRIAL, TRIAL * middle);
    }
}
