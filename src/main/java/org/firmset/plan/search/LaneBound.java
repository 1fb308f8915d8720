package org.firmset.plan.search;

import java.util.Arrays;
import org.firmset.plan.Stop;
import org.jspecify.annotations.Nullable;

/**
 * A bound on the weighted finishes without a solver. For every set of subprojects the day before which they cannot all be
 * finished: the work that must lie between any two days may not be more than those days hold in hours, in hours with
 * people enough, and in energy. One of a set is finished last, so the least sum over all orders of finishing follows.
 * A target is refuted when the deadlines it sets leave less than it needs.
 */
final class LaneBound {
    private static final int MOST_LANES = 7;
    private static final int MOST_PASSES = 4;
    private static final long MOST_LOOKS = 20_000_000;
    private static final long LOOKS_PER_WORK = 40_000_000;
    private static final int MOST_PARTS_PER_WORK = 60;

    private final Model model;
    private final Windows windows;
    private final Stop stop;
    private final int[] open;
    private final boolean[][] wanted;
    private final Overload overload;

    /** For each set of open subprojects the earliest site day on which it can be finished. */
    private final int[] last;

    /** For each subproject a day before which it is taken not to be finished, while one part of all plans is looked at. */
    private final int[] least;

    private int partsLeft;

    LaneBound(Model model, Windows windows, Stop stop) {
        this.model = model;
        this.stop = stop;
        this.windows = windows;
        open = openLanes();
        wanted = new boolean[1 << open.length][];
        overload = new Overload(model);
        last = new int[1 << open.length];
        Arrays.fill(last, -1);
        least = new int[model.laneIndex.size()];
    }

    private int[] openLanes() {
        int[] lanes = new int[model.laneIndex.size()];
        int count = 0;
        for (int lane = 0; lane < lanes.length; lane++) {
            if (windows.earliestFinishOfLane(lane) != Windows.NOTHING_LEFT) {
                lanes[count++] = lane;
            }
        }
        return Arrays.copyOf(lanes, Math.min(count, mostLanes()));
    }

    /** Fewer where each set of them takes long to look at. */
    private int mostLanes() {
        long each = looks();
        int lanes = MOST_LANES;
        while (lanes > 1 && (each << lanes) > MOST_LOOKS) {
            lanes--;
        }
        return lanes;
    }

    /** How much there is to look at for one set of subprojects. */
    private long looks() {
        long pairs = (long) model.stageCount * model.stageCount / 2;
        return 1 + (long) model.dayCount() * model.dayCount() + pairs + 10 * model.linkCount();
    }

    /** Stages of the subprojects of a set and all that come before them. */
    private boolean[] wanted(int set) {
        boolean[] known = wanted[set];
        if (known == null) {
            known = windows.andAllBefore(lane -> isOf(set, lane));
            wanted[set] = known;
        }
        return known;
    }

    private boolean isOf(int set, int lane) {
        for (int i = 0; i < open.length; i++) {
            if (open[i] == lane) {
                return (set & 1 << i) != 0;
            }
        }
        return false;
    }

    /** No plan has a lower sum of weight times days to the finish. */
    long bound() {
        raise(noDeadlines());
        return leastSums()[last.length - 1] + rest();
    }

    private int[] noDeadlines() {
        int[] none = new int[model.laneIndex.size()];
        Arrays.fill(none, model.dayCount() - 1);
        return none;
    }

    /** Subprojects beyond those that sets are made of count as if they had every day to themselves. */
    private long rest() {
        long sum = 0;
        for (int lane = 0; lane < model.laneIndex.size(); lane++) {
            int day = windows.earliestFinishOfLane(lane);
            if (day != Windows.NOTHING_LEFT && !isOpen(lane)) {
                sum += model.weight(lane) * days(day);
            }
        }
        return sum;
    }

    private boolean isOpen(int lane) {
        return isOf(last.length - 1, lane);
    }

    private long days(int day) {
        // sets that were not looked at before a stop have no day yet
        int epoch = model.dayEpoch[Math.clamp(day, 0, model.dayCount() - 1)];
        return epoch - model.statusEpoch + 1L;
    }

    /** Of every set the least sum, whichever order its subprojects finish in. */
    private long[] leastSums() {
        long[] sums = new long[last.length];
        for (int set = 1; set < sums.length; set++) {
            sums[set] = Long.MAX_VALUE;
            for (int i = 0; i < open.length; i++) {
                if ((set & 1 << i) != 0) {
                    long days = days(Math.max(last[set], least[open[i]]));
                    sums[set] = Math.min(sums[set], sums[set & ~(1 << i)] + model.weight(open[i]) * days);
                }
            }
        }
        return sums;
    }

    /** Site days after which no subproject may finish in a plan of this sum; under the first day where none is left. */
    int[] deadlines(long target) {
        long[] sums = leastSums();
        int all = last.length - 1;
        int[] result = noDeadlines();
        for (int i = 0; i < open.length; i++) {
            long days = (target - rest() - sums[all & ~(1 << i)]) / Math.max(1, model.weight(open[i]));
            long epoch = Math.clamp(model.statusEpoch + days - 1, 0, Integer.MAX_VALUE / 2);
            result[open[i]] = days < 1 ? -1 : model.dayFrom((int) epoch + 1) - 1;
        }
        return result;
    }

    /** Raises the earliest finishes of all sets as far as the deadlines allow to see; false when there is none left. */
    private boolean raise(int[] deadlines) {
        for (int set = 1; set < last.length && !stop.isStopped(); set++) {
            int day = Math.max(0, last[set]);
            for (int i = 0; i < open.length; i++) {
                if ((set & 1 << i) != 0) {
                    day = Math.max(day, Math.max(last[set & ~(1 << i)], windows.earliestFinishOfLane(open[i])));
                }
            }
            int latest = model.dayCount() - 1;
            int least = day;
            int most = latest;
            if (!overloaded(set, least, deadlines)) {
                last[set] = least;
                continue;
            }
            if (overloaded(set, most, deadlines)) {
                return false;
            }
            while (most - least > 1) {
                int middle = (least + most) / 2;
                if (overloaded(set, middle, deadlines)) {
                    least = middle;
                } else {
                    most = middle;
                }
            }
            last[set] = most;
        }
        return true;
    }

    /** Whether a set cannot be finished by a day while all others keep their deadlines. */
    private boolean overloaded(int set, int day, int[] deadlines) {
        int[] until = deadlines.clone();
        for (int i = 0; i < open.length; i++) {
            if ((set & 1 << i) != 0) {
                until[open[i]] = Math.min(until[open[i]], day);
            }
        }
        Windows tight = windows.until(until);
        if (tight.areEmpty()) {
            return true;
        }
        // others count as well where they have a deadline of their own
        boolean others = !Arrays.equals(deadlines, noDeadlines());
        boolean[] counts = others ? wanted(last.length - 1) : wanted(set);
        return overload.in(tight, counts);
    }

    /** What is known of every plan of at most this sum; null when there is none. */
    @Nullable
    Tight tightest(long target) {
        int[] before = last.clone();
        int[] deadlines = narrowed(target, noDeadlines());
        Tight tight = deadlines == null ? null : new Tight(deadlines, open.clone(), last.clone());
        // what was raised holds for plans of this sum only
        System.arraycopy(before, 0, last, 0, last.length);
        return tight;
    }

    /**
     * When the subprojects of a good plan finish.
     *
     * @param latest for each subproject the site day after which it does not finish
     * @param lanes subprojects of which sets are made
     * @param earliestOfSet for each set of them, by its bits, the site day before which not all of it is finished
     */
    record Tight(int[] latest, int[] lanes, int[] earliestOfSet) {}

    /** Raises what the target and the latest finishes allow to raise; null when that refutes the target. */
    private int @Nullable [] narrowed(long target, int[] latest) {
        int[] deadlines = sooner(deadlines(target), latest);
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            int[] known = last.clone();
            if (leastSum() > target || !raise(deadlines)) {
                return null;
            }
            deadlines = sooner(deadlines(target), latest);
            if (Arrays.equals(known, last)) {
                break;
            }
        }
        return leastSum() > target ? null : deadlines;
    }

    private long leastSum() {
        return leastSums()[last.length - 1] + rest();
    }

    private static int[] sooner(int[] one, int[] other) {
        int[] result = one.clone();
        for (int i = 0; i < result.length; i++) {
            result[i] = Math.min(one[i], other[i]);
        }
        return result;
    }

    /**
     * The highest bound that refuting targets one after the other gives, found by halving.
     *
     * @param known a sum that a plan has
     * @param work how hard to look, in the solver's units of about a second; the more, the more parts all plans of a sum
     *     are divided into to refute each by itself
     */
    long sharpened(long known, int work) {
        int parts = (int) Math.clamp(LOOKS_PER_WORK / (looks() << open.length), 1, MOST_PARTS_PER_WORK) * work;
        long least = sharpened(bound(), known, 1);
        return parts > 1 ? sharpened(least, known, parts) : least;
    }

    private long sharpened(long bound, long known, int parts) {
        long least = bound;
        long most = known;
        while (least < most && !stop.isStopped()) {
            long middle = least + (most - least - 1) / 2;
            if (refutes(middle, parts)) {
                least = middle + 1;
            } else {
                most = middle;
            }
        }
        return least;
    }

    /** Whether no plan has a sum of at most this; false as well when the parts are used up before that is known. */
    private boolean refutes(long target, int parts) {
        partsLeft = parts;
        return refutes(target, noDeadlines());
    }

    private boolean refutes(long target, int[] latest) {
        if (partsLeft <= 0 || stop.isStopped()) {
            return false;
        }
        partsLeft--;
        int[] before = last.clone();
        int[] deadlines = narrowed(target, latest);
        boolean refuted = deadlines == null || refutesHalves(target, deadlines);
        System.arraycopy(before, 0, last, 0, last.length);
        return refuted;
    }

    /** A subproject finishes in the earlier or in the later half of the days it has left. */
    private boolean refutesHalves(long target, int[] deadlines) {
        int lane = widest(deadlines);
        if (lane < 0) {
            return false;
        }
        int first = earliest(lane);
        int middle = (first + deadlines[lane]) / 2;
        int[] sooner = deadlines.clone();
        sooner[lane] = middle;
        if (!refutes(target, sooner)) {
            return false;
        }
        int before = least[lane];
        least[lane] = middle + 1;
        boolean refuted = refutes(target, deadlines);
        least[lane] = before;
        return refuted;
    }

    /** The subproject whose days left weigh most; -1 when each has one day. */
    private int widest(int[] deadlines) {
        int widest = -1;
        long most = 0;
        for (int lane : open) {
            long range = model.weight(lane) * (days(deadlines[lane]) - days(earliest(lane)));
            if (range > most) {
                most = range;
                widest = lane;
            }
        }
        return widest;
    }

    private int earliest(int lane) {
        int alone = 0;
        for (int i = 0; i < open.length; i++) {
            alone = open[i] == lane ? last[1 << i] : alone;
        }
        return Math.max(alone, least[lane]);
    }
}
