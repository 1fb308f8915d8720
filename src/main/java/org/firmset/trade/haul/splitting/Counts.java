package org.firmset.trade.haul.splitting;

import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;

/** How many packs of what lie in which bay; only what is there takes memory. */
final class Counts {
    private final TreeMap<Integer, int[]> byBay = new TreeMap<>();
    private final int bays;

    Counts(int bays) {
        this.bays = bays;
    }

    int of(int what, int bay) {
        int[] counts = byBay.get(what);
        return counts == null ? 0 : counts[bay];
    }

    int of(int what) {
        int[] counts = byBay.get(what);
        return counts == null ? 0 : Arrays.stream(counts).sum();
    }

    void add(int what, int bay, int count) {
        if (count != 0) {
            int[] counts = byBay.computeIfAbsent(what, w -> new int[bays]);
            counts[bay] += count;
            if (counts[bay] == 0 && of(what) == 0) {
                byBay.remove(what);
            }
        }
    }

    /** What there is any of, ascending. */
    List<Integer> present() {
        return List.copyOf(byBay.keySet());
    }

    Counts copy() {
        Counts copy = new Counts(bays);
        byBay.forEach((what, counts) -> copy.byBay.put(what, counts.clone()));
        return copy;
    }
}
