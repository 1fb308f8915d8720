package org.firmset.trade.haul.splitting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.firmset.trade.haul.Rig;
import org.firmset.trade.takeoff.cutting.SolverLibrary;

/**
 * Loads a given number of runs, what is needed first before all else: a line is let in as far as it goes along with all that
 * was let in before it, and that may be stowed anew for it.
 */
final class Filling {
    private static final double WORK = 0.02;
    private static final int MOST_ASKED = 8;
    private static final int MOST_STOWED = 300;

    private final Rig rig;
    private final Pieces all;
    private final int runs;
    private final int[] in;
    private List<Hold> holds = new ArrayList<>();
    private int asked;
    private int stowed;

    private Filling(Rig rig, Pieces all, int runs) {
        this.rig = rig;
        this.all = all;
        this.runs = runs;
        in = new int[all.kinds()];
        for (int i = 0; i < runs; i++) {
            holds.add(new Hold(all));
        }
    }

    /**
     * @param holds exactly what is let in
     * @param in how many packs of each line go in
     */
    record Result(List<Hold> holds, int[] in) {}

    static Result of(Rig rig, Pieces pieces, List<Cargo> lines, int runs) {
        Filling filling = new Filling(rig, pieces, runs);
        int[] in = new int[lines.size()];
        for (int line : NeededFirst.inOrder(lines)) {
            in[line] = filling.letIn(pieces.kindOf[line], lines.get(line).count());
        }
        return new Result(filling.holds.stream().filter(h -> !h.isEmpty()).toList(), in);
    }

    private int letIn(int kind, int count) {
        int simply = put(kind, count);
        in[kind] += simply;
        int least = simply;
        int most = count;
        while (least < most && stowed++ < MOST_STOWED) {
            int tried = least + (most - least + 1) / 2;
            if (stowAnew(kind, tried - least)) {
                least = tried;
            } else {
                most = tried - 1;
            }
        }
        return least;
    }

    private int put(int kind, int count) {
        int open = count;
        for (Hold hold : holds) {
            for (int b = 0; b < all.bays(); b++) {
                int put = Math.min(open, hold.most(kind, b));
                hold.put(kind, b, put);
                open -= put;
            }
        }
        return count - open;
    }

    private boolean stowAnew(int kind, int more) {
        int[] wanted = in.clone();
        wanted[kind] += more;
        Pieces pieces = all.with(wanted);
        List<Hold> found = stowed(pieces);
        if (found.isEmpty()) {
            return false;
        }
        holds = new ArrayList<>(found);
        while (holds.size() < runs) {
            holds.add(new Hold(all));
        }
        in[kind] += more;
        return true;
    }

    private List<Hold> stowed(Pieces pieces) {
        if (Scale.of(rig, pieces).stream().anyMatch(s -> s.simpleBound(pieces.wanted) > runs)) {
            return List.of();
        }
        Integer[] kinds = new Integer[pieces.kinds()];
        Arrays.setAll(kinds, i -> i);
        List<Hold> simple = new FirstSplits(pieces).best(kinds, runs);
        if (simple.size() <= runs) {
            return simple;
        }
        if (asked == MOST_ASKED || !SolverLibrary.isThere()) {
            return List.of();
        }
        asked++;
        return new Together(pieces, WORK).inRuns(runs, 1).holds();
    }
}
