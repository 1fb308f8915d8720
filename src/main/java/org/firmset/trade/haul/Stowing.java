package org.firmset.trade.haul;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Finds the places of packs. Small loads are tried in full, zone by zone; bigger ones, and those that only fit across
 * borders, are laid pack by pack where they cost least, then moved and swapped as long as that helps, then shaken. Work is bounded by the number of arrangements
 * weighed, so that the same load always ends the same way.
 */
final class Stowing {
    private static final long TRIED_IN_FULL = 20_000;
    private static final int MOST_WEIGHED = 40_000;
    private static final int SHAKES = 12;

    /** Shakes of a load that holds already: only its order gets better. */
    private static final int SHAKES_WHEN_IT_HOLDS = 4;

    /** Sums of fractions differ by less than this. */
    private static final double HAIR = 1e-6;

    private final List<Cargo> cargo;
    private final Arrangement state;
    private int[][] best;
    private double bestHard = Double.POSITIVE_INFINITY;
    private double bestSoft = Double.POSITIVE_INFINITY;
    private double hard;
    private double soft;
    private int weighed;

    Stowing(Outfit outfit, List<Cargo> cargo) {
        this.cargo = cargo;
        state = new Arrangement(outfit, cargo, tongueCounts(outfit, cargo));
        best = state.copy();
    }

    static boolean tongueCounts(Outfit outfit, List<Cargo> cargo) {
        HaulTrailer trailer = outfit.trailer();
        return trailer != null
                && trailer.deck() != null
                && cargo.stream()
                        .anyMatch(c ->
                                c.bay().equals(trailer.bay().id()) && c.packs().grams() > 0);
    }

    List<Stowed> search() {
        if (arrangements() <= TRIED_IN_FULL) {
            tryAll(0);
            weighed = 0;
        }
        if (bestHard > HAIR) {
            layOneByOne();
            improve();
            shake();
        }
        List<Stowed> result = new ArrayList<>();
        for (int g = 0; g < best.length; g++) {
            for (int s = 0; s < best[g].length; s++) {
                if (best[g][s] > 0) {
                    Spot spot = state.spot(g, s);
                    result.add(new Stowed(
                            cargo.get(g),
                            best[g][s],
                            spot.from(),
                            spot.length(),
                            spot.middle(),
                            spot.overFront(),
                            spot.overRear()));
                }
            }
        }
        return result;
    }

    /** How many there are zone by zone, or more than are tried in full. */
    private long arrangements() {
        long product = 1;
        for (int g = 0; g < state.cargoes(); g++) {
            long ways = 1;
            // of n packs on s spots there are (n + s - 1) over (s - 1); each step divides without rest
            for (int i = 1; i < state.plainSpotsOf(g) && ways <= TRIED_IN_FULL; i++) {
                ways = ways * (state.packs(g).count() + i) / i;
            }
            product *= ways;
            if (product > TRIED_IN_FULL) {
                return product;
            }
        }
        return product;
    }

    private void tryAll(int g) {
        if (g == state.cargoes()) {
            weigh();
            keepIfBest();
        } else {
            tryAll(g, 0, state.packs(g).count());
        }
    }

    private void tryAll(int g, int s, int left) {
        if (s == state.plainSpotsOf(g) - 1) {
            state.add(g, s, left);
            tryAll(g + 1);
            state.add(g, s, -left);
            return;
        }
        for (int n = 0; n <= left; n++) {
            state.add(g, s, n);
            tryAll(g, s + 1, left - n);
            state.add(g, s, -n);
        }
    }

    private void layOneByOne() {
        List<Integer> heaviestFirst = IntStream.range(0, state.cargoes())
                .boxed()
                .sorted(Comparator.comparingLong(
                        g -> -state.packs(g).grams() * state.packs(g).count()))
                .toList();
        for (int g : heaviestFirst) {
            for (int n = 0; n < state.packs(g).count(); n++) {
                layOne(g);
            }
        }
        weigh();
        keepIfBest();
    }

    private void layOne(int g) {
        int to = 0;
        double leastHard = Double.POSITIVE_INFINITY;
        double leastSoft = Double.POSITIVE_INFINITY;
        for (int s = 0; s < state.spotsOf(g); s++) {
            state.add(g, s, 1);
            weigh();
            state.add(g, s, -1);
            if (better(hard, soft, leastHard, leastSoft)) {
                to = s;
                leastHard = hard;
                leastSoft = soft;
            }
        }
        state.add(g, to, 1);
    }

    private void weigh() {
        weighed++;
        state.weigh();
        hard = state.hard();
        soft = state.soft();
    }

    private static boolean better(double hard, double soft, double thanHard, double thanSoft) {
        return hard < thanHard - HAIR || (hard < thanHard + HAIR && soft < thanSoft - HAIR);
    }

    private void keepIfBest() {
        if (better(hard, soft, bestHard, bestSoft)) {
            bestHard = hard;
            bestSoft = soft;
            best = state.copy();
        }
    }

    private void improve() {
        boolean helped = true;
        while (helped && weighed < MOST_WEIGHED) {
            helped = moves() || swaps();
        }
        weigh();
        keepIfBest();
    }

    private boolean moves() {
        weigh();
        boolean helped = false;
        for (int g = 0; g < state.cargoes(); g++) {
            for (int from = 0; from < state.spotsOf(g); from++) {
                for (int to = 0; to < state.spotsOf(g); to++) {
                    helped |= from != to && move(g, from, to);
                }
            }
        }
        return helped;
    }

    /** All, half or one pack, whichever helps first. */
    private boolean move(int g, int from, int to) {
        int there = state.count[g][from];
        for (int n = there; n > 0; n = n == 1 ? 0 : n > (there + 1) / 2 ? (there + 1) / 2 : 1) {
            double hardBefore = hard;
            double softBefore = soft;
            state.move(g, from, to, n);
            weigh();
            if (better(hard, soft, hardBefore, softBefore)) {
                return true;
            }
            state.move(g, from, to, -n);
            hard = hardBefore;
            soft = softBefore;
        }
        return false;
    }

    private boolean swaps() {
        weigh();
        boolean helped = false;
        for (int g = 0; g < state.cargoes(); g++) {
            for (int h = 0; h < state.cargoes() && weighed < MOST_WEIGHED; h++) {
                helped |= g != h && state.sameBay(g, h) && swap(g, h);
            }
        }
        return helped;
    }

    private boolean swap(int g, int h) {
        boolean helped = false;
        for (int s = 0; s < state.spotsOf(g); s++) {
            for (int t = 0; t < state.spotsOf(h); t++) {
                if (state.count[g][s] > 0 && state.count[h][t] > 0) {
                    int to = state.nearest(g, state.spot(h, t).middle());
                    int back = state.nearest(h, state.spot(g, s).middle());
                    helped |= to != s && back != t && swap(g, s, to, h, t, back);
                }
            }
        }
        return helped;
    }

    /** One pack against as many of the other as take about its room. */
    private boolean swap(int g, int s, int to, int h, int t, int back) {
        long room = state.packs(g).millilitres();
        long other = Math.max(1, state.packs(h).millilitres());
        int n = (int) Math.clamp(Math.round((double) room / other), 1L, (long) state.count[h][t]);
        double hardBefore = hard;
        double softBefore = soft;
        state.move(g, s, to, 1);
        state.move(h, t, back, n);
        weigh();
        if (better(hard, soft, hardBefore, softBefore)) {
            return true;
        }
        state.move(h, t, back, -n);
        state.move(g, s, to, -1);
        hard = hardBefore;
        soft = softBefore;
        return false;
    }

    private void shake() {
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < (bestHard > HAIR ? SHAKES : SHAKES_WHEN_IT_HOLDS) && weighed < MOST_WEIGHED; i++) {
            state.become(best);
            for (int kick = 0; kick < 2 + state.cargoes() / 4; kick++) {
                kick(random);
            }
            improve();
        }
    }

    private void kick(SplittableRandom random) {
        int g = random.nextInt(state.cargoes());
        int from = random.nextInt(state.spotsOf(g));
        int to = random.nextInt(state.spotsOf(g));
        int there = state.count[g][from];
        if (there > 0 && from != to) {
            state.move(g, from, to, 1 + random.nextInt(there));
        }
    }
}
