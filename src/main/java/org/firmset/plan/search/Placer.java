package org.firmset.plan.search;

import java.util.List;
import org.firmset.plan.Layout;
import org.firmset.plan.Need;
import org.firmset.plan.Stage;
import org.jspecify.annotations.Nullable;

/** Places one stage at its earliest, given what the ledger holds; the ledger then holds it too. */
final class Placer {
    static final int ALL_THERE = -1;

    private final Model model;
    private final Ledger ledger;
    private final Fetcher fetcher;

    Placer(Model model, Ledger ledger) {
        this.model = model;
        this.ledger = ledger;
        this.fetcher = new Fetcher(model, ledger);
    }

    /**
     * Where a stage may lie.
     *
     * @param fromEpoch no block before this date
     * @param latestStartEpoch the first block not after this date
     * @param leastFinishEpoch the last block not before this date
     */
    record Window(int fromEpoch, int latestStartEpoch, int leastFinishEpoch) {}

    /** The earliest placement in the window, booked; null when there is none. */
    @Nullable
    Placement place(int s, Window window, Genes genes) {
        for (int day = model.dayFrom(window.fromEpoch());
                day < model.dayCount() && model.dayEpoch[day] <= window.latestStartEpoch();
                day++) {
            if (open(s, day, genes)) {
                Placement placement = new Placement(s);
                if (bookFrom(placement, day, genes) && isIn(window, placement)) {
                    return placement;
                }
                ledger.remove(placement);
                day = lastWithTheSame(placement, day);
            }
        }
        return null;
    }

    private boolean isIn(Window window, Placement placement) {
        return model.dayEpoch[placement.finishDay()] >= window.leastFinishEpoch()
                && model.dayEpoch[placement.startDay()] <= window.latestStartEpoch();
    }

    /** Looked for from any day up to this one, a stage would be laid as it was from the first. */
    private int lastWithTheSame(Placement placement, int from) {
        if (model.stage(placement.stage).layout() != Layout.SPLITTABLE) {
            return from;
        }
        return placement.blocks.isEmpty() ? model.dayCount() : placement.startDay();
    }

    private boolean open(int s, int day, Genes genes) {
        return model.allowed[s][day]
                && !genes.closedTrip()[model.tripOfDay[day]]
                && ledger.quartersLeft(s, day) > 0
                && ledger.toolTaken(s, day) < 0;
    }

    /** Books a placement that starts on or, for splittable stages, after this day; only a part of it when not all fits. */
    private boolean bookFrom(Placement placement, int day, Genes genes) {
        Stage stage = model.stage(placement.stage);
        return switch (stage.layout()) {
            case IN_ONE_GO -> addBlock(placement, day, stage.labourQuarters(), genes);
            case SPLITTABLE -> fill(placement, day, false, genes);
            case UNBROKEN_DAYS -> fill(placement, day, true, genes);
        };
    }

    /** The stage on just these days, booked; null when it cannot lie there. */
    @Nullable
    Placement placeOn(int s, List<Block> blocks, Genes genes) {
        Placement placement = new Placement(s);
        for (Block block : blocks) {
            if (!open(s, block.day(), genes) || !addBlock(placement, block.day(), block.quarters(), genes)) {
                ledger.remove(placement);
                return null;
            }
        }
        return placement;
    }

    private boolean fill(Placement placement, int from, boolean unbroken, Genes genes) {
        int s = placement.stage;
        int left = model.stage(s).labourQuarters();
        for (int d = from; d < model.dayCount() && left > 0; d++) {
            boolean gap = unbroken && d > from && model.dayEpoch[d] != model.dayEpoch[d - 1] + 1;
            if (gap) {
                return false;
            }
            int done = open(s, d, genes) ? addLargestBlock(placement, d, left, genes) : 0;
            if (done == 0 && unbroken) {
                return false;
            }
            left -= done;
        }
        return left == 0;
    }

    /** Quarter-hours placed: as many as the day takes, and such that what is left is no less than the least block. */
    private int addLargestBlock(Placement placement, int day, int left, Genes genes) {
        Stage stage = model.stage(placement.stage);
        int least = stage.effectiveLeastBlock();
        int room = Math.min(Math.min(left, stage.mostBlockQuarters()), ledger.quartersLeft(placement.stage, day));
        int most = roundedForRest(ledger.quartersByPower(placement.stage, day, room), left, least);
        if (most < least) {
            return 0;
        }
        if (addBlock(placement, day, most, genes)) {
            return most;
        }
        return stage.needs().isEmpty() ? 0 : addLargestSupplied(placement, day, left, least, most - 1, genes);
    }

    private static int roundedForRest(int quarters, int left, int least) {
        int rest = left - quarters;
        return rest > 0 && rest < least ? left - least : quarters;
    }

    /** The supplies do not last for all of it: if for the least at all, find how much they last for by halving. */
    private int addLargestSupplied(Placement placement, int day, int left, int least, int most, Genes genes) {
        int marks = placement.reservations.size();
        if (most < least || !addBlock(placement, day, least, genes)) {
            return 0;
        }
        undoBlock(placement, marks);
        int lasting = Halving.last(least, most + 1, quarters -> {
            boolean added = addBlock(placement, day, quarters, genes);
            if (added) {
                undoBlock(placement, marks);
            }
            return added;
        });
        int quarters = roundedForRest(lasting, left, least);
        return quarters >= least && addBlock(placement, day, quarters, genes) ? quarters : 0;
    }

    private boolean addBlock(Placement placement, int day, int quarters, Genes genes) {
        int s = placement.stage;
        if (quarters > ledger.quartersLeft(s, day) || !ledger.lasts(s, day, quarters)) {
            return false;
        }
        int marks = placement.reservations.size();
        boolean supplied = supply(placement, new Block(day, quarters), genes) == ALL_THERE && ledger.isPaid();
        if (!supplied) {
            undoBlock(placement, marks);
        }
        return supplied;
    }

    /** Books a block and fetches what it uses up; answers the material that cannot be there, or {@link #ALL_THERE}. */
    private int supply(Placement placement, Block block, Genes genes) {
        int s = placement.stage;
        int before = placement.labour();
        int whole = model.stage(s).labourQuarters();
        placement.blocks.add(block);
        ledger.addBlock(s, block);
        for (int n = 0; n < model.needMaterial[s].length; n++) {
            Need need = model.stage(s).needs().get(n);
            int packs = need.usedWhen(before + block.quarters(), whole) - need.usedWhen(before, whole);
            if (packs > 0 && !fetcher.reserve(placement, model.needMaterial[s][n], packs, block.day(), genes)) {
                return model.needMaterial[s][n];
            }
        }
        return ALL_THERE;
    }

    /** Finds supplies for blocks that are not booked, and notes them without booking; false when there are none. */
    boolean fetchFor(Placement blocks, Genes genes) {
        Placement trial = new Placement(blocks.stage);
        boolean supplied = true;
        for (Block block : blocks.blocks) {
            supplied = supplied && supply(trial, block, genes) == ALL_THERE;
        }
        ledger.remove(trial);
        if (supplied) {
            blocks.reservations.addAll(trial.reservations);
        }
        return supplied;
    }

    /** The material that keeps a first block from being done on a day; {@link #ALL_THERE} for none. Books nothing. */
    int missingMaterial(int s, Block block, Genes genes) {
        Placement trial = new Placement(s);
        int missing = supply(trial, block, genes);
        ledger.remove(trial);
        return missing;
    }

    /** Whether the month can pay for a first block and what it needs, which can be there. Books nothing. */
    boolean canBePaid(int s, Block block, Genes genes) {
        Placement trial = new Placement(s);
        boolean paid = supply(trial, block, genes) == ALL_THERE && ledger.isPaid();
        ledger.remove(trial);
        return paid;
    }

    private void undoBlock(Placement placement, int marks) {
        while (placement.reservations.size() > marks) {
            ledger.supply.remove(placement.reservations.removeLast());
        }
        ledger.removeBlock(placement.stage, placement.blocks.removeLast());
    }
}
