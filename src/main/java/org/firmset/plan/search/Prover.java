package org.firmset.plan.search;

import java.util.List;
import java.util.Objects;
import org.firmset.plan.Aim;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.firmset.trade.takeoff.cutting.SolverLibrary;
import org.jspecify.annotations.Nullable;

/**
 * Asks how much better than the best plan known any plan could be. First by windows alone, then by CP-SAT on the problem
 * without its loads; the order CP-SAT finds is tried as a plan as well. Without the solver's library the simple bounds
 * serve.
 */
final class Prover {
    /** What came of it: the best plan known now, and its aim with the bound on it. */
    record Result(Genes genes, Aim aim) {}

    private final Model model;
    private final Windows windows;
    private final Style style;
    private final Builder builder;
    private Genes best;
    private Score bestScore;

    private Prover(Model model, Windows windows, Genes genes) {
        this.model = model;
        this.windows = windows;
        this.style = model.style;
        builder = new Builder(model);
        best = genes;
        bestScore = score(genes);
    }

    /**
     * @param genes of a plan in which every stage has its place
     * @param work how hard to look, in the solver's units; 0 for simple bounds only
     */
    static Result prove(Model model, Windows windows, Genes genes, int work, Stop stop) {
        return new Prover(model, windows, genes).prove(work, stop);
    }

    private Score score(Genes genes) {
        Draft draft = builder.build(genes.copy());
        return Score.of(draft, builder.ledger(), style);
    }

    private Result prove(int work, Stop stop) {
        long bound = simpleBound();
        if (bound < bestScore.first() && work > 0 && !stop.isStopped()) {
            bound = Math.max(bound, look(work, stop));
        }
        return new Result(best, new Aim(bestScore.first(), Math.min(bound, bestScore.first())));
    }

    private long simpleBound() {
        return switch (style) {
            case SOONEST -> weightedLeastDays();
            case FEWEST_TRIPS -> new Bounds(model, windows).bound().fewestTrips();
            case LEAST_MONEY -> new Bounds(model, windows).bound().leastCents();
            case LEAST_CHANGE -> 0;
        };
    }

    private long look(int work, Stop stop) {
        long known = bestScore.first();
        if (style != Style.SOONEST) {
            return SolverLibrary.isThere() ? solve(windows, known, work, stop) : 0;
        }
        LaneBound lanes = new LaneBound(model, windows);
        long bound = lanes.sharpened(known);
        if (bound >= known || stop.isStopped() || !SolverLibrary.isThere()) {
            return bound;
        }
        Windows better = new Windows(model, lanes.deadlines(known - 1));
        return better.areEmpty() ? known : Math.max(bound, solve(better, known, work, stop));
    }

    private long solve(Windows better, long known, int work, Stop stop) {
        Relaxed relaxed = new Relaxed(model, better, style);
        if (relaxed.isTooLarge()) {
            return 0;
        }
        Relaxed.Answer answer = relaxed.better(known, work, stop);
        if (answer.blocks() != null) {
            follow(Objects.requireNonNull(answer.blocks()), Objects.requireNonNull(answer.closedTrips()));
        }
        return answer.bound();
    }

    /** Builds plans with the blocks of the solution, and in its order; with and without the trips that it leaves out. */
    private void follow(@Nullable List<Block>[] blocks, boolean[] closedTrips) {
        double[] priority = new double[model.stageCount];
        for (int s = 0; s < priority.length; s++) {
            int start = blocks[s] == null ? 0 : blocks[s].getFirst().day();
            priority[s] = 1000.0 * (model.dayCount() - start) - windows.latestStartDay(s);
        }
        for (Fetching fetching : Fetching.values()) {
            Genes open = Genes.of(priority, model.tripCount(), fetching);
            offer(open.trying(blocks));
            offer(open);
            Genes closed = open.copy();
            System.arraycopy(closedTrips, 0, closed.closedTrip(), 0, closedTrips.length);
            offer(closed.trying(blocks));
            offer(closed);
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
