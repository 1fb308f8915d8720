package org.firmset.trade.haul.splitting;

import static java.util.stream.Collectors.groupingBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Puts what is needed first into the earlier runs, without a run more: runs in the order of what they carry, packs of a kind
 * handed out in the order of need, and then packs changed between two runs as long as that brings something forward and
 * only what is needed later goes back.
 */
final class NeededFirst {
    private static final int MOST_CHANGES = 20_000;
    private static final int MOST_LOOKS = 2_000_000;

    private final Pieces pieces;
    private final List<Cargo> lines;
    private final Integer[] inOrder;
    private final List<Loading> runs = new ArrayList<>();
    private int changesLeft = MOST_CHANGES;
    private int looksLeft = MOST_LOOKS;

    private NeededFirst(Pieces pieces, List<Cargo> lines) {
        this.pieces = pieces;
        this.lines = lines;
        inOrder = inOrder(lines);
    }

    /** Lines by number, what is needed first in front; what is needed at the same time as it is listed. */
    static Integer[] inOrder(List<Cargo> lines) {
        Integer[] order = new Integer[lines.size()];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingInt(i -> lines.get(i).order()));
        return order;
    }

    /**
     * @param counts how many packs of each line the holds have
     * @param holds exactly these packs; in the answer each run names its packs by line and bay
     */
    static List<Loading> share(Pieces pieces, List<Cargo> lines, int[] counts, List<Hold> holds) {
        NeededFirst sharing = new NeededFirst(pieces, lines);
        sharing.handOut(counts.clone(), sharing.byNeed(holds));
        boolean better = true;
        while (better && sharing.changesLeft > 0 && sharing.looksLeft > 0) {
            better = sharing.bringForward();
        }
        return sharing.runs.stream().filter(run -> !run.hold().isEmpty()).toList();
    }

    /** One run, its packs also by line. */
    record Loading(Hold hold, Counts lines) {
        Loading copy() {
            return new Loading(hold.copy(), lines.copy());
        }

        void put(int line, int kind, int bay, int count) {
            hold.put(kind, bay, count);
            lines.add(line, bay, count);
        }
    }

    /** The run with the most of what is needed first comes first. */
    private List<Hold> byNeed(List<Hold> holds) {
        int[] first = new int[pieces.kinds()];
        Arrays.fill(first, Integer.MAX_VALUE);
        for (int line = 0; line < lines.size(); line++) {
            int kind = pieces.kindOf[line];
            first[kind] = Math.min(first[kind], lines.get(line).order());
        }
        record Ranked(Hold hold, SortedMap<Integer, Integer> packs) {}
        return holds.stream()
                .map(hold -> new Ranked(hold, packsByNeed(hold, first)))
                .sorted((one, other) -> earlier(one.packs(), other.packs()))
                .map(Ranked::hold)
                .toList();
    }

    private static SortedMap<Integer, Integer> packsByNeed(Hold hold, int[] first) {
        SortedMap<Integer, Integer> packs = new TreeMap<>();
        hold.counts.present().forEach(kind -> packs.merge(first[kind], hold.counts.of(kind), Integer::sum));
        return packs;
    }

    /** Packs by order of need: of two the one with more packs at the first order in which they differ. */
    private static int earlier(SortedMap<Integer, Integer> one, SortedMap<Integer, Integer> other) {
        Iterator<Map.Entry<Integer, Integer>> mine = one.entrySet().iterator();
        Iterator<Map.Entry<Integer, Integer>> theirs = other.entrySet().iterator();
        while (mine.hasNext() && theirs.hasNext()) {
            Map.Entry<Integer, Integer> a = mine.next();
            Map.Entry<Integer, Integer> b = theirs.next();
            int order = Integer.compare(a.getKey(), b.getKey());
            int more = Integer.compare(b.getValue(), a.getValue());
            if (order != 0 || more != 0) {
                return order != 0 ? order : more;
            }
        }
        return Boolean.compare(theirs.hasNext(), mine.hasNext());
    }

    private void handOut(int[] open, List<Hold> holds) {
        Map<Integer, List<Integer>> linesOf = Arrays.stream(inOrder).collect(groupingBy(line -> pieces.kindOf[line]));
        for (Hold hold : holds) {
            Counts counts = new Counts(pieces.bays());
            for (int kind : hold.counts.present()) {
                for (int b = 0; b < pieces.bays(); b++) {
                    handOut(open, linesOf.getOrDefault(kind, List.of()), b, hold.counts.of(kind, b), counts);
                }
            }
            runs.add(new Loading(hold, counts));
        }
    }

    private static void handOut(int[] open, List<Integer> linesInOrder, int bay, int packs, Counts counts) {
        int still = packs;
        for (int line : linesInOrder) {
            int count = Math.min(open[line], still);
            counts.add(line, bay, count);
            open[line] -= count;
            still -= count;
        }
    }

    private boolean bringForward() {
        boolean any = false;
        for (int early = 0; looksLeft > 0 && early + 1 < runs.size(); early++) {
            for (int line : inOrder) {
                for (int late = early + 1; looksLeft > 0 && late < runs.size(); late++) {
                    looksLeft--;
                    while (changesLeft > 0 && bringForward(line, early, late)) {
                        any = true;
                    }
                }
            }
        }
        return any;
    }

    private boolean bringForward(int line, int early, int late) {
        for (int from = 0; from < pieces.bays(); from++) {
            for (int to = 0; runs.get(late).lines().of(line, from) > 0 && to < pieces.bays(); to++) {
                if (pieces.goes[pieces.kindOf[line]][to] && change(line, early, to, late, from)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** One pack from the late run into the early one, against packs needed later where these have to make room. */
    private boolean change(int line, int early, int to, int late, int from) {
        changesLeft--;
        int kind = pieces.kindOf[line];
        Loading there = runs.get(early).copy();
        Loading here = runs.get(late).copy();
        here.put(line, kind, from, -1);
        if (!here.hold().holds()) {
            return false;
        }
        for (int i = inOrder.length - 1; i >= 0 && there.hold().most(kind, to) == 0; i--) {
            int other = inOrder[i];
            if (lines.get(other).order() <= lines.get(line).order()) {
                break;
            }
            giveBack(other, there, here, kind, to);
        }
        if (there.hold().most(kind, to) == 0 || !there.hold().holds()) {
            return false;
        }
        there.put(line, kind, to, 1);
        runs.set(early, there);
        runs.set(late, here);
        return true;
    }

    private void giveBack(int other, Loading there, Loading here, int kind, int to) {
        int otherKind = pieces.kindOf[other];
        for (int b = 0; b < pieces.bays(); b++) {
            for (int c = 0; c < pieces.bays(); c++) {
                while (there.lines().of(other, b) > 0
                        && there.hold().most(kind, to) == 0
                        && here.hold().most(otherKind, c) > 0) {
                    there.put(other, otherKind, b, -1);
                    here.put(other, otherKind, c, 1);
                }
            }
        }
    }
}
