package org.firmset.trade.haul.splitting;

import java.util.List;

/** What one run carries, and where; a kind is named once for each bay it lies in. */
public record RunLoad(List<Placed> placed) {
    public RunLoad {
        placed = List.copyOf(placed);
    }

    /** Packs of a kind in this run, in all bays. */
    public int packs(String kind) {
        return placed.stream()
                .filter(p -> p.kind().equals(kind))
                .mapToInt(Placed::count)
                .sum();
    }
}
