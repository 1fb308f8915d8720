package org.firmset.trade.haul.splitting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Simple ways to load run after run: kinds in several orders into the first or the fullest run with room, or each run by
 * itself with what suits the room that is left best. The one with the fewest runs counts.
 */
final class FirstSplits {
    /** With very many kinds and runs only the latest runs are looked into, so that the work stays bounded. */
    private static final int MOST_LOOKS = 5_000_000;

    private static final int SUITING_WORK = 3_000_000;

    private final Pieces pieces;
    private final double[] sizes;
    private final double[][][] parts;

    FirstSplits(Pieces pieces) {
        this.pieces = pieces;
        parts = parts(pieces);
        sizes = sizes(pieces);
    }

    /** How the bays of a run are chosen. */
    private enum Bays {
        AS_LISTED,
        LAST_FIRST,
        LEAST_FILLED
    }

    /** @param inOrder kinds, what is needed first in front; of two equally good ways the first, which keeps this order */
    List<Hold> best(Integer[] inOrder, int enough) {
        List<Hold> best = List.of();
        for (Integer[] order :
                List.of(inOrder, by(k -> -sizes[k]), by(k -> baysOf(k) * 1e6 - sizes[k]), by(k -> -pieces.grams[k]))) {
            for (Bays bays : Bays.values()) {
                for (boolean fullest : new boolean[] {false, true}) {
                    best = fewer(best, fit(order, bays, fullest));
                    if (best.size() <= enough) {
                        return best;
                    }
                }
            }
        }
        return fewer(best, suiting());
    }

    private static List<Hold> fewer(List<Hold> one, List<Hold> other) {
        return one.isEmpty() || (!other.isEmpty() && other.size() < one.size()) ? other : one;
    }

    private Integer[] by(java.util.function.ToDoubleFunction<Integer> key) {
        Integer[] order = new Integer[pieces.kinds()];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble(key));
        return order;
    }

    private int baysOf(int kind) {
        int n = 0;
        for (boolean goes : pieces.goes[kind]) {
            n += goes ? 1 : 0;
        }
        return n;
    }

    private List<Hold> fit(Integer[] order, Bays bays, boolean fullest) {
        List<Hold> holds = new ArrayList<>();
        int window = Math.max(50, MOST_LOOKS / Math.max(1, pieces.kinds()) / 24);
        for (int kind : order) {
            int open = pieces.wanted[kind];
            List<Hold> tried = new ArrayList<>(holds.subList(Math.max(0, holds.size() - window), holds.size()));
            if (fullest) {
                tried.sort(Comparator.comparingDouble(this::room));
            }
            for (Hold hold : tried) {
                open -= put(hold, kind, open, bays);
            }
            while (open > 0) {
                Hold hold = new Hold(pieces);
                holds.add(hold);
                open -= put(hold, kind, open, bays);
            }
        }
        return holds;
    }

    private double room(Hold hold) {
        double sum = 0;
        for (int r = 0; r < pieces.rules(); r++) {
            sum += hold.leftPart(r);
        }
        return sum;
    }

    private int put(Hold hold, int kind, int open, Bays bays) {
        int put = 0;
        for (int i = 0; i < pieces.bays() && put < open; i++) {
            int bay = bay(hold, kind, bays, i);
            int count = Math.min(open - put, hold.most(kind, bay));
            if (count > 0) {
                hold.put(kind, bay, count);
                put += count;
            }
        }
        return put;
    }

    private int bay(Hold hold, int kind, Bays bays, int place) {
        return switch (bays) {
            case AS_LISTED -> place;
            case LAST_FIRST -> pieces.bays() - 1 - place;
            case LEAST_FILLED -> roomiest(hold, kind, place);
        };
    }

    /** The bay that takes the most of the kind; behind it the others as they come. */
    private int roomiest(Hold hold, int kind, int place) {
        int best = 0;
        for (int b = 1; b < pieces.bays(); b++) {
            best = hold.most(kind, b) > hold.most(kind, best) ? b : best;
        }
        return place == 0 ? best : place <= best ? place - 1 : place;
    }

    /** Each run takes, pack by pack, what points most the way its room does. */
    private List<Hold> suiting() {
        long work = pieces.packs() * pieces.kinds() * pieces.bays() * pieces.rules();
        if (work > SUITING_WORK) {
            return List.of();
        }
        int[] open = pieces.wanted.clone();
        List<Hold> holds = new ArrayList<>();
        while (Arrays.stream(open).anyMatch(n -> n > 0)) {
            Hold hold = new Hold(pieces);
            holds.add(hold);
            boolean more = true;
            while (more) {
                more = putMostSuiting(hold, open);
            }
        }
        return holds;
    }

    private boolean putMostSuiting(Hold hold, int[] open) {
        int kind = -1;
        int bay = -1;
        double best = -1;
        for (int k = 0; k < open.length; k++) {
            for (int b = 0; open[k] > 0 && b < pieces.bays(); b++) {
                double suits = suits(hold, k, b);
                if (suits > best && hold.most(k, b) > 0) {
                    kind = k;
                    bay = b;
                    best = suits;
                }
            }
        }
        if (kind < 0) {
            return false;
        }
        hold.put(kind, bay, 1);
        open[kind]--;
        return true;
    }

    private double suits(Hold hold, int kind, int bay) {
        double sum = 0;
        for (int r = 0; r < pieces.rules(); r++) {
            sum += parts[r][kind][bay] * hold.leftPart(r);
        }
        return Math.max(0, sum);
    }

    /** Weights as parts of the room, each rule as heavy as it is scarce. */
    private static double[][][] parts(Pieces pieces) {
        double[][][] parts = new double[pieces.rules()][pieces.kinds()][pieces.bays()];
        for (int r = 0; r < pieces.rules(); r++) {
            double scarce = 0;
            for (int k = 0; k < pieces.kinds(); k++) {
                scarce += (double) pieces.leastWeight(r, k) * pieces.wanted[k] / Math.max(1, pieces.rooms[r]);
            }
            for (int k = 0; k < pieces.kinds(); k++) {
                for (int b = 0; b < pieces.bays(); b++) {
                    parts[r][k][b] = scarce * pieces.weights[r][k][b] / Math.max(1, pieces.rooms[r]);
                }
            }
        }
        return parts;
    }

    private double[] sizes(Pieces pieces) {
        double[] result = new double[pieces.kinds()];
        for (int k = 0; k < result.length; k++) {
            double least = Double.POSITIVE_INFINITY;
            for (int b = 0; b < pieces.bays(); b++) {
                double sum = 0;
                for (int r = 0; r < pieces.rules(); r++) {
                    sum += parts[r][k][b];
                }
                least = pieces.goes[k][b] ? Math.min(least, sum) : least;
            }
            result[k] = least;
        }
        return result;
    }
}
