package org.firmset.plan.search;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.firmset.plan.Bound;
import org.firmset.plan.Material;
import org.firmset.plan.Need;
import org.firmset.plan.Stage;
import org.firmset.plan.StockLot;

/** What no plan can beat, reckoned without searching: waits and single days, and labour against hours. */
final class Bounds {
    private final Model model;
    private final Windows windows;

    Bounds(Model model, Windows windows) {
        this.model = model;
        this.windows = windows;
    }

    Bound bound() {
        int trips = fewestTrips();
        return new Bound(earliestFinishes(), trips, cheapest(trips) + leastMaterialCents());
    }

    private Map<String, LocalDate> earliestFinishes() {
        Map<String, LocalDate> result = new HashMap<>();
        for (int lane = 0; lane < model.laneIndex.size(); lane++) {
            int day = earliestFinishDay(lane);
            if (day >= 0 && day < model.dayCount()) {
                result.put(
                        model.problem.subprojects().get(lane).id(),
                        model.days.get(day).date());
            }
        }
        return result;
    }

    private int earliestFinishDay(int lane) {
        int latest = windows.earliestFinishOfLane(lane);
        return latest == Windows.NOTHING_LEFT ? latest : Math.max(latest, dayThatHolds(labourUpTo(lane)));
    }

    /** Labour of a subproject and of everything that must come before what is left of it. */
    private long labourUpTo(int lane) {
        boolean[] wanted = windows.andAllBefore(l -> l == lane);
        long sum = 0;
        for (int s = 0; s < model.stageCount; s++) {
            sum += wanted[s] ? model.stage(s).labourQuarters() : 0;
        }
        return sum;
    }

    private int dayThatHolds(long labour) {
        long sum = 0;
        int d = -1;
        while (sum < labour && d + 1 < model.dayCount()) {
            sum += model.days.get(++d).labourQuarters();
        }
        return d;
    }

    private int fewestTrips() {
        long labour =
                model.problem.stages().stream().mapToLong(Stage::labourQuarters).sum();
        long[] hours = new long[model.tripCount()];
        for (int t = 0; t < hours.length; t++) {
            hours[t] = model.trip(t).days().stream()
                    .mapToLong(d -> d.labourQuarters())
                    .sum();
        }
        Arrays.sort(hours);
        int trips = 0;
        while (labour > 0 && trips < hours.length) {
            labour -= hours[hours.length - ++trips];
        }
        return trips;
    }

    /** What is not on site, or has gone off before the first site day, has to be bought. */
    long leastMaterialCents() {
        long cents = 0;
        for (Material material : model.problem.materials()) {
            long toBuy = packsNeeded(material) - goodStock(material);
            cents += Math.max(0, toBuy) * material.cents();
        }
        return cents;
    }

    private long packsNeeded(Material material) {
        return model.problem.stages().stream()
                .filter(s -> !s.finished())
                .flatMap(s -> s.needs().stream())
                .filter(n -> n.material().equals(material.id()))
                .mapToLong(Need::packs)
                .sum();
    }

    private long goodStock(Material material) {
        return model.problem.site().stock().stream()
                .filter(l -> l.material().equals(material.id()))
                .filter(l -> model.dayCount() > 0
                        && material.goodOn(model.days.getFirst().date(), l.arrivedOn()))
                .mapToLong(StockLot::packs)
                .sum();
    }

    private long cheapest(int trips) {
        return model.problem.trips().stream()
                .mapToLong(t -> t.cents())
                .sorted()
                .limit(trips)
                .sum();
    }
}
