package org.firmset.trade.haul.splitting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.Rig;

/** The least number of runs by trying everything, for very few packs. */
final class LeastBySearch {
    private final Rig rig;
    private final Judge judge;
    private final List<String> packs = new ArrayList<>();

    LeastBySearch(Rig rig, List<Cargo> lines) {
        this.rig = rig;
        judge = new Judge(rig, lines);
        for (Cargo line : lines) {
            for (int n = 0; n < line.count(); n++) {
                packs.add(line.kind());
            }
        }
    }

    int runs() {
        int runs = 0;
        while (!goes(runs, 0, new ArrayList<>())) {
            runs++;
        }
        return runs;
    }

    /** Every pack into every bay of every run begun, or of one more; judged only when all are placed. */
    private boolean goes(int runs, int pack, List<List<Placed>> placed) {
        if (pack == packs.size()) {
            return placed.stream().allMatch(p -> judge.complaints(merged(p)).isEmpty());
        }
        for (int run = 0; run < Math.min(runs, placed.size() + 1); run++) {
            boolean opens = run == placed.size();
            if (opens) {
                placed.add(new ArrayList<>());
            }
            for (Bay bay : rig.bays()) {
                placed.get(run).add(new Placed(packs.get(pack), bay.id(), 1));
                if (goes(runs, pack + 1, placed)) {
                    return true;
                }
                placed.get(run).removeLast();
            }
            if (opens) {
                placed.removeLast();
            }
        }
        return false;
    }

    private static RunLoad merged(List<Placed> packs) {
        Map<List<String>, Integer> counts = new HashMap<>();
        packs.forEach(p -> counts.merge(List.of(p.kind(), p.bay()), 1, Integer::sum));
        return new RunLoad(counts.entrySet().stream()
                .map(c -> new Placed(c.getKey().get(0), c.getKey().get(1), c.getValue()))
                .toList());
    }
}
