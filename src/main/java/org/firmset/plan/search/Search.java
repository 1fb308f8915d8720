package org.firmset.plan.search;

import java.util.SplittableRandom;
import org.firmset.plan.Effort;
import org.firmset.plan.Progress;

/**
 * Looks for a better order of the stages: first by rules of thumb, then by small changes to the best order, of which
 * worse ones are kept for a while so as not to be stuck. Counted in plans, never in seconds.
 */
final class Search {
    private final Model model;
    private final Builder builder;
    private final SplittableRandom random;
    private final double[] tail;
    private Genes best;
    private Score bestScore;
    private final Progress progress;
    private final int plansInAll;
    private int plansLeft;

    Search(Model model, Windows windows, Effort effort, Progress progress) {
        this.progress = progress;
        plansInAll = effort.plans();
        this.model = model;
        builder = new Builder(model);
        random = new SplittableRandom(effort.seed());
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
            double behind = model.problem.subprojects().get(model.laneOf[s]).weight() * 0.01;
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
        return new Genes(priority.clone(), new boolean[model.tripCount()], fetching);
    }

    private Score score(Genes genes) {
        plansLeft--;
        progress.built(plansInAll - plansLeft, plansInAll);
        Draft draft = builder.build(genes);
        return Score.of(draft, builder.ledger());
    }

    /** The best order found within the effort. */
    Genes run() {
        if (model.stageCount == 0 || model.tripCount() == 0) {
            return best;
        }
        tryRules();
        wander(plansLeft * 2 / 3);
        closeTrips();
        wander(plansLeft);
        return best;
    }

    private void tryRules() {
        for (Fetching fetching : Fetching.values()) {
            offer(genes(tail, fetching));
            offer(genes(byLane(), fetching));
        }
    }

    /** Subproject by subproject, the weightiest first. */
    private double[] byLane() {
        double[] result = new double[model.stageCount];
        for (int s = 0; s < result.length; s++) {
            result[s] = model.problem.subprojects().get(model.laneOf[s]).weight() * 1000.0 + tail[s];
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
        Genes at = best;
        Score atScore = bestScore;
        int until = Math.max(0, plansLeft - plans);
        int sinceBest = 0;
        while (plansLeft > until) {
            Genes next = changed(at);
            Score score = score(next);
            boolean take = score.compareTo(atScore) <= 0 || random.nextInt(25) == 0;
            if (take) {
                at = next;
                atScore = score;
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
                sinceBest = 0;
            }
        }
    }

    private Genes changed(Genes from) {
        Genes genes = from.copy();
        double[] priority = genes.priority();
        int kind = random.nextInt(10);
        if (kind < 5) {
            int s = random.nextInt(priority.length);
            priority[s] = priority[random.nextInt(priority.length)] + random.nextDouble() - 0.5;
        } else if (kind < 7) {
            pullChain(priority);
        } else if (kind < 8) {
            int lane = random.nextInt(model.laneIndex.size());
            double shift = (random.nextDouble() - 0.5) * 40;
            for (int s = 0; s < priority.length; s++) {
                priority[s] += model.laneOf[s] == lane ? shift : 0;
            }
        } else if (kind < 9 && genes.closedTrip().length > 0) {
            int t = random.nextInt(genes.closedTrip().length);
            genes.closedTrip()[t] = !genes.closedTrip()[t];
        } else {
            return new Genes(priority, genes.closedTrip(), Fetching.values()[random.nextInt(Fetching.values().length)]);
        }
        return genes;
    }

    /** A stage and all that comes before it go ahead together. */
    private void pullChain(double[] priority) {
        int s = random.nextInt(priority.length);
        double to = priority[random.nextInt(priority.length)] + 0.1;
        while (true) {
            priority[s] = Math.max(priority[s], to);
            var before = model.before.get(s);
            if (before.isEmpty()) {
                return;
            }
            s = before.get(random.nextInt(before.size())).from;
            to += 0.1;
        }
    }

    /** Leaves out one made trip after the other, the emptiest first, and keeps what that gains. */
    private void closeTrips() {
        boolean gained = true;
        while (gained && plansLeft > 0) {
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
                .sorted(java.util.Comparator.comparingInt(t -> work(ledger, t)))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private int work(Ledger ledger, int trip) {
        int sum = 0;
        for (int d = model.firstDayOfTrip[trip]; d <= model.lastDayOfTrip[trip]; d++) {
            sum += model.days.get(d).labourQuarters() - ledger.quartersLeft(d);
        }
        return sum;
    }
}
