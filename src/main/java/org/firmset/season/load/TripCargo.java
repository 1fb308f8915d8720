package org.firmset.season.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.plan.Material;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Schedule;
import org.firmset.plan.Trip;
import org.firmset.plan.WorkBlock;
import org.firmset.trade.haul.splitting.Cargo;

/** What a trip brings in its own vehicle, as cargo that knows when it is needed. */
final class TripCargo {
    private TripCargo() {}

    /**
     * Packs that a trip brings itself and a work block uses.
     *
     * @param place of the block in the order of all work, from 0
     */
    record OwnUse(WorkBlock block, String material, int packs, int place) {}

    /** In the order of the work. */
    static List<OwnUse> uses(PlanningProblem problem, Schedule schedule, TripWork work, Trip trip) {
        Piles piles = new Piles(problem);
        Arrivals arrivals = new Arrivals(schedule, trip, piles);
        Map<WorkBlock, Integer> order = new HashMap<>();
        List<OwnUse> uses = new ArrayList<>();
        for (TripWork.Use use : work.uses()) {
            arrivals.until(use.block().date());
            int place = order.computeIfAbsent(use.block(), b -> order.size());
            int own = piles.of(use.material())
                    .use(use.block().date(), use.packs())
                    .marked();
            if (own > 0) {
                uses.add(new OwnUse(use.block(), use.material(), own, place));
            }
        }
        return uses;
    }

    /** The packs of the runs, each line with the place of its use in the order of all work from this trip on. */
    static List<Cargo> wanted(PlanningProblem problem, Schedule schedule, TripWork work, Trip trip) {
        Map<String, Map<Integer, Integer>> packs = new LinkedHashMap<>();
        schedule.runs().stream()
                .filter(run -> Arrivals.isOwn(run, trip))
                .flatMap(r -> r.loads().stream())
                .forEach(l -> packs.computeIfAbsent(l.material(), m -> new LinkedHashMap<>())
                        .merge(Integer.MAX_VALUE, l.packs(), Integer::sum));
        for (OwnUse use : uses(problem, schedule, work, trip)) {
            Map<Integer, Integer> lines = Objects.requireNonNull(packs.get(use.material()));
            lines.merge(use.place(), use.packs(), Integer::sum);
            lines.merge(Integer.MAX_VALUE, -use.packs(), Integer::sum);
        }
        return lines(problem, packs);
    }

    private static List<Cargo> lines(PlanningProblem problem, Map<String, Map<Integer, Integer>> packs) {
        Map<String, Material> materials =
                problem.materials().stream().collect(Collectors.toMap(Material::id, Function.identity()));
        List<Cargo> cargo = new ArrayList<>();
        packs.forEach((material, lines) -> lines.forEach((place, count) -> {
            if (count > 0) {
                cargo.add(cargo(Objects.requireNonNull(materials.get(material)), count, place));
            }
        }));
        return cargo;
    }

    /** What is over the most a pack may be is too heavy or too large for any rig, however much. */
    private static Cargo cargo(Material of, int count, int place) {
        return new Cargo(
                of.id(),
                Math.min(of.grams(), Cargo.MOST),
                Math.min(of.millilitres(), Cargo.MOST),
                of.longestMillimetres(),
                count,
                place);
    }

    /**
     * What is needed last is done without first.
     *
     * @param packs by material, how many there are at the most; what is not named, all
     */
    static List<Cargo> had(List<Cargo> wanted, Map<String, Integer> packs) {
        Map<String, Integer> open = new HashMap<>(packs);
        List<Cargo> result = new ArrayList<>();
        wanted.stream().sorted(Comparator.comparingInt(Cargo::order)).forEach(line -> {
            int left = open.getOrDefault(line.kind(), line.count());
            int taken = Math.min(left, line.count());
            open.computeIfPresent(line.kind(), (kind, still) -> still - taken);
            if (taken > 0) {
                result.add(line.withCount(taken));
            }
        });
        return result;
    }

    /** What was wanted and could not be had. */
    static List<Cargo> missing(List<Cargo> wanted, List<Cargo> had) {
        Map<String, Integer> open = new HashMap<>();
        had.forEach(line -> open.merge(line.kind(), line.count(), Integer::sum));
        List<Cargo> result = new ArrayList<>();
        for (Cargo line : wanted) {
            int covered = Math.min(line.count(), open.getOrDefault(line.kind(), 0));
            open.merge(line.kind(), -covered, Integer::sum);
            if (covered < line.count()) {
                result.add(line.withCount(line.count() - covered));
            }
        }
        return result;
    }
}
