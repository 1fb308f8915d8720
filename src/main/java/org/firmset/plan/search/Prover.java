package org.firmset.plan.search;

import java.util.List;
import org.firmset.plan.Aim;
import org.firmset.plan.Effort;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.firmset.trade.takeoff.cutting.SolverLibrary;
import org.jspecify.annotations.Nullable;

/**
 * Asks how much better than the best plan known any plan could be. First by windows and by sets of subprojects, then by
 * CP-SAT on a problem that every plan solves; what CP-SAT finds guides the builder to plans as well. Without the solver's
 * library the bounds in Java serve.
 */
final class Prover {
    /**
     * What came of it.
     *
     * @param genes of the best plan known
     * @param aim its value and the bound on it; null when stages are left without a place
     * @param impossible it is proven that no plan keeps every hard rule
     */
    record Result(Genes genes, @Nullable Aim aim, boolean impossible) {}

    private static final int MOST_ROUNDS = 3;
    /** With no more places for work than this CP-SAT is done before a search is. */
    private static final long PLACES_SOON_PROVEN = 600;
    /** With more places for work than this CP-SAT moves neither plan nor bound in any time that one would wait. */
    private static final long PLACES_OF_USE = 5_000;
    /** Building a plan takes about as long as so many stages times site days; a unit of work is about a second of it. */
    private static final long STAGE_DAYS_PER_WORK = 450_000_000;

    private static final long LINK_IN_STAGE_DAYS = 20;
    private static final int MOST_PLANS_PER_WORK = 20_000;

    private final Model model;
    private final Windows windows;
    private final Style style;
    private final Builder builder;
    private final Stop stop;
    private Genes best;
    private Score bestScore;
    private boolean impossible;

    private Prover(Model model, Windows windows, Genes genes, Stop stop) {
        this.stop = stop;
        this.model = model;
        this.windows = windows;
        this.style = model.style;
        builder = new Builder(model, stop);
        best = genes;
        bestScore = score(genes);
    }

    static Result prove(Model model, Windows windows, Genes genes, Effort effort, Stop stop) {
        return new Prover(model, windows, genes, stop).prove(effort.proof(), effort.any());
    }

    private Score score(Genes genes) {
        Draft draft = builder.build(genes.copy());
        return Score.of(draft, builder.ledger(), style);
    }

    private Result prove(int work, boolean any) {
        if (stop.isStopped()) {
            return new Result(best, null, false);
        }
        if (bestScore.unplaced() > 0 && (work == 0 || !SolverLibrary.isThere() || !findAny(work))) {
            return new Result(best, null, impossible);
        }
        long bound = simpleBound();
        if (!any && bound < bestScore.first() && work > 0 && !stop.isStopped()) {
            bound = Math.max(bound, look(work));
            leaveOutTrips();
        }
        return new Result(best, new Aim(bestScore.first(), Math.min(bound, bestScore.first())), false);
    }

    /** Looks for a plan where the search found none; false when there is still none. */
    private boolean findAny(int work) {
        if (windows.areEmpty()) {
            impossible = true;
            return false;
        }
        Answer answer = ask(windows, null, Answer.NO_LIMIT, work);
        impossible = answer.isImpossible(Answer.NO_LIMIT);
        return bestScore.unplaced() == 0;
    }

    private long simpleBound() {
        return switch (style) {
            case SOONEST -> weightedLeastDays();
            case FEWEST_TRIPS -> new Bounds(model, windows).bound().fewestTrips();
            case LEAST_MONEY -> new Bounds(model, windows).bound().leastCents();
            case LEAST_CHANGE -> 0;
        };
    }

    private long look(int work) {
        if (style != Style.SOONEST) {
            return SolverLibrary.isThere()
                    ? ask(windows, null, bestScore.first() - 1, work).bound()
                    : 0;
        }
        boolean rigid = Rigid.fits(model);
        LaneBound lanes = new LaneBound(model, windows, stop);
        long bound = lanes.sharpened(bestScore.first(), rigid ? 0 : work);
        if (bound < bestScore.first() && !rigid && windows.places() > PLACES_SOON_PROVEN) {
            // the better the plan, the narrower the windows of what is better still
            anneal(1);
        }
        long limit = bestScore.first() - 1;
        if (stop.isStopped() || bound > limit) {
            return bound;
        }
        LaneBound.Tight tight = lanes.tightest(limit);
        Windows within = tight == null ? null : windows.until(tight.latest());
        if (within == null || within.areEmpty()) {
            return limit + 1;
        }
        if (SolverLibrary.isThere() && within.places() <= PLACES_OF_USE) {
            return Math.max(bound, ask(within, tight, limit, work).bound());
        }
        anneal(work - 1);
        return bound;
    }

    private void anneal(int work) {
        long each = 1 + (long) model.stageCount * model.dayCount() + LINK_IN_STAGE_DAYS * model.linkCount();
        long plans = Math.min(MOST_PLANS_PER_WORK, STAGE_DAYS_PER_WORK / each) * work;
        offer(new Annealing(model, windows, style, stop).from(best, (int) Math.min(plans, Integer.MAX_VALUE)));
    }

    /**
     * Asks the solver for the best within a limit and follows what it finds. Where single packs spoil that, a solution
     * that leaves them room may be built instead.
     *
     * @param known of the finishes of sets of subprojects; null for nothing
     */
    private Answer ask(Windows within, LaneBound.@Nullable Tight known, long limit, int work) {
        Answer answer = solve(within, known, limit, work, false);
        if (answer.guide() != null) {
            follow(answer.guide());
            boolean better =
                    bestScore.unplaced() > 0 || (limit < Answer.NO_LIMIT && bestScore.first() > answer.bound());
            Guide guide = better && !stop.isStopped()
                    ? solve(
                                    within,
                                    known,
                                    bestScore.unplaced() > 0 ? limit : Math.min(limit, bestScore.first() - 1),
                                    work,
                                    true)
                            .guide()
                    : null;
            if (guide != null) {
                follow(guide);
            }
        }
        return answer;
    }

    private Answer solve(Windows within, LaneBound.@Nullable Tight known, long limit, int work, boolean careful) {
        if (!careful && Rigid.fits(model)) {
            return new Rigid(model, within).upTo(limit, work, stop);
        }
        Relaxed relaxed = new Relaxed(model, within, style, known, careful);
        return relaxed.isTooLarge() ? Answer.NONE : relaxed.upTo(limit, work, stop);
    }

    /** Builds plans as the guide suggests, and in its order; with and without the trips that it leaves out. */
    private void follow(Guide guide) {
        double[] priority = new double[model.stageCount];
        for (int s = 0; s < priority.length; s++) {
            List<Block> blocks = guide.blocks()[s];
            int start = blocks == null ? 0 : blocks.getFirst().day();
            priority[s] = 1000.0 * (model.dayCount() - start) - windows.latestStartDay(s);
        }
        for (Fetching fetching : Fetching.values()) {
            if (stop.isStopped()) {
                return;
            }
            Genes open = Genes.of(priority, model.tripCount(), fetching);
            offer(open.guidedBy(guide));
            offer(open);
            Genes closed = open.copy();
            System.arraycopy(guide.closedTrip(), 0, closed.closedTrip(), 0, guide.closedTrip().length);
            offer(closed.guidedBy(guide));
            offer(closed);
        }
    }

    /** What breaks ties is not in the question put to the solver: leaves out trips while nothing is lost by it. */
    private void leaveOutTrips() {
        boolean gained = true;
        for (int round = 0; gained && round < MOST_ROUNDS; round++) {
            Score before = bestScore;
            for (int t = model.tripCount() - 1; t >= 0 && !stop.isStopped(); t--) {
                if (!best.closedTrip()[t]) {
                    Genes without = best.copy();
                    without.closedTrip()[t] = true;
                    offer(without);
                }
            }
            gained = bestScore.compareTo(before) < 0;
        }
    }

    private void offer(Genes genes) {
        Score score = score(genes);
        if (score.compareTo(bestScore) < 0) {
            best = genes;
            bestScore = score;
        }
    }

    /** Over the subprojects the weight times the least days from the status date to the finish. */
    private long weightedLeastDays() {
        long sum = 0;
        for (int lane = 0; lane < model.laneIndex.size(); lane++) {
            int day = windows.earliestFinishOfLane(lane);
            if (day != Windows.NOTHING_LEFT) {
                sum += model.weight(lane) * (model.dayEpoch[day] - model.statusEpoch + 1L);
            }
        }
        return sum;
    }
}
