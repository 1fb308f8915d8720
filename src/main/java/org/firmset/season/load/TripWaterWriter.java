package org.firmset.season.load;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.firmset.plan.Load;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Run;
import org.firmset.plan.Schedule;
import org.firmset.plan.StockLot;
import org.firmset.plan.Trip;
import org.firmset.season.problem.WaterWriter;
import org.jspecify.annotations.Nullable;

/** Follows tank and cans through the trips of a plan. */
public final class TripWaterWriter {
    private final PlanningProblem problem;
    private final Schedule schedule;
    private final List<TripWork.Use> uses;
    private int tank;
    private int cans;
    private int rain;

    private TripWaterWriter(PlanningProblem problem, Schedule schedule) {
        this.problem = problem;
        this.schedule = schedule;
        uses = new TripWork(problem, schedule)
                .uses().stream()
                        .filter(u -> u.material().equals(WaterWriter.ID))
                        .toList();
        tank = lots().filter(l -> l.arrivedOn().isBefore(problem.statusDate()))
                .mapToInt(StockLot::packs)
                .sum();
    }

    /** For each trip that uses or brings water, by its id. */
    public static Map<String, TripWater> of(PlanningProblem problem, Schedule schedule) {
        return new TripWaterWriter(problem, schedule).trips();
    }

    private Stream<StockLot> lots() {
        return problem.site().stock().stream().filter(l -> l.material().equals(WaterWriter.ID));
    }

    private Map<String, TripWater> trips() {
        Map<String, TripWater> trips = new LinkedHashMap<>();
        for (Trip trip : problem.trips()) {
            int rained = lots().filter(l -> l.arrivedOn().equals(trip.firstDate()))
                    .mapToInt(StockLot::packs)
                    .sum();
            tank += rained;
            rain += rained;
            List<TripWork.Use> its = uses.stream()
                    .filter(u -> TripWork.isIn(trip, u.block().date()))
                    .toList();
            int brought = brought(trip);
            if (brought > 0 || !its.isEmpty()) {
                trips.put(trip.id(), trip(its, brought));
                rain = 0;
            }
        }
        return trips;
    }

    private int brought(Trip trip) {
        return schedule.runs().stream()
                .filter(run -> run.trip().equals(trip.id()))
                .map(Run::loads)
                .flatMap(List::stream)
                .filter(l -> l.material().equals(WaterWriter.ID))
                .mapToInt(Load::packs)
                .sum();
    }

    private TripWater trip(List<TripWork.Use> its, int brought) {
        int tankBefore = tank;
        int cansBefore = cans;
        cans += brought;
        int used = 0;
        TripWater.@Nullable Emptied emptied = null;
        for (TripWork.Use use : its) {
            int fromTank = Math.min(tank, use.packs());
            tank -= fromTank;
            cans -= use.packs() - fromTank;
            used += use.packs();
            if (fromTank > 0 && tank == 0) {
                emptied = new TripWater.Emptied(use.block().stage(), use.block().date());
            }
        }
        return new TripWater(tankBefore, rain, cansBefore, brought, used, tank, cans, emptied);
    }
}
