package org.firmset.trade.haul.splitting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.MassLimit;
import org.firmset.trade.haul.Rig;

/** Says whether loads keep what the rig allows, from the records alone; each kind has one line or lines of one measure. */
final class Judge {
    private final Rig rig;
    private final Map<String, Cargo> kinds = new HashMap<>();

    Judge(Rig rig, List<Cargo> cargo) {
        this.rig = rig;
        cargo.forEach(line -> kinds.put(line.kind(), line));
    }

    /** What is wrong with one run; nothing if nothing is. */
    List<String> complaints(RunLoad run) {
        List<String> complaints = new ArrayList<>();
        Map<String, Long> grams = new HashMap<>();
        Map<String, Long> millilitres = new HashMap<>();
        for (Placed placed : run.placed()) {
            Cargo line = Objects.requireNonNull(kinds.get(placed.kind()));
            Bay bay = rig.bays().stream()
                    .filter(b -> b.id().equals(placed.bay()))
                    .findAny()
                    .orElseThrow();
            if (placed.count() < 1) {
                complaints.add("nothing placed: " + placed);
            }
            if (line.longestMillimetres() > bay.longestMillimetres()) {
                complaints.add("too long: " + placed);
            }
            grams.merge(bay.id(), line.grams() * placed.count(), Long::sum);
            millilitres.merge(bay.id(), line.millilitres() * placed.count(), Long::sum);
        }
        for (Bay bay : rig.bays()) {
            if (millilitres.getOrDefault(bay.id(), 0L) > bay.millilitres()) {
                complaints.add("too much in " + bay.id());
            }
        }
        for (MassLimit limit : rig.limits()) {
            long milligrams = 0;
            for (Map.Entry<String, Long> bay : grams.entrySet()) {
                milligrams += bay.getValue() * limit.shareOf(bay.getKey());
            }
            if (milligrams > limit.grams() * 1000) {
                complaints.add("over " + limit.name());
            }
        }
        return complaints;
    }

    List<String> complaints(List<RunLoad> runs) {
        return runs.stream().flatMap(run -> complaints(run).stream()).toList();
    }

    /** How many packs of each kind the runs carry. */
    static Map<String, Integer> packs(List<RunLoad> runs) {
        Map<String, Integer> packs = new HashMap<>();
        runs.forEach(run -> run.placed().forEach(p -> packs.merge(p.kind(), p.count(), Integer::sum)));
        return packs;
    }

    static Map<String, Integer> wanted(List<Cargo> lines) {
        Map<String, Integer> packs = new HashMap<>();
        lines.forEach(line -> packs.merge(line.kind(), line.count(), Integer::sum));
        return packs;
    }
}
