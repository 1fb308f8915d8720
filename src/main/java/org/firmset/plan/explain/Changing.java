package org.firmset.plan.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Need;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Stage;
import org.firmset.plan.ToolUse;
import org.firmset.plan.Trip;
import org.firmset.plan.Wait;

/** Makes a single change in a problem. */
final class Changing {
    private final PlanningProblem.Parts draft;
    private final PlanningProblem.Parts goal;
    private final Pair pair;

    Changing(PlanningProblem problem, Pair pair) {
        this.pair = pair;
        draft = new PlanningProblem.Parts(problem);
        goal = new PlanningProblem.Parts(pair.goal());
    }

    /** @throws IllegalArgumentException when the change contradicts the rest of the problem */
    PlanningProblem change(ChangeKind kind, String id) {
        switch (kind) {
            case TIME_WENT_ON -> new Passing(draft, new PlanningProblem.Parts(pair.start()), goal).apply();
            case TRIP_ADDED, TRIP_CHANGED -> trip(id);
            case TRIP_GONE -> Part.TRIPS.remove(draft, t -> t.id().equals(id));
            case STAGE_ADDED -> addStage(id);
            case STAGE_GONE -> removeStage(id);
            case STAGE_CHANGED -> changeStage(id);
            case WAIT_ADDED, WAIT_GONE, WAIT_CHANGED -> Part.WAITS.take(draft, goal, id);
            case PINS_CHANGED -> Part.PINS.take(draft, goal, id);
            case DRY_STORAGE_CHANGED -> dryStorage();
            case POWER_CHANGED -> power();
            case STOCK_CHANGED -> Passing.takeStock(draft, goal);
            case SPENDING_CHANGED -> draft.spending = goal.spending;
            case TOOL_ADDED, TOOL_GONE, TOOL_CHANGED -> Part.TOOLS.take(draft, goal, id);
            case OFFER_ADDED, OFFER_GONE, OFFER_CHANGED -> offer(id);
            case SUBPROJECT_ADDED, SUBPROJECT_GONE, SUBPROJECT_CHANGED -> Part.SUBPROJECTS.take(draft, goal, id);
            case MATERIAL_ADDED, MATERIAL_GONE, MATERIAL_CHANGED -> Part.MATERIALS.take(draft, goal, id);
            case WRITTEN_OTHERWISE -> new Alike(pair.before(), pair.after()).writeAsAfter(draft);
        }
        return draft.build();
    }

    /** A trip takes the place of those on its dates that are no more. */
    private void trip(String id) {
        Set<String> known = Part.TRIPS.keys(goal);
        Part.TRIPS
                .one(goal, id)
                .ifPresent(taken -> Part.TRIPS.remove(draft, t -> !known.contains(t.id()) && overlap(t, taken)));
        Part.TRIPS.take(draft, goal, id);
        List<Trip> sorted = new ArrayList<>(draft.trips);
        sorted.sort(Comparator.comparing(Trip::firstDate));
        draft.trips = sorted;
    }

    static boolean overlap(Trip one, Trip other) {
        return !one.firstDate().isAfter(other.lastDate()) && !other.firstDate().isAfter(one.lastDate());
    }

    private void addStage(String id) {
        Part.STAGES.take(draft, goal, id);
        Part.STAGES.one(draft, id).ifPresent(this::bringWhatItNames);
        Set<String> stages = Part.STAGES.keys(draft);
        List<String> waits = goal.waits.stream()
                .filter(w -> names(w, id) && stages.contains(w.from()) && stages.contains(w.to()))
                .map(Wait::id)
                .toList();
        Part.WAITS.bring(draft, goal, waits);
        Part.PINS.bring(draft, goal, List.of(id));
        Part.FORMER.bring(draft, goal, List.of(id));
    }

    private void bringWhatItNames(Stage stage) {
        Part.SUBPROJECTS.bring(draft, goal, List.of(stage.subproject()));
        Part.MATERIALS.bring(
                draft, goal, stage.needs().stream().map(Need::material).toList());
        Part.TOOLS.bring(draft, goal, stage.tools().stream().map(ToolUse::tool).toList());
    }

    private void removeStage(String id) {
        Part.STAGES.remove(draft, s -> s.id().equals(id));
        Part.WAITS.remove(draft, w -> names(w, id));
        Part.PINS.remove(draft, p -> p.stage().equals(id));
        Part.FORMER.remove(draft, f -> f.stage().equals(id));
    }

    private static boolean names(Wait wait, String stage) {
        return wait.from().equals(stage) || wait.to().equals(stage);
    }

    private void changeStage(String id) {
        Optional<Stage> was = Part.STAGES.one(new PlanningProblem.Parts(pair.aged()), id);
        Optional<Stage> is = Part.STAGES.one(goal, id);
        if (was.isPresent() && is.isPresent()) {
            Part.STAGES.replace(draft, s -> s.id().equals(id) ? StageMerge.merge(s, was.get(), is.get()) : s);
            Part.STAGES.one(draft, id).ifPresent(this::bringWhatItNames);
            if (is.get().finished() && !was.get().finished()) {
                Part.WAITS.replace(draft, w -> w.from().equals(id) ? Passing.afterFinish(w, goal) : w);
            }
        }
    }

    private void offer(String id) {
        Part.OFFERS.take(draft, goal, id);
        Part.OFFERS.one(draft, id).map(DeliveryOffer::materials).ifPresent(m -> Part.MATERIALS.bring(draft, goal, m));
    }

    private void dryStorage() {
        draft.site = draft.site.withDryStorage(goal.site.dryStorageMillilitres());
    }

    private void power() {
        draft.site = draft.site.withPower(goal.site.power());
    }
}
