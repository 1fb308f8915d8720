package org.firmset.season.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Stage;
import org.firmset.measure.Cash;
import org.firmset.measure.Hours;
import org.firmset.measure.Mass;
import org.firmset.plan.GeneratorUse;
import org.firmset.plan.Load;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Trip;
import org.firmset.plan.WorkBlock;
import org.firmset.plan.check.Charging;
import org.firmset.plan.check.TripCharge;
import org.firmset.season.day.SiteSky;
import org.firmset.season.day.StageOdds;
import org.firmset.season.load.DeliveryMoney;
import org.firmset.season.load.WaterWords;
import org.firmset.season.problem.ProblemWriter;
import org.firmset.season.problem.WaterWriter;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.words.Dates;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.MassLimit;
import org.jspecify.annotations.Nullable;

/** Writes the trips of a plan: work, runs, power and money of each. */
final class TripReportWriter {
    private final Homestead homestead;
    private final PlanningProblem problem;
    private final SeasonPlan plan;
    private final List<SeasonReport.WaitPart> waits;
    private final Map<LocalDate, List<WorkBlock>> blocksByDate;
    private final Map<String, List<WorkBlock>> blocksByStage;
    private final Map<LocalDate, Long> generator = new HashMap<>();
    private final Map<String, Stage> stages;
    private final Map<String, org.firmset.plan.Stage> plannedStages;
    private final Map<String, String> subprojectNames;
    private final Map<String, org.firmset.homestead.Material> materials;
    private final DeliveryMoney deliveries;
    private final Charging charging;
    private final PowerNotes powerNotes;
    private final SiteSky sky;
    private final WaterWords water;
    private int number;

    TripReportWriter(Homestead homestead, PlanningProblem problem, SeasonPlan plan, List<SeasonReport.WaitPart> waits) {
        this.homestead = homestead;
        this.problem = problem;
        this.plan = plan;
        this.waits = waits;
        charging = new Charging(problem, plan.schedule());
        powerNotes = new PowerNotes(homestead, problem, plan.schedule());
        sky = SiteSky.of(homestead);
        deliveries = new DeliveryMoney(problem);
        water = new WaterWords(homestead, problem, plan.schedule());
        blocksByDate = plan.schedule().blocks().stream().collect(Collectors.groupingBy(WorkBlock::date));
        blocksByStage = plan.schedule().blocks().stream().collect(Collectors.groupingBy(WorkBlock::stage));
        for (GeneratorUse use : plan.schedule().generator()) {
            generator.merge(use.date(), use.wattHours(), Long::sum);
        }
        stages = homestead.stages().stream().collect(Collectors.toMap(Stage::key, Function.identity()));
        plannedStages =
                problem.stages().stream().collect(Collectors.toMap(org.firmset.plan.Stage::id, Function.identity()));
        subprojectNames = homestead.subprojects().stream().collect(Collectors.toMap(p -> p.key(), p -> p.name()));
        materials =
                WaterWriter.materials(homestead).stream().collect(Collectors.toMap(m -> m.key(), Function.identity()));
    }

    List<SeasonReport.TripPart> trips() {
        number = 0;
        List<SeasonReport.TripPart> result = new ArrayList<>();
        LocalDate since = problem.statusDate().minusDays(1);
        for (Trip trip : problem.trips()) {
            SeasonReport.TripPart part = trip(trip, since);
            result.add(part);
            since = part.made() ? trip.lastDate() : since;
        }
        return result;
    }

    private SeasonReport.TripPart trip(Trip trip, LocalDate since) {
        List<Run> runs = plan.schedule().runs().stream()
                .filter(r -> r.trip().equals(trip.id()))
                .toList();
        boolean made = !runs.isEmpty() || trip.days().stream().anyMatch(d -> blocksByDate.containsKey(d.date()));
        return new SeasonReport.TripPart(
                trip.id(),
                made ? ++number : 0,
                trip.firstDate(),
                trip.lastDate(),
                trip.days().stream().map(d -> day(d, trip, runs)).toList(),
                runs.stream().map(r -> run(r, trip)).toList(),
                made ? ready(since, trip.lastDate()) : List.of(),
                batteryLow(trip),
                water.of(trip),
                Cash.ofCents(made ? cents(trip, runs) : 0, homestead.currency()));
    }

    private long cents(Trip trip, List<Run> runs) {
        long cents = trip.cents();
        for (Run run : runs) {
            cents += switch (run.kind()) {
                case ARRIVAL -> 0;
                case EXTRA -> trip.extraRunCents();
                case DELIVERY -> deliveries.fees(run);
            };
        }
        return cents;
    }

    /** Waits that ended after the trip before and are over by the end of this one. */
    private List<String> ready(LocalDate since, LocalDate until) {
        return waits.stream()
                .filter(w -> w.ready().isAfter(w.begins()))
                .filter(w -> w.ready().isAfter(since) && !w.ready().isAfter(until))
                .map(w -> "%s, %s: %s is over, %s may start"
                        .formatted(Dates.day(w.ready()), name(w.from()), w.name(), name(w.to())))
                .toList();
    }

    private String name(String stage) {
        return Objects.requireNonNull(stages.get(stage)).name();
    }

    private SeasonReport.DayPart day(SiteDay day, Trip trip, List<Run> runs) {
        List<WorkBlock> blocks = blocksByDate.getOrDefault(day.date(), List.of());
        int work = blocks.stream().mapToInt(WorkBlock::quarters).sum();
        long extraRuns = runs.stream()
                .filter(r -> r.kind() == RunKind.EXTRA && r.date().equals(day.date()))
                .count();
        return new SeasonReport.DayPart(
                day.date(),
                day.people(),
                new Hours(day.labourQuarters()),
                new Hours(work + Math.toIntExact(extraRuns) * trip.extraRunQuarters()),
                Math.toIntExact(energy(day.date())),
                Math.toIntExact(generator.getOrDefault(day.date(), 0L)),
                blocks.stream().map(this::work).toList());
    }

    private long energy(LocalDate date) {
        return blocksByDate.getOrDefault(date, List.of()).stream()
                .mapToLong(b ->
                        Objects.requireNonNull(plannedStages.get(b.stage())).wattHours(b.quarters()))
                .sum();
    }

    private SeasonReport.WorkPart work(WorkBlock block) {
        Stage stage = Objects.requireNonNull(stages.get(block.stage()));
        List<WorkBlock> all = blocksByStage.getOrDefault(block.stage(), List.of());
        return new SeasonReport.WorkPart(
                stage.key(),
                stage.name(),
                subprojectNames.getOrDefault(stage.subproject(), stage.subproject()),
                new Hours(block.quarters()),
                all.indexOf(block) + 1,
                all.size(),
                stage.tools(),
                stage.hazards(),
                StageOdds.on(stage, sky, block.date())
                        .map(o -> (int) Math.round(o.odds() * 100))
                        .orElse(null),
                powerNotes.note(block).orElse(null));
    }

    /** In percent of what may be used at that hour of the trip. */
    private @Nullable Integer batteryLow(Trip trip) {
        long capacity = problem.site().power().capacityWattHours();
        return charging.on(trip)
                .lowest()
                .map(hour -> percentLeft(hour, capacity))
                .orElse(null);
    }

    private static @Nullable Integer percentLeft(TripCharge.Hour hour, long capacity) {
        long usable = capacity - TripCharge.Hour.wattHours(hour.floor());
        long left = Math.max(0, TripCharge.Hour.wattHours(hour.left()));
        return usable <= 0 ? null : Math.toIntExact(left * 100 / usable);
    }

    private SeasonReport.RunPart run(Run run, Trip trip) {
        Limit nearest = nearestLimit(run, trip);
        return new SeasonReport.RunPart(
                run.kind(),
                run.date(),
                run.kind() == RunKind.DELIVERY
                        ? deliveries.offer(run).name()
                        : trip.rig().name(),
                run.loads().stream().map(l -> load(l, trip)).toList(),
                Mass.ofGrams(run.loads().stream().mapToLong(this::grams).sum()),
                nearest.name(),
                nearest.percent(),
                Mass.ofGrams(nearest.used()),
                Mass.ofGrams(nearest.limit()),
                notes(run));
    }

    private List<String> notes(Run run) {
        return run.kind() == RunKind.DELIVERY
                ? new DeliveryNotes(homestead)
                        .of(
                                run,
                                deliveries.offer(run),
                                deliveries.goods(run),
                                Mass.ofGrams(run.loads().stream()
                                        .mapToLong(this::grams)
                                        .sum()))
                : List.of();
    }

    private SeasonReport.LoadPart load(Load load, Trip trip) {
        var material = Objects.requireNonNull(materials.get(load.material()));
        String place = trip.rig().bays().stream()
                .filter(b -> b.id().equals(load.bay()))
                .map(Bay::name)
                .findFirst()
                .orElse("delivery");
        return new SeasonReport.LoadPart(
                material.key(), material.name(), material.pack(), load.packs(), Mass.ofGrams(grams(load)), place);
    }

    private long grams(Load load) {
        var material = Objects.requireNonNull(materials.get(load.material()));
        return ProblemWriter.thousandths(material.mass()) * load.packs();
    }

    private Limit nearestLimit(Run run, Trip trip) {
        if (run.kind() == RunKind.DELIVERY) {
            long used = run.loads().stream().mapToLong(this::grams).sum();
            return new Limit(
                    "delivery by " + deliveries.offer(run).name(),
                    used,
                    deliveries.offer(run).grams());
        }
        return trip.rig().limits().stream()
                .map(l -> new Limit(l.name(), counted(run, l), l.grams()))
                .max(java.util.Comparator.comparingInt(Limit::percent))
                .orElseThrow();
    }

    private long counted(Run run, MassLimit limit) {
        return Math.ceilDiv(
                run.loads().stream()
                        .mapToLong(l -> grams(l) * limit.shareOf(l.bay()))
                        .sum(),
                1000L);
    }

    private record Limit(String name, long used, long limit) {
        int percent() {
            return limit == 0 ? 100 : Math.toIntExact(used * 100 / limit);
        }
    }
}
