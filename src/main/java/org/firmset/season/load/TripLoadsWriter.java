package org.firmset.season.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.measure.Cash;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.Schedule;
import org.firmset.plan.Trip;
import org.firmset.season.day.OpenCalendar;
import org.firmset.season.problem.OutfitWriter;
import org.firmset.season.problem.RigWriter;
import org.firmset.season.problem.WaterWriter;
import org.firmset.season.result.PlannedSeason;
import org.firmset.season.result.SeasonReport;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.Cargo;
import org.firmset.trade.haul.Outfit;
import org.firmset.trade.haul.Placement;
import org.firmset.trade.haul.Restraint;
import org.firmset.trade.haul.Stowed;
import org.firmset.trade.haul.splitting.Split;
import org.firmset.trade.haul.splitting.Splitter;
import org.jspecify.annotations.Nullable;

/** Writes what a trip carries and finds a place for every pack. */
public final class TripLoadsWriter {
    private final Homestead homestead;
    private final PlannedSeason season;
    private final PlanningProblem problem;
    private final Schedule schedule;
    private final SeasonReport.TripPart part;
    private final Trip trip;
    private final TripWork work;
    private final Map<String, Material> materials;
    private final Map<String, TripCargo.OwnUse> firstUses;
    private final Map<String, String> stages;
    private final DeliveryMoney deliveries;

    private TripLoadsWriter(Homestead homestead, PlannedSeason season, String key) {
        this.homestead = homestead;
        this.season = season;
        problem = season.problem();
        schedule = season.plan().schedule();
        part = season.report().madeTrips().stream()
                .filter(t -> t.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("trip [" + key + "] is not made in the plan"));
        trip = problem.trips().stream()
                .filter(t -> t.id().equals(key))
                .findFirst()
                .orElseThrow();
        work = new TripWork(problem, schedule);
        materials =
                WaterWriter.materials(homestead).stream().collect(Collectors.toMap(Material::key, Function.identity()));
        firstUses = TripCargo.uses(problem, schedule, work, trip).stream()
                .collect(Collectors.toMap(TripCargo.OwnUse::material, Function.identity(), (first, later) -> first));
        stages = homestead.stages().stream().collect(Collectors.toMap(s -> s.key(), s -> s.name()));
        deliveries = new DeliveryMoney(problem);
    }

    /**
     * @param homestead what {@code season} was planned of
     * @param trip its key: the first date
     * @throws IllegalArgumentException when the plan does not make such a trip
     */
    public static TripLoads of(Homestead homestead, PlannedSeason season, String trip) {
        return new TripLoadsWriter(homestead, season, trip).write();
    }

    private TripLoads write() {
        List<Run> runs =
                schedule.runs().stream().filter(r -> r.trip().equals(trip.id())).toList();
        Outfit outfit = OutfitWriter.of(
                homestead,
                RigWriter.mostPeople(OpenCalendar.tripOf(homestead, problem.statusDate(), trip.firstDate())));
        List<TripLoads.OwnRun> own = new ArrayList<>();
        List<TripLoads.BroughtRun> brought = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            if (runs.get(i).kind() == RunKind.DELIVERY) {
                brought.add(brought(runs.get(i), part.runs().get(i)));
            } else {
                own.add(own(runs.get(i), part.runs().get(i), outfit));
            }
        }
        own.sort(Comparator.comparing(r -> r.about().kind()));
        brought.sort(Comparator.comparing(r -> r.about().date()));
        TripStock stock = new TripStock(homestead, season, trip, work);
        return new TripLoads(
                trip.id(),
                part.number(),
                trip.firstDate(),
                trip.lastDate(),
                own,
                brought,
                fewest(runs),
                stock.lines(),
                stock.dryRoom(),
                part.water());
    }

    private TripLoads.BroughtRun brought(Run run, SeasonReport.RunPart about) {
        return new TripLoads.BroughtRun(
                about,
                run.offer(),
                run.broughtOn(),
                Cash.ofCents(deliveries.fees(run), homestead.currency()),
                SuppliesWriter.list(homestead, season, run));
    }

    private TripLoads.OwnRun own(Run run, SeasonReport.RunPart about, Outfit outfit) {
        Placement placement = Placement.of(outfit, cargo(run));
        return new TripLoads.OwnRun(
                about, outfit, placement, items(outfit, placement), SuppliesWriter.list(homestead, season, run));
    }

    /** What the work needs first comes off first; what no work of the plan uses comes off last. */
    private List<Cargo> cargo(Run run) {
        record Place(String bay, String material) {}
        Map<Place, Integer> packs = new LinkedHashMap<>();
        run.loads().forEach(l -> packs.merge(new Place(l.bay(), l.material()), l.packs(), Integer::sum));
        TreeSet<Integer> orders = new TreeSet<>();
        packs.keySet().forEach(p -> orders.add(order(p.material())));
        return packs.entrySet().stream()
                .map(e -> new Cargo(
                        e.getKey().bay(),
                        OutfitWriter.packs(
                                material(e.getKey().material()),
                                e.getValue(),
                                orders.headSet(order(e.getKey().material()), true)
                                        .size())))
                .toList();
    }

    private int order(String material) {
        TripCargo.OwnUse first = firstUses.get(material);
        return first == null ? Integer.MAX_VALUE : first.place();
    }

    private Material material(String key) {
        return Objects.requireNonNull(materials.get(key));
    }

    private List<TripLoads.Item> items(Outfit outfit, Placement placement) {
        Map<Cargo, List<Stowed>> places = placement.stowed().stream()
                .sorted(Comparator.comparingLong(Stowed::from))
                .collect(Collectors.groupingBy(Stowed::cargo));
        List<String> bays = outfit.bays().stream().map(Bay::id).toList();
        List<Restraint> inOrder = placement.restraints().stream()
                .sorted(Comparator.<Restraint>comparingInt(
                                r -> r.cargo().packs().neededFirst())
                        .thenComparing(r -> -bays.indexOf(r.cargo().bay()))
                        .thenComparing(r -> -rearmost(places, r)))
                .toList();
        List<TripLoads.Item> items = new ArrayList<>();
        for (Restraint restraint : inOrder) {
            Cargo cargo = restraint.cargo();
            items.add(new TripLoads.Item(
                    items.size() + 1,
                    cargo,
                    material(cargo.packs().kind()).pack(),
                    Objects.requireNonNull(places.get(cargo)),
                    restraint,
                    use(cargo.packs().kind())));
        }
        return items;
    }

    private static double rearmost(Map<Cargo, List<Stowed>> places, Restraint restraint) {
        return Objects.requireNonNull(places.get(restraint.cargo())).getLast().middle();
    }

    private TripLoads.@Nullable Use use(String material) {
        TripCargo.OwnUse first = firstUses.get(material);
        return first == null
                ? null
                : new TripLoads.Use(
                        stageName(first.block().stage()), first.block().date());
    }

    private String stageName(String key) {
        return stages.getOrDefault(key, key);
    }

    /** One run needs no proof; more are held against the fewest that a search finds, with its bound. */
    private TripLoads.Fewest fewest(List<Run> runs) {
        List<Run> own = runs.stream().filter(r -> Arrivals.isOwn(r, trip)).toList();
        if (own.size() < 2) {
            return new TripLoads.Fewest(own.size(), own.size(), own.size());
        }
        Split split =
                Splitter.again(LoadChange.asSplit(own), trip.rig(), TripCargo.wanted(problem, schedule, work, trip));
        return new TripLoads.Fewest(
                own.size(), Math.min(own.size(), split.runs().size()), split.least());
    }
}
