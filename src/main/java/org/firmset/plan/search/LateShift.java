package org.firmset.plan.search;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.firmset.plan.Stage;
import org.jspecify.annotations.Nullable;

/**
 * How far each stage can slip: stages are moved to their latest, the last first, so that every subproject still finishes
 * on its date and all hours, power and supplies hold. The moved plan is the proof that the slack is there; where sharing
 * is tight there may be a little more than this finds, never less.
 */
final class LateShift {
    private final Model model;
    private final Draft draft;
    private final Ledger ledger;
    private final Placer placer;
    private final Genes genes;
    private final Windows windows;
    private final @Nullable Placement[] late;
    private final int[] laneFinish;
    private final long over;

    LateShift(Draft draft, Builder builder, Windows windows, Genes genes) {
        this.model = draft.model;
        this.draft = draft;
        this.ledger = builder.ledger();
        this.placer = builder.placer();
        this.genes = genes;
        this.windows = windows;
        late = new @Nullable Placement[model.stageCount];
        laneFinish = new int[model.laneIndex.size()];
        over = ledger.overLimit();
    }

    /** The latest placement of each stage, null for finished ones. The ledger is left as it was. */
    @Nullable
    Placement[] shift() {
        for (Placement placement : draft.placed()) {
            int lane = model.laneOf[placement.stage];
            laneFinish[lane] = Math.max(laneFinish[lane], placement.finishDay());
        }
        List<Integer> byFinish = byFinish();
        for (int s : byFinish) {
            Placement planned = draft.placement(s);
            ledger.remove(planned);
            Placement moved = latest(planned);
            ledger.add(moved);
            late[s] = moved;
        }
        for (Placement moved : late) {
            if (moved != null) {
                ledger.remove(moved);
            }
        }
        for (int s : byFinish) {
            ledger.add(draft.placement(s));
        }
        return late;
    }

    private List<Integer> byFinish() {
        int[] place = new int[model.stageCount];
        for (int i = 0; i < windows.order().size(); i++) {
            place[windows.order().get(i)] = i;
        }
        return IntStream.range(0, model.stageCount)
                .filter(draft::isPlaced)
                .boxed()
                .sorted(Comparator.comparingInt(
                                (Integer s) -> draft.placement(s).finishDay())
                        .thenComparingInt(s -> place[s])
                        .reversed())
                .toList();
    }

    private Placement latest(Placement planned) {
        int last = latestFinishDay(planned);
        int latestStart = latestStartDay(planned);
        for (int finish = last; finish > planned.finishDay(); finish--) {
            Placement moved = endingOn(planned, finish);
            if (moved != null
                    && moved.startDay() >= planned.startDay()
                    && moved.startDay() <= latestStart
                    && readyInTime(planned.stage, finish)) {
                return moved;
            }
        }
        return planned;
    }

    private int latestFinishDay(Placement planned) {
        return laneFinish[model.laneOf[planned.stage]];
    }

    /** A longest wait is kept as if the stage before stayed where it is. */
    private int latestStartDay(Placement planned) {
        int latest = model.dayCount() - 1;
        if (model.stage(planned.stage).startedOn() != null) {
            return latest;
        }
        for (Link link : model.before.get(planned.stage)) {
            if (link.hasMost()) {
                int epoch = draft.latestStartEpoch(link);
                while (latest >= 0 && model.dayEpoch[latest] > epoch) {
                    latest--;
                }
            }
        }
        return latest;
    }

    private boolean readyInTime(int s, int finishDay) {
        for (Link link : model.after.get(s)) {
            Placement next = late[link.to];
            if (next != null && link.readyEpoch(finishDay) > model.dayEpoch[next.startDay()]) {
                return false;
            }
        }
        return true;
    }

    private @Nullable Placement endingOn(Placement planned, int finish) {
        Placement moved = new Placement(planned.stage);
        boolean placed = switch (model.stage(planned.stage).layout()) {
            case SPLITTABLE -> fillBackwards(moved, finish);
            case IN_ONE_GO, UNBROKEN_DAYS -> sameBlocks(moved, planned, finish);
        };
        return placed && (keepSupplies(moved, planned) || fetchAnew(moved)) ? moved : null;
    }

    private boolean sameBlocks(Placement moved, Placement planned, int finish) {
        int shift = finish - planned.finishDay();
        for (int i = 0; i < planned.blocks.size(); i++) {
            Block block = planned.blocks.get(i);
            int day = block.day() + shift;
            boolean gap = i > 0 && model.dayEpoch[day] != model.dayEpoch[day - 1] + 1;
            if (gap || room(planned.stage, day, block.quarters()) < block.quarters()) {
                return false;
            }
            moved.blocks.add(new Block(day, block.quarters()));
        }
        return true;
    }

    private boolean fillBackwards(Placement moved, int finish) {
        Stage stage = model.stage(moved.stage);
        int least = stage.effectiveLeastBlock();
        int left = stage.labourQuarters();
        for (int d = finish; d >= 0 && left > 0; d--) {
            int quarters = room(moved.stage, d, Math.min(left, stage.mostBlockQuarters()));
            if (left - quarters > 0 && left - quarters < least) {
                quarters = left - least;
            }
            if (quarters >= least) {
                moved.blocks.addFirst(new Block(d, quarters));
                left -= quarters;
            } else if (d == finish) {
                return false;
            }
        }
        return left == 0;
    }

    private int room(int s, int day, int most) {
        boolean tripIsMade = ledger.tripIsMade(model.tripOfDay[day]);
        int room = Math.min(most, ledger.quartersLeft(day));
        boolean free = model.allowed[s][day] && tripIsMade && ledger.toolTaken(s, day) < 0;
        return free && room > 0 ? ledger.quartersByPower(s, day, room) : 0;
    }

    /** What was fetched for the stage lies on site until it is used at last. */
    private boolean keepSupplies(Placement moved, Placement planned) {
        int last = moved.finishDay();
        for (Reservation reservation : planned.reservations) {
            if (!ledger.supply.isGoodUntil(reservation, last)) {
                return false;
            }
            moved.reservations.add(new Reservation(
                    reservation.source(), reservation.bay(), reservation.material(), reservation.packs(), last));
        }
        return comeInStep(moved) && holdsWith(moved);
    }

    /** What cannot lie on site that long comes later, with runs of trips that are made anyhow. */
    private boolean fetchAnew(Placement moved) {
        moved.reservations.clear();
        return placer.fetchFor(moved, genes)
                && moved.reservations.stream().allMatch(this::comesAnyhow)
                && holdsWith(moved);
    }

    private boolean comesAnyhow(Reservation reservation) {
        Supply supply = ledger.supply;
        return supply.isLot(reservation.source()) || ledger.tripIsMade(supply.tripOf(reservation.source()));
    }

    /** Other blocks than planned may need the same packs sooner than they come. */
    private boolean comeInStep(Placement moved) {
        Stage stage = model.stage(moved.stage);
        for (int n = 0; n < stage.needs().size(); n++) {
            int done = 0;
            for (Block block : moved.blocks) {
                done += block.quarters();
                int used = stage.needs().get(n).usedWhen(done, stage.labourQuarters());
                if (used > packsBy(block.day(), model.needMaterial[moved.stage][n], moved)) {
                    return false;
                }
            }
        }
        return true;
    }

    private int packsBy(int day, int material, Placement moved) {
        LocalDate date = model.days.get(day).date();
        return moved.reservations.stream()
                .filter(r -> r.material() == material
                        && !ledger.supply.arrival(r.source()).isAfter(date))
                .mapToInt(Reservation::packs)
                .sum();
    }

    /** Each block was looked at by itself; together, and with the runs they need, they may still be too much. */
    private boolean holdsWith(Placement moved) {
        ledger.add(moved);
        boolean holds = ledger.supply.roofHolds()
                && ledger.overLimit() <= over
                && moved.blocks.stream().allMatch(b -> ledger.holds(b.day()));
        ledger.remove(moved);
        return holds;
    }
}
