package org.firmset.plan.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Site;
import org.firmset.plan.Trip;

/** Finds the single changes that lead from one problem to another, in an order in which each can be made. */
public final class ProblemChanges {
    private final Pair pair;
    private final List<ProblemChange> changes = new ArrayList<>();
    private PlanningProblem reached;

    private ProblemChanges(Pair pair) {
        this.pair = pair;
        reached = pair.start();
    }

    /**
     * Made one after the other in the {@linkplain #start start}, the changes give the problem after; made in the problem
     * before, they give it but for its style, {@link PlanningProblem#former()} and
     * {@link PlanningProblem#odds()}, which are no changes.
     */
    public static List<ProblemChange> between(PlanningProblem before, PlanningProblem after) {
        return between(Pair.of(before, after));
    }

    static List<ProblemChange> between(Pair pair) {
        ProblemChanges finder = new ProblemChanges(pair);
        finder.find();
        return List.copyOf(finder.changes);
    }

    /**
     * The problem before as it is to be planned for a comparison with the one after: in the style of that, with the
     * former plan of that as far as it knows the stages, and with shut dates and tables of cures for the dates of both.
     */
    public static PlanningProblem start(PlanningProblem before, PlanningProblem after) {
        return Pair.of(before, after).start();
    }

    /** Each step looks for what the steps before it, which may carry other things along, have left to do. */
    private void find() {
        if (!reached.statusDate().equals(pair.goal().statusDate())) {
            make(ChangeKind.TIME_WENT_ON, "");
        }
        addedOrChanged(Part.SUBPROJECTS, ChangeKind.SUBPROJECT_ADDED, ChangeKind.SUBPROJECT_CHANGED);
        addedOrChanged(Part.MATERIALS, ChangeKind.MATERIAL_ADDED, ChangeKind.MATERIAL_CHANGED);
        addedOrChanged(Part.TOOLS, ChangeKind.TOOL_ADDED, ChangeKind.TOOL_CHANGED);
        trips();
        gone(Part.STAGES, ChangeKind.STAGE_GONE);
        addedOrChanged(Part.STAGES, ChangeKind.STAGE_ADDED, ChangeKind.STAGE_CHANGED);
        gone(Part.WAITS, ChangeKind.WAIT_GONE);
        addedOrChanged(Part.WAITS, ChangeKind.WAIT_ADDED, ChangeKind.WAIT_CHANGED);
        gone(Part.PINS, ChangeKind.PINS_CHANGED);
        addedOrChanged(Part.PINS, ChangeKind.PINS_CHANGED, ChangeKind.PINS_CHANGED);
        gone(Part.OFFERS, ChangeKind.OFFER_GONE);
        addedOrChanged(Part.OFFERS, ChangeKind.OFFER_ADDED, ChangeKind.OFFER_CHANGED);
        site();
        if (!Objects.equals(reached.spending(), pair.goal().spending())) {
            make(ChangeKind.SPENDING_CHANGED, "");
        }
        // What is gone can only go when nothing names it any more.
        gone(Part.MATERIALS, ChangeKind.MATERIAL_GONE);
        gone(Part.TOOLS, ChangeKind.TOOL_GONE);
        gone(Part.SUBPROJECTS, ChangeKind.SUBPROJECT_GONE);
        if (!reached.equals(pair.after())) {
            make(ChangeKind.WRITTEN_OTHERWISE, "");
        }
    }

    private void make(ChangeKind kind, String id) {
        ProblemChange change = new ProblemChange(kind, id, pair);
        reached = change.applyTo(reached);
        changes.add(change);
    }

    private void gone(Part<?> part, ChangeKind kind) {
        Set<String> kept = part.keys(new PlanningProblem.Parts(pair.goal()));
        for (String id : part.keys(new PlanningProblem.Parts(reached))) {
            if (!kept.contains(id)) {
                make(kind, id);
            }
        }
    }

    private <T> void addedOrChanged(Part<T> part, ChangeKind added, ChangeKind changed) {
        PlanningProblem.Parts goal = new PlanningProblem.Parts(pair.goal());
        for (String id : part.keys(goal)) {
            List<T> there = part.under(new PlanningProblem.Parts(reached), id);
            if (!there.equals(part.under(goal, id))) {
                make(there.isEmpty() ? added : changed, id);
            }
        }
    }

    private void site() {
        Site is = pair.goal().site();
        if (reached.site().dryStorageMillilitres() != is.dryStorageMillilitres()) {
            make(ChangeKind.DRY_STORAGE_CHANGED, "");
        }
        if (!reached.site().power().equals(is.power())) {
            make(ChangeKind.POWER_CHANGED, "");
        }
        if (!reached.site().stock().equals(is.stock())) {
            make(ChangeKind.STOCK_CHANGED, "");
        }
    }

    /** Trips that move onto the dates of others can only move when these have moved; in a circle one has to go first. */
    private void trips() {
        List<String> toDo = pair.goal().trips().stream()
                .filter(t -> !reached.trips().contains(t))
                .map(Trip::id)
                .toList();
        while (!toDo.isEmpty()) {
            List<String> left = toDo.stream().filter(id -> !makesTrip(id)).toList();
            if (left.size() == toDo.size()) {
                make(ChangeKind.TRIP_GONE, firstThere(left));
            }
            toDo = left;
        }
        gone(Part.TRIPS, ChangeKind.TRIP_GONE);
    }

    private boolean makesTrip(String id) {
        ProblemChange change = new ProblemChange(kindOfTrip(id), id, pair);
        Optional<PlanningProblem> made = change.tryOn(reached);
        made.ifPresent(problem -> {
            reached = problem;
            changes.add(change);
        });
        return made.isPresent();
    }

    /** A trip that takes the place of another with an id of its own is a change of that trip. */
    private ChangeKind kindOfTrip(String id) {
        PlanningProblem.Parts goal = new PlanningProblem.Parts(pair.goal());
        Set<String> kept = Part.TRIPS.keys(goal);
        Trip trip = Part.TRIPS.one(goal, id).orElseThrow();
        boolean there = reached.trips().stream()
                .anyMatch(t -> t.id().equals(id) || (!kept.contains(t.id()) && Changing.overlap(t, trip)));
        return there ? ChangeKind.TRIP_CHANGED : ChangeKind.TRIP_ADDED;
    }

    private String firstThere(List<String> ids) {
        return reached.trips().stream()
                .map(Trip::id)
                .filter(ids::contains)
                .findFirst()
                .orElseThrow();
    }
}
