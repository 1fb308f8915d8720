package org.firmset.season.load;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Price;
import org.firmset.homestead.Supplier;
import org.firmset.measure.Cash;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.firmset.plan.Material;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.Schedule;
import org.firmset.plan.WorkBlock;
import org.firmset.season.problem.WaterWriter;
import org.firmset.season.result.PlannedSeason;
import org.jspecify.annotations.Nullable;

/**
 * Writes what a plan buys when. Each material comes from the cheapest supplier with a price, the first of equally cheap ones,
 * as the planner counts its cost; a delivery is bought from who delivers. Water is filled in before leaving, not bought.
 */
public final class SuppliesWriter {
    private final Homestead homestead;
    private final PlanningProblem problem;
    private final Schedule schedule;
    private final Map<String, Material> materials;
    private final LocalDate last;

    private SuppliesWriter(Homestead homestead, PlannedSeason season) {
        this.homestead = homestead;
        problem = season.problem();
        schedule = season.plan().schedule();
        materials = problem.materials().stream()
                .collect(Collectors.toMap(Material::id, Function.identity(), (a, b) -> a, LinkedHashMap::new));
        last = Stream.concat(
                        schedule.runs().stream().map(Run::date),
                        schedule.blocks().stream().map(WorkBlock::date))
                .max(Comparator.naturalOrder())
                .orElse(problem.statusDate());
    }

    /** @param homestead what {@code season} was planned of */
    public static SeasonSupplies write(Homestead homestead, PlannedSeason season) {
        SuppliesWriter writer = new SuppliesWriter(homestead, season);
        List<Run> runs = season.plan().schedule().runs().stream()
                .sorted(Comparator.comparing(Run::date).thenComparing(Run::kind))
                .toList();
        List<SeasonSupplies.StockStory> stories = writer.stories(runs);
        return new SeasonSupplies(runs.stream().map(writer::list).toList(), stories, writer.dryRoom(stories));
    }

    /** The shopping list of one of the plan's runs. */
    static SeasonSupplies.RunList list(Homestead homestead, PlannedSeason season, Run run) {
        return new SuppliesWriter(homestead, season).list(run);
    }

    private SeasonSupplies.RunList list(Run run) {
        Map<String, Integer> packs = new LinkedHashMap<>();
        run.loads().stream()
                .filter(load -> !load.material().equals(WaterWriter.ID))
                .forEach(load -> packs.merge(load.material(), load.packs(), Integer::sum));
        List<SeasonSupplies.Stop> stops = new ArrayList<>();
        for (Supplier supplier : homestead.suppliers()) {
            List<SeasonSupplies.Line> lines = new ArrayList<>();
            packs.forEach((material, count) -> {
                if (seller(run, material).filter(supplier::equals).isPresent()) {
                    lines.add(line(material, count, price(supplier, material)));
                }
            });
            if (!lines.isEmpty()) {
                stops.add(stop(supplier.key(), supplier.name(), run.date().minusDays(leadDays(run, supplier)), lines));
            }
        }
        List<SeasonSupplies.Line> unpriced = new ArrayList<>();
        packs.forEach((material, count) -> {
            if (seller(run, material).isEmpty()) {
                unpriced.add(line(material, count, Optional.empty()));
            }
        });
        if (!unpriced.isEmpty()) {
            stops.add(stop(null, "no supplier with a price", null, unpriced));
        }
        return new SeasonSupplies.RunList(run.trip(), run.date(), run.kind(), stops);
    }

    private static int leadDays(Run run, Supplier supplier) {
        return run.kind() == RunKind.DELIVERY
                ? Objects.requireNonNull(supplier.delivery()).leadDays()
                : supplier.leadDays();
    }

    private Optional<Supplier> seller(Run run, String material) {
        return homestead.suppliers().stream()
                .filter(s -> run.kind() != RunKind.DELIVERY || s.key().equals(run.offer()))
                .filter(s -> price(s, material).isPresent())
                .min(Comparator.comparing(s -> price(s, material).orElseThrow()));
    }

    /** In cents. */
    private static Optional<Long> price(Supplier supplier, String material) {
        return supplier.prices().stream()
                .filter(p -> p.material().equals(material))
                .map(Price::amount)
                .map(Cash::cents)
                .min(Comparator.naturalOrder());
    }

    private SeasonSupplies.Line line(String material, int packs, Optional<Long> cents) {
        return new SeasonSupplies.Line(
                material,
                packs,
                Mass.ofGrams(Objects.requireNonNull(materials.get(material)).grams() * packs),
                cents.map(c -> Cash.ofCents(c * packs, homestead.currency())).orElse(null));
    }

    private SeasonSupplies.Stop stop(
            @Nullable String key, String name, @Nullable LocalDate orderBy, List<SeasonSupplies.Line> lines) {
        long cents = lines.stream()
                .map(SeasonSupplies.Line::cost)
                .filter(Objects::nonNull)
                .mapToLong(Cash::cents)
                .sum();
        BigDecimal kilograms = lines.stream().map(l -> l.mass().value()).reduce(BigDecimal.ZERO, BigDecimal::add);
        return new SeasonSupplies.Stop(
                key, name, orderBy, lines, new Mass(kilograms), Cash.ofCents(cents, homestead.currency()));
    }

    private List<SeasonSupplies.StockStory> stories(List<Run> runs) {
        Map<String, SiteStock> stock = new LinkedHashMap<>();
        materials.values().forEach(m -> stock.put(m.id(), new SiteStock(m)));
        problem.site().stock().forEach(lot -> of(stock, lot.material()).arrive(lot.arrivedOn(), lot.packs()));
        runs.forEach(run -> run.loads().forEach(l -> of(stock, l.material()).arrive(run.date(), l.packs())));
        new TripWork(problem, schedule)
                .uses()
                .forEach(use -> of(stock, use.material()).use(use.block().date(), use.packs()));
        return stock.entrySet().stream()
                .map(e -> e.getValue().story(e.getKey(), last))
                .filter(story -> !story.days().isEmpty())
                .toList();
    }

    private static SiteStock of(Map<String, SiteStock> stock, String material) {
        return Objects.requireNonNull(stock.get(material));
    }

    private List<SeasonSupplies.DryRoom> dryRoom(List<SeasonSupplies.StockStory> stories) {
        List<SeasonSupplies.StockStory> dry =
                stories.stream().filter(s -> material(s).dry()).toList();
        return dry.stream()
                .flatMap(s -> s.days().stream().map(SeasonSupplies.StockDay::date))
                .filter(d -> !d.isBefore(problem.statusDate()))
                .collect(Collectors.toCollection(TreeSet::new))
                .stream()
                .map(date -> new SeasonSupplies.DryRoom(
                        date,
                        litres(dry.stream()
                                .mapToLong(s -> s.lyingOn(date) * material(s).millilitres())
                                .sum()),
                        litres(problem.site().dryStorageMillilitres())))
                .toList();
    }

    private Material material(SeasonSupplies.StockStory story) {
        return Objects.requireNonNull(materials.get(story.material()));
    }

    private static Volume litres(long millilitres) {
        return new Volume(BigDecimal.valueOf(millilitres, 6));
    }
}
