package org.firmset.trade.haul.splitting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.MassLimit;
import org.firmset.trade.haul.Rig;

/**
 * The cargo of a rig as numbers. Every rule of the rig, mass or volume, is one line: the sum over kinds and bays of count x
 * weight is not over its room. Lines of cargo with the same measures are one kind here.
 */
final class Pieces {
    final int[] wanted;
    /** By rule, kind and bay. A weight may be under 0: mass behind an axle lifts the one before it. */
    final long[][][] weights;

    final long[] rooms;
    /** Which kind may lie in which bay. */
    final boolean[][] goes;

    final long[] grams;
    /** For each line of the cargo its kind. */
    final int[] kindOf;

    private record Measures(long grams, long millilitres, long millimetres) {}

    private Pieces(int[] wanted, long[][][] weights, long[] rooms, boolean[][] goes, long[] grams, int[] kindOf) {
        this.wanted = wanted;
        this.weights = weights;
        this.rooms = rooms;
        this.goes = goes;
        this.grams = grams;
        this.kindOf = kindOf;
    }

    static Pieces of(Rig rig, List<Cargo> lines) {
        Map<Measures, Integer> numbers = new HashMap<>();
        List<Measures> kinds = new ArrayList<>();
        int[] kindOf = new int[lines.size()];
        int[] counts = new int[lines.size()];
        for (int i = 0; i < kindOf.length; i++) {
            Cargo line = lines.get(i);
            Measures measures = new Measures(line.grams(), line.millilitres(), line.longestMillimetres());
            kindOf[i] = numbers.computeIfAbsent(measures, m -> {
                kinds.add(m);
                return kinds.size() - 1;
            });
            counts[kindOf[i]] += line.count();
        }
        return measured(rig, kinds, Arrays.copyOf(counts, kinds.size()), kindOf);
    }

    private static Pieces measured(Rig rig, List<Measures> kinds, int[] wanted, int[] kindOf) {
        int bays = rig.bays().size();
        int limits = rig.limits().size();
        long[][][] weights = new long[limits + bays][kinds.size()][bays];
        long[] rooms = new long[limits + bays];
        for (int r = 0; r < rooms.length; r++) {
            rooms[r] = r < limits
                    ? thousandths(rig.limits().get(r))
                    : Math.max(0, rig.bays().get(r - limits).millilitres());
        }
        boolean[][] goes = new boolean[kinds.size()][bays];
        for (int k = 0; k < kinds.size(); k++) {
            for (int b = 0; b < bays; b++) {
                for (int r = 0; r < limits; r++) {
                    weights[r][k][b] = kinds.get(k).grams()
                            * rig.limits().get(r).shareOf(rig.bays().get(b).id());
                }
                weights[limits + b][k][b] = kinds.get(k).millilitres();
                goes[k][b] = fits(rig.bays().get(b), kinds.get(k)) && isUnder(weights, rooms, k, b);
            }
        }
        for (int r = 0; r < rooms.length; r++) {
            rooms[r] = inGreatestUnits(weights[r], rooms[r]);
        }
        long[] grams = kinds.stream().mapToLong(Measures::grams).toArray();
        return new Pieces(wanted, weights, rooms, goes, grams, kindOf);
    }

    /** Divides weights by what all are multiples of, and answers with the room for these. */
    private static long inGreatestUnits(long[][] weights, long room) {
        BigInteger divisor = BigInteger.ZERO;
        for (long[] kind : weights) {
            for (long weight : kind) {
                divisor = divisor.gcd(BigInteger.valueOf(weight));
            }
        }
        long common = Math.max(1, divisor.longValueExact());
        for (long[] kind : weights) {
            for (int b = 0; b < kind.length; b++) {
                kind[b] /= common;
            }
        }
        return room / common;
    }

    /** The room is capped where no cargo comes near it, so that sums stay exact. */
    static long thousandths(MassLimit limit) {
        return Math.min(limit.grams(), Cargo.MOST * Cargo.MOST_PACKS / 1000) * 1000;
    }

    private static boolean fits(Bay bay, Measures kind) {
        return kind.millimetres() <= bay.longestMillimetres() && kind.millilitres() <= bay.millilitres();
    }

    private static boolean isUnder(long[][][] weights, long[] rooms, int kind, int bay) {
        for (int r = 0; r < rooms.length; r++) {
            if (weights[r][kind][bay] > rooms[r]) {
                return false;
            }
        }
        return true;
    }

    /** The same kinds, with another number of packs of each; a number may be 0. */
    Pieces with(int[] otherWanted) {
        return new Pieces(otherWanted, weights, rooms, goes, grams, kindOf);
    }

    int kinds() {
        return wanted.length;
    }

    int bays() {
        return wanted.length == 0 ? 0 : goes[0].length;
    }

    int rules() {
        return rooms.length;
    }

    long packs() {
        long sum = 0;
        for (int n : wanted) {
            sum += n;
        }
        return sum;
    }

    /** Whether a pack in one place can make room in another; then what fits alone is not the most that fits. */
    boolean lifts() {
        for (long[][] rule : weights) {
            for (long[] kind : rule) {
                for (long weight : kind) {
                    if (weight < 0) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** The least weight of a pack under a rule, over the bays it may lie in. */
    long leastWeight(int rule, int kind) {
        long least = Long.MAX_VALUE;
        for (int b = 0; b < bays(); b++) {
            if (goes[kind][b]) {
                least = Math.min(least, weights[rule][kind][b]);
            }
        }
        return least;
    }
}
