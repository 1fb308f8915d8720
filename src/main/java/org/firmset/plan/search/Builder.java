package org.firmset.plan.search;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.PriorityQueue;
import org.firmset.plan.Stop;
import org.jspecify.annotations.Nullable;

/**
 * Builds a plan stage by stage: of the stages whose stages before are placed, the one with the highest priority goes to
 * its earliest place. When a longest wait cannot be kept, the stage before is asked to finish later and the plan is built
 * again.
 */
final class Builder {
    private static final int MOST_REBUILDS = 40;

    /** Over all rebuilds of a plan; only where there are very many waits are there fewer rebuilds for it. */
    private static final long MOST_WAITS_LOOKED_AT = 100_000;

    private static final double AT_ONCE = 1e12;

    private final Model model;
    private final Ledger ledger;
    private final Placer placer;
    private final int[] openBefore;
    private final int[] linksBefore;
    private final int mostRebuilds;
    private final boolean[] urgent;
    private final Stop stop;
    private int delayed = -1;

    Builder(Model model) {
        this(model, new Stop());
    }

    /** @param stop after it a plan is built once at the most, however its longest waits fare */
    Builder(Model model, Stop stop) {
        this.stop = stop;
        this.model = model;
        ledger = new Ledger(model);
        placer = new Placer(model, ledger);
        openBefore = new int[model.stageCount];
        urgent = new boolean[model.stageCount];
        linksBefore = model.before.stream()
                .mapToInt(links ->
                        (int) links.stream().filter(l -> !l.fromIsDone()).count())
                .toArray();
        mostRebuilds = (int) Math.clamp(MOST_WAITS_LOOKED_AT / Math.max(1, model.linkCount()), 1, MOST_REBUILDS);
    }

    /** The ledger of the plan built last. */
    Ledger ledger() {
        return ledger;
    }

    Placer placer() {
        return placer;
    }

    /** Raises the least finishes in the genes where longest waits ask for it. */
    Draft build(Genes genes) {
        Draft draft = buildOnce(genes);
        for (int i = 0; i < mostRebuilds && delayed >= 0 && !stop.isStopped(); i++) {
            draft = buildOnce(genes);
        }
        return draft;
    }

    private Draft buildOnce(Genes genes) {
        ledger.clear();
        ledger.purse().open(genes.lavish());
        delayed = -1;
        Draft draft = new Draft(model);
        PriorityQueue<Integer> ready = new PriorityQueue<>((a, b) -> {
            int byPriority = Double.compare(priority(genes, b), priority(genes, a));
            return byPriority != 0 ? byPriority : Integer.compare(a, b);
        });
        Arrays.fill(urgent, false);
        System.arraycopy(linksBefore, 0, openBefore, 0, openBefore.length);
        for (int s = 0; s < model.stageCount; s++) {
            if (!model.stage(s).finished() && openBefore[s] == 0) {
                ready.add(s);
            }
        }
        while (!ready.isEmpty()) {
            int s = ready.remove();
            Placement placement = placeOrDelay(s, draft, genes);
            if (placement == null) {
                if (delayed >= 0) {
                    return draftWithRest(draft);
                }
                continue;
            }
            draft.put(placement);
            release(s, ready);
        }
        return draftWithRest(draft);
    }

    private double priority(Genes genes, int s) {
        return genes.priority()[s] + (urgent[s] ? AT_ONCE : 0);
    }

    private void release(int s, PriorityQueue<Integer> ready) {
        for (Link link : model.after.get(s)) {
            if (link.hasMost()) {
                urgent[link.to] = true;
            }
            if (--openBefore[link.to] == 0 && !model.stage(link.to).finished()) {
                ready.add(link.to);
            }
        }
    }

    private Draft draftWithRest(Draft draft) {
        for (int s = 0; s < model.stageCount; s++) {
            if (!draft.isSettled(s)) {
                draft.unplaced.add(s);
            }
        }
        return draft;
    }

    private @Nullable Placement placeOrDelay(int s, Draft draft, Genes genes) {
        int from = earliest(s, draft);
        int latest = latestStart(s, draft);
        Placement given = asGiven(s, from, latest, genes);
        return given != null ? given : placeOrDelay(s, from, latest, draft, genes);
    }

    private @Nullable Placement asGiven(int s, int from, int latest, Genes genes) {
        List<Block> blocks = genes.guide() == null ? null : genes.guide().blocks()[s];
        boolean inTime = blocks != null
                && model.dayEpoch[blocks.getFirst().day()] >= from
                && model.dayEpoch[blocks.getFirst().day()] <= latest
                && model.dayEpoch[blocks.getLast().day()] >= genes.leastFinish()[s];
        return inTime ? placer.placeOn(s, Objects.requireNonNull(blocks), genes) : null;
    }

    /** A limit to what is spent that need not be kept is kept where there is a place within it. */
    private @Nullable Placement placeOrDelay(int s, int from, int latest, Draft draft, Genes genes) {
        Placement within = placeWithin(s, from, latest, draft, genes);
        if (within != null || !ledger.purse().isSoft() || genes.lavish()) {
            return within;
        }
        ledger.purse().open(true);
        Placement beyond = placeWithin(s, from, latest, draft, genes);
        ledger.purse().open(false);
        return beyond;
    }

    private @Nullable Placement placeWithin(int s, int from, int latest, Draft draft, Genes genes) {
        Placement placement = placer.place(s, new Placer.Window(from, latest, genes.leastFinish()[s]), genes);
        if (placement == null && latest < Integer.MAX_VALUE) {
            Placement late = placer.place(s, new Placer.Window(from, Integer.MAX_VALUE, genes.leastFinish()[s]), genes);
            if (late != null) {
                delayStagesBefore(s, model.dayEpoch[late.startDay()], draft, genes.leastFinish());
                ledger.remove(late);
            }
        }
        return placement;
    }

    int earliest(int s, Draft draft) {
        int from = model.statusEpoch;
        for (Link link : model.before.get(s)) {
            from = Math.max(from, draft.readyEpoch(link));
        }
        return from;
    }

    int latestStart(int s, Draft draft) {
        int latest = Integer.MAX_VALUE;
        if (model.stage(s).startedOn() == null) {
            for (Link link : model.before.get(s)) {
                if (link.hasMost()) {
                    latest = Math.min(latest, draft.latestStartEpoch(link));
                }
            }
        }
        return latest;
    }

    private void delayStagesBefore(int s, int startEpoch, Draft draft, int[] leastFinish) {
        for (Link link : model.before.get(s)) {
            boolean tooEarly = link.hasMost() && !link.fromIsDone() && draft.latestStartEpoch(link) < startEpoch;
            if (tooEarly) {
                leastFinish[link.from] = Math.max(leastFinish[link.from], startEpoch - link.source.mostDays());
                delayed = link.from;
            }
        }
    }
}
