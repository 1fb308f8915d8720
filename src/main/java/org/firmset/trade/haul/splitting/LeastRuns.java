package org.firmset.trade.haul.splitting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.firmset.trade.haul.Rig;
import org.firmset.trade.takeoff.cutting.CutPlan;
import org.firmset.trade.takeoff.cutting.Pattern;
import org.firmset.trade.takeoff.cutting.SolverLibrary;

/**
 * Looks for the fewest runs from both sides: simple splits and bounds first, then one measure by itself with columns, all
 * rooms taken together, and last CP-SAT on the runs one by one.
 */
final class LeastRuns {
    /** Cut lists have a measure of work of their own; with less than this they would take too long. */
    private static final double LEAST_WORK_TO_CUT = 0.1;

    /** With more packs in a run its full loads are too many to be counted. */
    private static final int MOST_PACKS_IN_A_RUN = 12;

    private final Pieces pieces;
    private final List<Scale> scales;
    private List<Hold> best;
    private int least;

    private LeastRuns(Rig rig, Pieces pieces) {
        this.pieces = pieces;
        scales = Scale.of(rig, pieces);
        least = scales.stream()
                .mapToInt(s -> s.simpleBound(pieces.wanted))
                .max()
                .orElse(0);
        least = Math.max(least, 1);
        best = List.of();
    }

    record Found(List<Hold> holds, int least) {}

    /**
     * @param pieces at least one
     * @param inOrder kinds, what is needed first in front
     * @param former a split of the same pieces known already; empty for none
     * @param work how hard the solver may look
     */
    static Found of(Rig rig, Pieces pieces, Integer[] inOrder, List<Hold> former, double work) {
        LeastRuns search = new LeastRuns(rig, pieces);
        search.best = new FirstSplits(pieces).best(inOrder, search.least);
        if (!former.isEmpty() && former.size() < search.best.size()) {
            search.best = former;
        }
        if (search.isOpen() && SolverLibrary.isThere()) {
            search.ask(new Together(pieces, work), work);
        }
        return new Found(search.best, search.least);
    }

    private boolean isOpen() {
        return best.size() > least;
    }

    private void ask(Together together, double work) {
        least = Math.max(least, together.bound());
        if (work >= LEAST_WORK_TO_CUT) {
            byScales();
        }
        if (isOpen() && pieces.packs() <= (long) MOST_PACKS_IN_A_RUN * least) {
            Patterns.of(pieces).ifPresent(patterns -> byPatterns(patterns, work / 2));
        }
        while (isOpen()) {
            Together.Answer answer = together.inRuns(least, best.size() - 1 == least ? 1 : 0.6);
            if (answer.impossible()) {
                least++;
            } else if (answer.holds().isEmpty()) {
                break;
            } else {
                best = answer.holds();
            }
        }
        while (isOpen()) {
            Together.Answer fewer = together.inRuns(best.size() - 1, 1);
            if (fewer.holds().isEmpty()) {
                least = fewer.impossible() ? best.size() : least;
                break;
            }
            best = fewer.holds();
        }
    }

    private void byPatterns(Patterns patterns, double work) {
        Patterns.Answer answer = patterns.fewest(least, best.size(), work);
        best = answer.holds().isEmpty() ? best : answer.holds();
        least = Math.min(best.size(), answer.least());
    }

    /** Only a scale that is nearly full can need more runs than its simple bound says. */
    private void byScales() {
        for (Scale scale : scales) {
            boolean alone = pieces.bays() == 1 && rules(scale);
            if (!isOpen() || (!alone && scale.simpleBound(pieces.wanted) < least)) {
                continue;
            }
            Optional<CutPlan> cut = scale.cut(pieces.wanted);
            cut.ifPresent(plan -> least = Math.max(least, Math.toIntExact(plan.bound())));
            if (alone && cut.isPresent() && cut.get().cost() < best.size()) {
                best = holds(scale, cut.get());
            }
        }
    }

    /** Whether no other rule can be broken while the scale's is kept. */
    private boolean rules(Scale scale) {
        for (int r = 0; r < pieces.rules(); r++) {
            for (int k = 0; k < pieces.kinds(); k++) {
                BigInteger other =
                        BigInteger.valueOf(pieces.weights[r][k][0]).multiply(BigInteger.valueOf(scale.room()));
                BigInteger own = BigInteger.valueOf(scale.weights()[k]).multiply(BigInteger.valueOf(pieces.rooms[r]));
                if (other.compareTo(own) > 0) {
                    return false;
                }
            }
        }
        return true;
    }

    private List<Hold> holds(Scale scale, CutPlan plan) {
        int[] open = pieces.wanted.clone();
        long[] lengths = scale.lengths(open);
        List<Hold> holds = new ArrayList<>();
        List<Map.Entry<Pattern, Integer>> uses = plan.uses().entrySet().stream()
                .sorted(Comparator.comparing(u -> u.getKey().pieces().toString()))
                .toList();
        for (Map.Entry<Pattern, Integer> use : uses) {
            for (int n = 0; n < use.getValue(); n++) {
                Hold hold = new Hold(pieces);
                for (int i = 0; i < lengths.length; i++) {
                    fill(hold, scale, lengths[i], use.getKey().pieces().get(i), open);
                }
                holds.add(hold);
            }
        }
        for (int k = 0; k < open.length; k++) {
            holds.getFirst().put(k, 0, scale.weights()[k] == 0 ? open[k] : 0);
        }
        return holds;
    }

    private static void fill(Hold hold, Scale scale, long length, int count, int[] open) {
        int still = count;
        for (int k = 0; k < open.length && still > 0; k++) {
            int put = scale.weights()[k] == length ? Math.min(still, open[k]) : 0;
            if (put > 0) {
                hold.put(k, 0, put);
                open[k] -= put;
                still -= put;
            }
        }
    }
}
