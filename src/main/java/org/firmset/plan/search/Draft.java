package org.firmset.plan.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A plan by number, whole or with stages that found no place. */
final class Draft {
    final Model model;
    private final @Nullable Placement[] placements;
    final List<Integer> unplaced = new ArrayList<>();

    Draft(Model model) {
        this.model = model;
        placements = new Placement[model.stageCount];
    }

    void put(Placement placement) {
        placements[placement.stage] = placement;
    }

    boolean isPlaced(int s) {
        return placements[s] != null;
    }

    boolean isSettled(int s) {
        return placements[s] != null || model.stage(s).finished();
    }

    Placement placement(int s) {
        return Objects.requireNonNull(placements[s], "stage has no place");
    }

    int finishEpoch(int s) {
        var done = model.stage(s).finishedOn();
        return done != null ? Model.epoch(done) : model.dayEpoch[placement(s).finishDay()];
    }

    /** When the stage after a link may start; the stage before must be settled. */
    int readyEpoch(Link link) {
        return link.readyEpoch(link.fromIsDone() ? 0 : placement(link.from).finishDay());
    }

    int latestStartEpoch(Link link) {
        return link.latestEpoch(link.fromIsDone() ? 0 : finishEpoch(link.from));
    }

    List<Placement> placed() {
        List<Placement> result = new ArrayList<>();
        for (Placement placement : placements) {
            if (placement != null) {
                result.add(placement);
            }
        }
        return result;
    }
}
