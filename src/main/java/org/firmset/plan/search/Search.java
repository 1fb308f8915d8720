package org.firmset.plan.search;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.firmset.plan.Effort;
import org.firmset.plan.Progress;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;

/**
 * Looks for a better order of the stages: first by rules of thumb, then by small changes to the best order, of which
 * worse ones are kept for a while so as not to be stuck. Counted in plans, never in seconds.
 */
final class Search {
    private static final int MOST_RAISES = 25;
    private static final double DAYS_OF_RAISE = 4;

    private final Model model;
    private final Builder builder;
    private final SplittableRandom random;
    private final Variations variations;
    private final double[] tail;
    private final Windows windows;
    private final Style guide;
    private final Champion champion;
    private Genes best;
    private Score bestScore;
    /** Stages that found no place in the plan built last. */
    private List<Integer> unplaced = List.of();

    private final Progress progress;
    private final Stop stop;
    private final boolean any;
    private final int plansInAll;
    private int plansLeft;

    Search(Model model, Windows windows, Effort effort, Style guide, Champion champion, Progress progress, Stop stop) {
        this.stop = stop;
        this.guide = guide;
        this.champion = champion;
        this.progress = progress;
        this.windows = windows;
        any = effort.any();
        plansInAll = effort.plans();
        this.model = model;
        builder = new Builder(model, stop);
        random = new SplittableRandom(effort.seed());
        variations = new Variations(model, windows, random);
        plansLeft = effort.plans();
        tail = tails(windows);
        best = genes(tail, Fetching.EXTRA_RUN_FIRST);
        bestScore = score(best);
    }

    /** For each stage the least days from its start to the last finish it leads to, those of weightier lanes first. */
    private double[] tails(Windows windows) {
        double[] result = new double[model.stageCount];
        int dayQuarters = Math.max(
                1, model.days.stream().mapToInt(d -> d.labourQuarters()).max().orElse(1));
        double daysPerSiteDay = model.dayCount() < 2
                ? 1
                : (model.dayEpoch[model.dayCount() - 1] - model.dayEpoch[0] + 1) / (double) model.dayCount();
        for (int s : windows.order().reversed()) {
            double own = daysPerSiteDay * model.stage(s).labourQuarters() / dayQuarters;
            double behind = model.weight(model.laneOf[s]) * 0.01;
            for (Link link : model.after.get(s)) {
                int day = Math.min(model.dayCount() - 1, Math.max(0, windows.earliestFinishDay(s) % Windows.NONE));
                double wait = link.fromIsDone() || model.dayCount() == 0
                        ? 0
                        : link.readyEpoch(day) - (double) model.dayEpoch[day];
                behind = Math.max(behind, wait + result[link.to]);
            }
            result[s] = own + behind;
        }
        return result;
    }

    private Genes genes(double[] priority, Fetching fetching) {
        return Genes.of(priority, model.tripCount(), fetching);
    }

    private Score score(Genes genes) {
        plansLeft = stop.isStopped() ? 0 : plansLeft - 1;
        progress.built(plansInAll - plansLeft, plansInAll);
        Draft draft = builder.build(genes);
        unplaced = draft.unplaced;
        champion.offer(genes, draft, builder.ledger());
        if (any && champion.hasPlan()) {
            plansLeft = 0;
        }
        return Score.of(draft, builder.ledger(), guide);
    }

    /** Looks as far as the effort goes; what is found goes to the champion. */
    void run() {
        if (model.stageCount == 0 || model.tripCount() == 0) {
            return;
        }
        if (stop.isStopped()) {
            return;
        }
        tryRules();
        raiseWhatFoundNoPlace();
        wander(plansLeft * 2 / 3);
        closeTrips();
        wander(plansLeft);
    }

    private void tryRules() {
        tryFormer();
        for (Fetching fetching : Fetching.values()) {
            offer(genes(tail, fetching));
            offer(genes(byLatestStart(), fetching));
            offer(genes(byLane(), fetching));
            if (bestScore.unplaced() > 0) {
                offer(genes(byChoice(), fetching));
                offer(genes(tail, fetching).lavish(true));
                offer(genes(byLatestStart(), fetching).lavish(true));
            }
        }
    }

    /** In the order of the plan before; to keep to it, nothing is finished sooner than there either. */
    private void tryFormer() {
        if (model.formerFinish.length == 0) {
            return;
        }
        double[] priority = new double[model.stageCount];
        for (int s = 0; s < priority.length; s++) {
            int start = model.formerStart[s] == Model.NOT_PLANNED
                    ? windows.latestStartDay(s)
                    : model.dayFrom(model.formerStart[s]);
            priority[s] = 1000.0 * (model.dayCount() - start) + 0.01 * tail[s];
        }
        for (Fetching fetching : Fetching.values()) {
            Genes genes = genes(priority, fetching);
            if (guide == Style.LEAST_CHANGE) {
                System.arraycopy(model.formerFinish, 0, genes.leastFinish(), 0, model.stageCount);
            }
            offer(genes);
        }
    }

    /** While stages find no place: they and all before them go further ahead each time, whatever that does to others. */
    private void raiseWhatFoundNoPlace() {
        for (Fetching fetching : Fetching.values()) {
            Genes genes = genes(byLatestStart(), fetching);
            for (int i = 0; i < MOST_RAISES && bestScore.unplaced() > 0; i++) {
                offer(genes);
                genes = genes.lavish(i % 2 == 1);
                Arrays.fill(genes.leastFinish(), Genes.NO_LEAST);
                for (int s : unplaced) {
                    variations.raiseAllBefore(s, genes.priority(), DAYS_OF_RAISE);
                }
            }
        }
    }

    /** What must start soonest, if everything is still to fit in, goes first. */
    private double[] byLatestStart() {
        double[] result = new double[model.stageCount];
        for (int s = 0; s < result.length; s++) {
            int day = Math.max(0, windows.latestStartDay(s));
            result[s] = (model.dayEpoch[model.dayCount() - 1] - model.dayEpoch[day]) + 0.01 * tail[s];
        }
        return result;
    }

    /** What may be done on few days goes first, or others take those. */
    private double[] byChoice() {
        double[] result = new double[model.stageCount];
        for (int s = 0; s < result.length; s++) {
            int allowed = 0;
            for (boolean day : model.allowed[s]) {
                allowed += day ? 1 : 0;
            }
            result[s] = tail[s] - 1000.0 * allowed;
        }
        return result;
    }

    /** Subproject by subproject, the weightiest first. */
    private double[] byLane() {
        double[] result = new double[model.stageCount];
        for (int s = 0; s < result.length; s++) {
            result[s] = model.weight(model.laneOf[s]) * 1000.0 + tail[s];
        }
        return result;
    }

    private boolean offer(Genes genes) {
        if (plansLeft <= 0) {
            return false;
        }
        Score score = score(genes);
        if (score.compareTo(bestScore) < 0) {
            best = genes;
            bestScore = score;
            return true;
        }
        return false;
    }

    private void wander(int plans) {
        if (plansLeft <= 0) {
            return;
        }
        Genes at = best;
        Score atScore = bestScore;
        List<Integer> atUnplaced = unplacedIn(best);
        int until = Math.max(0, plansLeft - plans);
        int sinceBest = 0;
        while (plansLeft > until) {
            Genes next = variations.of(at, atUnplaced);
            Score score = score(next);
            boolean take = score.compareTo(atScore) <= 0 || random.nextInt(25) == 0;
            if (take) {
                at = next;
                atScore = score;
                atUnplaced = unplaced;
            }
            sinceBest++;
            if (score.compareTo(bestScore) < 0) {
                best = next;
                bestScore = score;
                sinceBest = 0;
            }
            if (sinceBest > 60) {
                at = best;
                atScore = bestScore;
                atUnplaced = unplacedIn(best);
                sinceBest = 0;
            }
        }
    }

    private List<Integer> unplacedIn(Genes genes) {
        return builder.build(genes).unplaced;
    }

    /** Leaves out one made trip after the other, the emptiest first, and keeps what that gains. */
    private void closeTrips() {
        boolean gained = true;
        while (gained && plansLeft > 0 && !stop.isStopped()) {
            gained = false;
            builder.build(best);
            for (int t : tripsByWork(builder.ledger())) {
                Genes without = best.copy();
                without.closedTrip()[t] = true;
                if (offer(without)) {
                    gained = true;
                    break;
                }
            }
        }
    }

    private int[] tripsByWork(Ledger ledger) {
        return java.util.stream.IntStream.range(0, model.tripCount())
                .filter(ledger::tripIsMade)
                .boxed()
                .sorted(java.util.Comparator.comparingLong(t -> work(ledger, t)))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private long work(Ledger ledger, int trip) {
        long sum = 0;
        for (int d = model.firstDayOfTrip[trip]; d <= model.lastDayOfTrip[trip]; d++) {
            sum += model.days.get(d).labourQuarters() - ledger.quartersLeft(d);
        }
        return sum;
    }
}
