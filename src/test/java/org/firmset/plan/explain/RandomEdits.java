package org.firmset.plan.explain;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Former;
import org.firmset.plan.Layout;
import org.firmset.plan.LeastWait;
import org.firmset.plan.Material;
import org.firmset.plan.Need;
import org.firmset.plan.Pin;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.PowerSupply;
import org.firmset.plan.Shut;
import org.firmset.plan.Site;
import org.firmset.plan.SiteDay;
import org.firmset.plan.SpendingLimit;
import org.firmset.plan.Stage;
import org.firmset.plan.StockLot;
import org.firmset.plan.Style;
import org.firmset.plan.Subproject;
import org.firmset.plan.Tool;
import org.firmset.plan.Trip;
import org.firmset.plan.Wait;
import org.firmset.plan.WaitKind;
import org.jspecify.annotations.Nullable;

/** Changes a problem by chance, as its owners and time might. */
final class RandomEdits {
    private final SplittableRandom random;
    private int made;

    RandomEdits(long seed) {
        random = new SplittableRandom(seed);
    }

    /** An edit that the problem refuses is left out. */
    PlanningProblem edit(PlanningProblem problem, int times) {
        PlanningProblem edited = problem;
        for (int i = 0; i < times; i++) {
            PlanningProblem.Parts draft = new PlanningProblem.Parts(edited);
            once(draft);
            try {
                edited = draft.build();
            } catch (IllegalArgumentException refused) {
                made++;
            }
        }
        return edited;
    }

    private void once(PlanningProblem.Parts d) {
        made++;
        switch (random.nextInt(24)) {
            case 0, 1 -> timeGoesOn(d);
            case 2 -> d.trips = without(d.trips);
            case 3 -> d.trips = with(d.trips, this::busier);
            case 4 -> d.trips = with(d.trips, t -> moved(t, between(-4, 4), t.id()));
            case 5 -> d.trips = with(d.trips, t -> moved(t, between(-2, 2), "trip of edit " + made));
            case 6 -> swapTwoTrips(d);
            case 7, 8 -> addStage(d);
            case 9, 10 -> removeStage(d);
            case 11, 12 -> d.stages = with(d.stages, s -> changed(s, d));
            case 13 -> d.waits = without(d.waits);
            case 14 -> addWait(d);
            case 15 -> d.waits = with(d.waits, this::longer);
            case 16 ->
                d.pins = chance()
                        ? without(d.pins)
                        : plus(d.pins, pin(one(d.stages).id()));
            case 17 -> material(d);
            case 18 -> d.offers = chance() ? without(d.offers) : with(d.offers, this::dearer);
            case 19 -> site(d);
            case 20 -> tools(d);
            case 21 -> d.spending = chance() ? null : new SpendingLimit(between(1, 9) * 1000L, chance());
            case 22 -> subprojects(d);
            default -> otherwise(d);
        }
    }

    private void timeGoesOn(PlanningProblem.Parts d) {
        int days = between(1, 25);
        LocalDate date = d.statusDate.plusDays(days);
        d.statusDate = date;
        d.trips = d.trips.stream()
                .filter(t -> !t.lastDate().isBefore(date))
                .map(t -> rest(t, date))
                .toList();
        d.stages = d.stages.stream().map(s -> chance() ? s : worked(s, date)).toList();
        if (!d.materials.isEmpty()) {
            d.site = stocked(d, chance() ? List.of() : List.of(lot(d)));
        }
        d.materials = chance()
                ? d.materials
                : d.materials.stream()
                        .map(m -> from(m, m.availableFrom().plusDays(days)))
                        .toList();
    }

    private Trip rest(Trip trip, LocalDate date) {
        List<SiteDay> days =
                trip.days().stream().filter(x -> !x.date().isBefore(date)).toList();
        String id = days.size() == trip.days().size() || chance() ? trip.id() : "rest of edit " + made;
        return new Trip(id, days, trip.rig(), trip.cents(), 0, 0, 0);
    }

    private Stage worked(Stage s, LocalDate date) {
        if (s.finished()) {
            return s;
        }
        int left = random.nextInt(s.labourQuarters() + 1);
        LocalDate day = date.minusDays(1);
        LocalDate started = s.startedOn() == null ? day : s.startedOn();
        List<Need> needs = left == 0 ? List.of() : s.needs();
        return stage(s, s.subproject(), left, s.crew(), needs, started, left == 0 ? day : null);
    }

    private Stage changed(Stage s, PlanningProblem.Parts d) {
        LocalDate day = d.statusDate.plusDays(between(0, 60));
        return switch (random.nextInt(5)) {
            case 0 ->
                stage(s, s.subproject(), s.labourQuarters() + between(1, 40), s.crew(), s.needs(), s.startedOn(), null);
            case 1 -> s.withCrew(s.crew() + 1);
            case 2 -> s.withShut(List.of(new Shut(day, day.plusDays(between(0, 20)), "it is wet")));
            case 3 ->
                s.withNeeds(
                        d.materials.isEmpty()
                                ? List.of()
                                : List.of(new Need(one(d.materials).id(), between(1, 9))));
            default ->
                stage(
                        s,
                        one(d.subprojects).id(),
                        s.labourQuarters(),
                        s.crew(),
                        s.needs(),
                        s.startedOn(),
                        s.finishedOn());
        };
    }

    private static Stage stage(
            Stage s,
            String subproject,
            int labour,
            int crew,
            List<Need> needs,
            @Nullable LocalDate startedOn,
            @Nullable LocalDate finishedOn) {
        return new Stage(
                s.id(),
                s.name(),
                subproject,
                labour,
                crew,
                s.layout(),
                s.leastBlockQuarters(),
                s.mostBlockQuarters(),
                s.wattHoursPerHour(),
                s.needsLight(),
                s.shut(),
                needs,
                s.tools(),
                startedOn,
                finishedOn);
    }

    private void addStage(PlanningProblem.Parts d) {
        String id = "stage of edit " + made;
        String other = one(d.stages).id();
        Stage stage = new Stage(
                id,
                "New",
                one(d.subprojects).id(),
                between(1, 30),
                1,
                Layout.SPLITTABLE,
                0,
                Stage.NO_LIMIT,
                0,
                true,
                List.of(),
                List.of(),
                List.of(),
                null,
                null);
        d.stages = plus(d.stages, stage);
        d.waits = plus(d.waits, wait(id, other));
        if (chance()) {
            d.pins = plus(d.pins, pin(id));
            d.former = plus(d.former, new Former(id, d.statusDate, d.statusDate.plusDays(3)));
        }
    }

    private void removeStage(PlanningProblem.Parts d) {
        if (d.stages.size() > 1) {
            String id = one(d.stages).id();
            Part.STAGES.remove(d, s -> s.id().equals(id));
            Part.WAITS.remove(d, w -> w.from().equals(id) || w.to().equals(id));
            Part.PINS.remove(d, p -> p.stage().equals(id));
            Part.FORMER.remove(d, f -> f.stage().equals(id));
        }
    }

    private void addWait(PlanningProblem.Parts d) {
        d.waits = plus(d.waits, wait(one(d.stages).id(), one(d.stages).id()));
    }

    private Wait wait(String from, String to) {
        String other = from.equals(to) ? from + " again" : to;
        LeastWait least = chance()
                ? new LeastWait.Days(between(0, 20))
                : new LeastWait.ByFinishDate(
                        LocalDate.parse("2027-05-01").plusDays(between(0, 40)),
                        Collections.nCopies(between(30, 200), 7));
        return new Wait("wait of edit " + made, "New", WaitKind.CURE, from, other, least, Wait.NO_LIMIT);
    }

    private Wait longer(Wait w) {
        LeastWait least = w.least() instanceof LeastWait.ByFinishDate table
                ? new LeastWait.ByFinishDate(table.first().plusDays(between(1, 9)), table.days())
                : new LeastWait.Days(between(0, 30));
        return Alike.withLeast(w, least);
    }

    private Pin pin(String stage) {
        return new Pin(stage, Set.of(LocalDate.parse("2027-05-10").plusDays(between(0, 60))), "edit " + made);
    }

    private void material(PlanningProblem.Parts d) {
        switch (random.nextInt(3)) {
            case 0 -> d.materials = without(d.materials);
            case 1 ->
                d.materials = with(d.materials, m -> from(m, m.availableFrom().plusDays(between(1, 30))));
            default -> {
                String id = "material of edit " + made;
                d.materials = plus(d.materials, new Material(id, "New", 1000, 1000, 100, true, 30, d.statusDate, 100));
                d.stages = with(d.stages, s -> s.withNeeds(List.of(new Need(id, between(1, 5)))));
            }
        }
    }

    private static Material from(Material m, LocalDate date) {
        return new Material(
                m.id(),
                m.name(),
                m.grams(),
                m.millilitres(),
                m.longestMillimetres(),
                m.dry(),
                m.shelfLifeDays(),
                date,
                m.cents());
    }

    private DeliveryOffer dearer(DeliveryOffer o) {
        return o.withEarliest(o.earliest().plusDays(3)).withFee(o.cents() + 500);
    }

    private void site(PlanningProblem.Parts d) {
        Site s = d.site;
        d.site = switch (random.nextInt(3)) {
            case 0 -> s.withDryStorage(s.dryStorageMillilitres() / 2);
            case 1 ->
                s.withPower(new PowerSupply(
                        s.power().capacityWattHours() + 500, 95, 90, new PowerSupply.Generator(1000, 4000, 9, 90)));
            default -> stocked(d, d.materials.isEmpty() ? List.of() : List.of(lot(d), lot(d)));
        };
    }

    private static Site stocked(PlanningProblem.Parts d, List<StockLot> stock) {
        return d.site.withStock(stock);
    }

    private StockLot lot(PlanningProblem.Parts d) {
        return new StockLot(one(d.materials).id(), between(1, 9), d.statusDate.minusDays(1));
    }

    private void tools(PlanningProblem.Parts d) {
        d.tools = switch (random.nextInt(3)) {
            case 0 -> without(d.tools);
            case 1 -> plus(d.tools, new Tool("tool of edit " + made, "New", 1));
            default -> with(d.tools, t -> new Tool(t.id(), t.name(), t.count() + 1));
        };
    }

    private void subprojects(PlanningProblem.Parts d) {
        d.subprojects = switch (random.nextInt(3)) {
            case 0 -> without(d.subprojects);
            case 1 -> plus(d.subprojects, new Subproject("subproject of edit " + made, "New", 2, null));
            default -> with(d.subprojects, p -> new Subproject(p.id(), p.name(), between(1, 9), p.target()));
        };
    }

    private void otherwise(PlanningProblem.Parts d) {
        d.stages = shuffled(d.stages);
        d.waits = shuffled(d.waits);
        d.pins = shuffled(d.pins);
        d.former = shuffled(d.former);
        d.style = one(List.of(Style.values()));
    }

    private void swapTwoTrips(PlanningProblem.Parts d) {
        if (d.trips.size() > 1) {
            int at = random.nextInt(d.trips.size() - 1);
            List<Trip> trips = new ArrayList<>(d.trips);
            Trip one = trips.get(at);
            Trip two = trips.get(at + 1);
            trips.set(at, named(one, two.id()));
            trips.set(at + 1, named(two, one.id()));
            d.trips = trips;
        }
    }

    private static Trip named(Trip t, String id) {
        return moved(t, 0, id);
    }

    private static Trip moved(Trip t, int by, String id) {
        List<SiteDay> days = t.days().stream()
                .map(x -> new SiteDay(
                        x.date().plusDays(by), x.labourQuarters(), x.lightQuarters(), x.people(), x.power()))
                .toList();
        return new Trip(
                id,
                days,
                t.rig(),
                t.cents(),
                t.mostExtraRuns(),
                t.extraRunQuarters(),
                t.extraRunCents(),
                t.startWattHours());
    }

    private Trip busier(Trip t) {
        int more = between(1, 20);
        List<SiteDay> days = t.days().stream()
                .map(x -> new SiteDay(
                        x.date(), x.labourQuarters() + more, x.lightQuarters() + more, x.people() + 1, x.power()))
                .toList();
        return new Trip(t.id(), days, t.rig(), t.cents(), t.mostExtraRuns(), 1, t.extraRunCents());
    }

    private interface Edit<T> {
        T of(T each);
    }

    private <T> List<T> with(List<T> list, Edit<T> edit) {
        int at = list.isEmpty() ? 0 : random.nextInt(list.size());
        return IntStream.range(0, list.size())
                .mapToObj(i -> i == at ? edit.of(list.get(i)) : list.get(i))
                .toList();
    }

    private <T> List<T> without(List<T> list) {
        List<T> left = new ArrayList<>(list);
        if (!left.isEmpty()) {
            left.remove(random.nextInt(left.size()));
        }
        return left;
    }

    private <T> List<T> plus(List<T> list, T more) {
        List<T> all = new ArrayList<>(list);
        all.add(random.nextInt(all.size() + 1), more);
        return all;
    }

    private <T> List<T> shuffled(List<T> list) {
        List<T> all = new ArrayList<>(list);
        Collections.shuffle(all, new Random(random.nextLong()));
        return all;
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    /** Both ends included. */
    private int between(int least, int most) {
        return random.nextInt(least, most + 1);
    }

    private boolean chance() {
        return random.nextBoolean();
    }
}
