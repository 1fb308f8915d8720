package org.firmset.plan.search;

import java.util.List;
import java.util.SplittableRandom;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;

/**
 * Goes on from a good plan where the problem is too large for the solver: small changes, of which worse ones are kept less
 * and less often. Only the last stage of a subproject counts for what the owner wants; how early the other stages lie tells
 * good plans from better ones before that shows. Counted in plans, never in seconds.
 */
final class Annealing {
    private static final long SEED = 7;
    /** How much worse a plan may be at first, and in the end, as a share of the plan it began with. */
    private static final double HOT = 0.004;

    private static final double COLD = 0.0003;
    private static final double WEIGHT_OF_ALL_STAGES = 0.12;
    private static final double MUCH = 1e9;

    private final Model model;
    private final Style style;
    private final Builder builder;
    private final Variations variations;
    private final SplittableRandom random = new SplittableRandom(SEED);
    private final Stop stop;
    private double firstAtStart;
    private double stagesAtStart;

    Annealing(Model model, Windows windows, Style style, Stop stop) {
        this.model = model;
        this.style = style;
        this.stop = stop;
        builder = new Builder(model, stop);
        variations = new Variations(model, windows, random);
    }

    /** The best plan met among so many. */
    Genes from(Genes start, int plans) {
        Genes best = start.copy();
        Draft draft = builder.build(best);
        Score bestScore = Score.of(draft, builder.ledger(), style);
        firstAtStart = Math.max(1, bestScore.first());
        stagesAtStart = Math.max(1, stages(draft));
        Genes at = best;
        double atEnergy = energy(bestScore, draft);
        List<Integer> atUnplaced = draft.unplaced;
        for (int i = 0; i < plans && !stop.isStopped(); i++) {
            double heat = HOT * StrictMath.pow(COLD / HOT, i / (double) plans);
            Genes next = variations.of(at, atUnplaced);
            draft = builder.build(next);
            Score score = Score.of(draft, builder.ledger(), style);
            double energy = energy(score, draft);
            if (energy <= atEnergy || random.nextDouble() < StrictMath.exp((atEnergy - energy) / heat)) {
                at = next;
                atEnergy = energy;
                atUnplaced = draft.unplaced;
            }
            if (score.compareTo(bestScore) < 0) {
                best = next.copy();
                bestScore = score;
            }
        }
        return best;
    }

    private double energy(Score score, Draft draft) {
        return MUCH * (score.unplaced() + (double) score.over())
                + score.first() / firstAtStart
                + WEIGHT_OF_ALL_STAGES * stages(draft) / stagesAtStart;
    }

    private double stages(Draft draft) {
        double sum = 0;
        for (int s = 0; s < model.stageCount; s++) {
            if (draft.isPlaced(s)) {
                sum += (double) model.weight(model.laneOf[s]) * (draft.finishEpoch(s) - model.statusEpoch);
            }
        }
        return sum;
    }
}
