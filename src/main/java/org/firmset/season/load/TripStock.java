package org.firmset.season.load;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.homestead.Stage;
import org.firmset.measure.Measured;
import org.firmset.measure.Volume;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Trip;
import org.firmset.season.problem.WaterWriter;
import org.firmset.season.result.PlannedSeason;
import org.jspecify.annotations.Nullable;

/** What lies on site before and after a trip, and what the rest is for. */
final class TripStock {
    private final Trip trip;
    private final List<TripWork.Use> uses;
    private final SeasonSupplies supplies;
    private final Map<String, Material> materials;
    private final Map<String, org.firmset.plan.Material> planned;
    private final Map<String, String> stages;
    private final long dryMillilitres;

    TripStock(Homestead homestead, PlannedSeason season, Trip trip, TripWork work) {
        PlanningProblem problem = season.problem();
        this.trip = trip;
        uses = work.uses();
        supplies = SuppliesWriter.write(homestead, season);
        materials =
                WaterWriter.materials(homestead).stream().collect(Collectors.toMap(Material::key, Function.identity()));
        planned = problem.materials().stream()
                .collect(Collectors.toMap(org.firmset.plan.Material::id, Function.identity()));
        stages = homestead.stages().stream().collect(Collectors.toMap(Stage::key, Stage::name));
        dryMillilitres = problem.site().dryStorageMillilitres();
    }

    /** Of every material that is there before, during or after the trip. */
    List<TripLoads.Stock> lines() {
        return supplies.stock().stream().flatMap(s -> line(s).stream()).toList();
    }

    private Optional<TripLoads.Stock> line(SeasonSupplies.StockStory story) {
        int before = 0;
        int arrived = 0;
        int used = 0;
        int goneOff = 0;
        int after = 0;
        for (SeasonSupplies.StockDay day : story.days()) {
            if (day.date().isAfter(trip.lastDate())) {
                break;
            }
            after = day.onSite();
            if (day.date().isBefore(trip.firstDate())) {
                before = after;
            } else {
                arrived += day.arrived();
                used += day.used();
                goneOff += day.goneOff();
            }
        }
        Material material = Objects.requireNonNull(materials.get(story.material()));
        return before + arrived == 0
                ? Optional.empty()
                : Optional.of(new TripLoads.Stock(
                        story.material(),
                        material.name(),
                        material.pack(),
                        before,
                        arrived,
                        used,
                        goneOff,
                        after,
                        next(story.material())));
    }

    private TripLoads.@Nullable Use next(String material) {
        return uses.stream()
                .filter(u -> u.material().equals(material) && u.block().date().isAfter(trip.lastDate()))
                .findFirst()
                .map(u -> new TripLoads.Use(
                        stages.getOrDefault(u.block().stage(), u.block().stage()),
                        u.block().date()))
                .orElse(null);
    }

    TripLoads.@Nullable DryRoom dryRoom() {
        if (dryMillilitres == 0) {
            return null;
        }
        Volume most = trip.days().stream()
                .map(d -> inDryRoom(d.date()))
                .max(Comparator.comparing(Measured::value))
                .orElseThrow();
        return new TripLoads.DryRoom(
                inDryRoom(trip.firstDate().minusDays(1)), most, inDryRoom(trip.lastDate()), volume(dryMillilitres));
    }

    /** Packs that have gone off still take their room, as the planner counts it. */
    private Volume inDryRoom(LocalDate evening) {
        long millilitres = 0;
        for (SeasonSupplies.StockStory story : supplies.stock()) {
            org.firmset.plan.Material material = Objects.requireNonNull(planned.get(story.material()));
            if (material.dry()) {
                millilitres += material.millilitres() * story.lyingOn(evening);
            }
        }
        return volume(millilitres);
    }

    private static Volume volume(long millilitres) {
        return new Volume(BigDecimal.valueOf(millilitres, 6));
    }
}
