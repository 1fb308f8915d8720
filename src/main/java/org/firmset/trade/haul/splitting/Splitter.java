package org.firmset.trade.haul.splitting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.firmset.trade.haul.Rig;
import org.firmset.trade.takeoff.cutting.SolverLibrary;

/**
 * Splits cargo over runs of a rig. The work is bounded and counted in steps, not in seconds, so the same input gives the same
 * split on every machine. Thread-safe.
 */
public final class Splitter {
    /** In the solver's own units of about a second. */
    private static final double WORK = 0.4;

    private static final double WORK_AGAIN = 0.03;

    private Splitter() {}

    /**
     * All that a run can carry, in the fewest runs found, with a bound that no split can beat.
     *
     * @param cargo together at most {@link Cargo#MOST_PACKS} packs; may be empty
     */
    public static Split split(Rig rig, List<Cargo> cargo) {
        return split(rig, cargo, WORK, new Split(List.of(), 0, List.of(), true));
    }

    /**
     * The same in a moment, for cargo or a rig that has changed a little: the split before is kept up where it still serves,
     * and the solver looks only briefly for a better one.
     */
    public static Split again(Split before, Rig rig, List<Cargo> cargo) {
        return split(rig, cargo, WORK_AGAIN, before);
    }

    private static Split split(Rig rig, List<Cargo> cargo, double work, Split before) {
        Sorted sorted = Sorted.of(rig, cargo);
        List<Cargo> lines = sorted.lines();
        boolean withSolver = SolverLibrary.isThere();
        if (lines.isEmpty()) {
            return new Split(List.of(), 0, sorted.unfit(), withSolver);
        }
        Pieces pieces = Pieces.of(rig, lines);
        List<Hold> former = before.runs().isEmpty() ? List.of() : Former.of(rig, pieces, lines, before);
        LeastRuns.Found found = LeastRuns.of(rig, pieces, kindsInOrder(pieces, lines), former, work);
        int[] counts = lines.stream().mapToInt(Cargo::count).toArray();
        return new Split(told(rig, pieces, lines, counts, found.holds()), found.least(), sorted.unfit(), withSolver);
    }

    /**
     * What goes into so many runs: what is needed first before all that is needed later, line by line.
     *
     * @param runs 0 or more
     * @param cargo together at most {@link Cargo#MOST_PACKS} packs; may be empty
     */
    public static Filled fill(Rig rig, List<Cargo> cargo, int runs) {
        if (runs < 0) {
            throw new IllegalArgumentException("runs [" + runs + "] must not be negative");
        }
        Sorted sorted = Sorted.of(rig, cargo);
        if (runs == 0 || sorted.lines().isEmpty()) {
            return new Filled(List.of(), sorted.lines(), sorted.unfit());
        }
        Pieces all = Pieces.of(rig, sorted.lines());
        Filling.Result result = Filling.of(rig, all, sorted.lines(), Math.toIntExact(Math.min(runs, all.packs())));
        List<Cargo> left = new ArrayList<>();
        for (int i = 0; i < result.in().length; i++) {
            Cargo line = sorted.lines().get(i);
            int stays = line.count() - result.in()[i];
            if (stays > 0) {
                left.add(line.withCount(stays));
            }
        }
        return new Filled(told(rig, all, sorted.lines(), result.in(), result.holds()), left, sorted.unfit());
    }

    private static Integer[] kindsInOrder(Pieces pieces, List<Cargo> lines) {
        return Arrays.stream(NeededFirst.inOrder(lines))
                .map(line -> pieces.kindOf[line])
                .distinct()
                .toArray(Integer[]::new);
    }

    private static List<RunLoad> told(Rig rig, Pieces pieces, List<Cargo> lines, int[] counts, List<Hold> holds) {
        List<RunLoad> runs = new ArrayList<>();
        Integer[] inOrder = NeededFirst.inOrder(lines);
        for (NeededFirst.Loading loading : NeededFirst.share(pieces, lines, counts, holds)) {
            runs.add(told(rig, lines, inOrder, loading.lines()));
        }
        return runs;
    }

    private static RunLoad told(Rig rig, List<Cargo> lines, Integer[] inOrder, Counts counts) {
        record Place(String kind, String bay) {}
        Map<Place, Integer> packs = new LinkedHashMap<>();
        for (int line : inOrder) {
            for (int b = 0; b < rig.bays().size(); b++) {
                if (counts.of(line, b) > 0) {
                    Place place =
                            new Place(lines.get(line).kind(), rig.bays().get(b).id());
                    packs.merge(place, counts.of(line, b), Integer::sum);
                }
            }
        }
        return new RunLoad(packs.entrySet().stream()
                .map(p -> new Placed(p.getKey().kind(), p.getKey().bay(), p.getValue()))
                .toList());
    }
}
