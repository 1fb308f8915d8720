package org.firmset.plan.explain;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Material;
import org.firmset.plan.Pin;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Stage;
import org.firmset.plan.StockLot;
import org.firmset.plan.Trip;
import org.firmset.plan.Wait;

/**
 * What happens to a problem when time goes on, all of it together: without the work that was done on them, trips that are
 * over would be nothing but lost.
 */
final class Passing {
    private final PlanningProblem.Parts draft;
    private final PlanningProblem.Parts was;
    private final PlanningProblem.Parts is;
    private final LocalDate date;

    Passing(PlanningProblem.Parts draft, PlanningProblem.Parts was, PlanningProblem.Parts is) {
        this.draft = draft;
        this.was = was;
        this.is = is;
        date = is.statusDate;
    }

    void apply() {
        draft.statusDate = date;
        trips();
        if (date.isAfter(was.statusDate)) {
            Part.WAITS.replace(draft, this::known);
            Part.STAGES.replace(draft, this::worked);
            Part.PINS.remove(draft, this::over);
        }
        takeStock(draft, is);
        Part.MATERIALS.replace(draft, this::available);
        Part.OFFERS.replace(draft, this::available);
    }

    private void trips() {
        List<Trip> left = new ArrayList<>();
        for (Trip trip : draft.trips) {
            if (trip.firstDate().isBefore(date)) {
                rest(trip).ifPresent(left::add);
            } else {
                left.add(trip);
            }
        }
        draft.trips = left;
    }

    /** What is left of a trip that goes on, if the problem after knows it. */
    private Optional<Trip> rest(Trip trip) {
        List<SiteDay> days =
                trip.days().stream().filter(d -> !d.date().isBefore(date)).toList();
        if (days.isEmpty()) {
            return Optional.empty();
        }
        Optional<Trip> same = is.trips.stream()
                .filter(t -> t.firstDate().equals(days.getFirst().date())
                        && t.lastDate().equals(trip.lastDate()))
                .filter(t -> t.id().equals(trip.id())
                        || Part.TRIPS.under(draft, t.id()).isEmpty())
                .findFirst();
        return same.or(() -> Part.TRIPS.one(is, trip.id()).map(t -> cut(trip, days)));
    }

    private static Trip cut(Trip trip, List<SiteDay> days) {
        return trip.withDays(days);
    }

    private Stage worked(Stage stage) {
        Optional<Stage> before = Part.STAGES.one(was, stage.id());
        Optional<Stage> after = Part.STAGES.one(is, stage.id());
        if (before.isEmpty() || after.isEmpty()) {
            return stage;
        }
        return StageMerge.merge(stage, before.get(), StageMerge.worked(before.get(), after.get()));
    }

    private Wait known(Wait wait) {
        boolean finishedSince = !isFinished(was, wait.from()) && isFinished(is, wait.from());
        return finishedSince ? afterFinish(wait, is) : wait;
    }

    /** Once the stage before is finished, a cure has a number of days instead of a table. */
    static Wait afterFinish(Wait wait, PlanningProblem.Parts is) {
        return Part.WAITS
                .one(is, wait.id())
                .filter(w -> w.from().equals(wait.from()))
                .map(w -> Alike.withLeast(wait, w.least()))
                .orElse(wait);
    }

    private static boolean isFinished(PlanningProblem.Parts in, String stage) {
        return Part.STAGES.one(in, stage).map(Stage::finished).orElse(false);
    }

    private boolean over(Pin pin) {
        return !is.pins.contains(pin) && pin.dates().stream().allMatch(d -> d.isBefore(date));
    }

    /** Also brings the materials of which there was none before. */
    static void takeStock(PlanningProblem.Parts draft, PlanningProblem.Parts is) {
        draft.site = draft.site.withStock(is.site.stock());
        Set<String> stored = is.site.stock().stream().map(StockLot::material).collect(Collectors.toSet());
        Part.MATERIALS.bring(draft, is, stored);
    }

    private Material available(Material material) {
        boolean follows = Part.MATERIALS
                .one(was, material.id())
                .flatMap(m ->
                        Part.MATERIALS.one(is, material.id()).map(n -> follows(m.availableFrom(), n.availableFrom())))
                .orElse(false);
        return follows ? from(material, later(material.availableFrom())) : material;
    }

    private static Material from(Material material, LocalDate availableFrom) {
        return new Material(
                material.id(),
                material.name(),
                material.grams(),
                material.millilitres(),
                material.longestMillimetres(),
                material.dry(),
                material.shelfLifeDays(),
                availableFrom,
                material.cents());
    }

    private DeliveryOffer available(DeliveryOffer offer) {
        boolean follows = Part.OFFERS
                .one(was, offer.id())
                .flatMap(o -> Part.OFFERS.one(is, offer.id()).map(n -> follows(o.earliest(), n.earliest())))
                .orElse(false);
        return follows ? offer.withEarliest(later(offer.earliest())) : offer;
    }

    /** Whether a date moved just as the status date did, as one that is counted from it does. */
    private boolean follows(LocalDate before, LocalDate after) {
        return after.equals(later(before));
    }

    private LocalDate later(LocalDate before) {
        return before.plusDays(date.toEpochDay() - was.statusDate.toEpochDay());
    }
}
