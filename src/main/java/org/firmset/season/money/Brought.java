package org.firmset.season.money;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.firmset.plan.Load;
import org.firmset.plan.Run;
import org.firmset.season.load.TripWork;
import org.firmset.season.result.PlannedSeason;
import org.jspecify.annotations.Nullable;

/**
 * Packs that a run of the plan brings for one stage. What lies on site goes to the earliest work; what comes goes to the
 * work after it, in the order of both.
 *
 * @param stage null for packs that nothing uses
 * @param onOrder they are on order already, so they are not to be bought
 */
record Brought(Run run, String material, @Nullable String stage, int packs, boolean onOrder) {

    /** Every pack of every run once, the earliest run first. */
    static List<Brought> of(PlannedSeason season, Orders orders) {
        List<Run> runs = season.plan().schedule().runs().stream()
                .sorted(Comparator.comparing(Run::date).thenComparing(Run::kind))
                .toList();
        Map<String, Deque<Need>> needs = needs(season, runs);
        List<Brought> all = new ArrayList<>();
        for (Run run : runs) {
            packs(run).forEach((material, packs) -> {
                int ordered = orders.take(material, packs);
                Deque<Need> open = needs.computeIfAbsent(material, m -> new ArrayDeque<>());
                serve(run, material, ordered, true, open, all);
                serve(run, material, packs - ordered, false, open, all);
            });
        }
        return all;
    }

    /** Packs that a stage wants and that do not lie on site. */
    private record Need(String stage, int packs) {}

    private static Map<String, Integer> packs(Run run) {
        Map<String, Integer> packs = new java.util.LinkedHashMap<>();
        for (Load load : run.loads()) {
            packs.merge(load.material(), load.packs(), Integer::sum);
        }
        return packs;
    }

    private static Map<String, Deque<Need>> needs(PlannedSeason season, List<Run> runs) {
        List<TripWork.Use> uses = new TripWork(season.problem(), season.plan().schedule()).uses();
        Map<String, Integer> fromSite = new HashMap<>();
        uses.forEach(use -> fromSite.merge(use.material(), use.packs(), Integer::sum));
        runs.forEach(run -> packs(run).forEach((material, packs) -> fromSite.merge(material, -packs, Integer::sum)));
        Map<String, Deque<Need>> needs = new HashMap<>();
        for (TripWork.Use use : uses) {
            int lying = Math.clamp(fromSite.getOrDefault(use.material(), 0), 0, use.packs());
            fromSite.merge(use.material(), -lying, Integer::sum);
            if (use.packs() > lying) {
                needs.computeIfAbsent(use.material(), m -> new ArrayDeque<>())
                        .add(new Need(use.block().stage(), use.packs() - lying));
            }
        }
        return needs;
    }

    private static void serve(
            Run run, String material, int packs, boolean onOrder, Deque<Need> open, List<Brought> all) {
        int left = packs;
        while (left > 0) {
            Need need = open.poll();
            if (need == null) {
                all.add(new Brought(run, material, null, left, onOrder));
                return;
            }
            int given = Math.min(left, need.packs());
            all.add(new Brought(run, material, need.stage(), given, onOrder));
            left -= given;
            if (need.packs() > given) {
                open.addFirst(new Need(need.stage(), need.packs() - given));
            }
        }
    }
}
