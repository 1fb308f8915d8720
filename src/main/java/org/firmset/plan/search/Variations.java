package org.firmset.plan.search;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Small changes to the order of a plan's stages and to what it leaves out. */
final class Variations {
    private final Model model;
    private final Windows windows;
    private final SplittableRandom random;

    Variations(Model model, Windows windows, SplittableRandom random) {
        this.model = model;
        this.windows = windows;
        this.random = random;
    }

    /**
     * One of them by chance.
     *
     * @param unplacedBefore stages that found no place in the plan it comes from
     */
    Genes of(Genes from, List<Integer> unplacedBefore) {
        Genes genes = from.copy();
        double[] priority = genes.priority();
        forgetDelays(genes.leastFinish());
        unplacedBefore.forEach(s -> genes.leastFinish()[s] = Genes.NO_LEAST);
        if (!unplacedBefore.isEmpty() && random.nextBoolean()) {
            raiseAllBefore(
                    unplacedBefore.get(random.nextInt(unplacedBefore.size())), priority, random.nextDouble() * 100);
            return genes;
        }
        if (genes.lavish() && random.nextInt(4) == 0) {
            return genes.lavish(false);
        }
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
            return genes.with(Fetching.values()[random.nextInt(Fetching.values().length)]);
        }
        return genes;
    }

    /** A delay that an earlier order asked for may not be needed any more. */
    private void forgetDelays(int[] leastFinish) {
        int kind = random.nextInt(20);
        if (kind == 0) {
            Arrays.fill(leastFinish, Genes.NO_LEAST);
        } else if (kind < 6) {
            leastFinish[random.nextInt(leastFinish.length)] = Genes.NO_LEAST;
        }
    }

    /** A stage without a place and everything before it go ahead of the rest. */
    void raiseAllBefore(int s, double[] priority, double raise) {
        boolean[] raised = new boolean[priority.length];
        raised[s] = true;
        for (int x : windows.order().reversed()) {
            if (raised[x]) {
                priority[x] += raise;
                model.before.get(x).forEach(l -> raised[l.from] = true);
            }
        }
    }

    /** A stage and one chain of those before it go ahead together. */
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
}
