package org.firmset.trade.takeoff.cutting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Makes whole bars of the relaxation step by step: keeps the whole part of every pattern, or else the one used most, and
 * solves again for what is left. Nearly always as good as the bound.
 */
final class Dive {
    private static final double NEARLY = 1e-6;

    private final Instance instance;
    private final int[] open;
    private final int[] available;
    private final List<Column> plan = new ArrayList<>();
    private final Set<Column> seen = new LinkedHashSet<>();

    private Dive(Instance instance) {
        this.instance = instance;
        open = instance.wanted.clone();
        available = instance.available.clone();
    }

    /** @param plan one column for each bar, empty when limited stock ran out; @param seen every pattern met on the way */
    record Result(List<Column> plan, List<Column> seen) {}

    static Result from(Instance instance, Relaxation relaxation) {
        Dive dive = new Dive(instance);
        dive.seen.addAll(relaxation.columns());
        boolean whole = dive.go(relaxation.uses());
        return new Result(whole ? dive.plan : List.of(), List.copyOf(dive.seen));
    }

    private boolean go(Map<Column, Double> first) {
        Map<Column, Double> uses = first;
        while (true) {
            keep(uses);
            if (isDone()) {
                return true;
            }
            Instance rest = instance.with(open, available);
            Optional<Relaxation> next = Relaxation.solve(rest, clipped());
            if (next.isEmpty()) {
                return false;
            }
            uses = next.get().uses();
            next.get().close();
            seen.addAll(uses.keySet());
        }
    }

    private boolean isDone() {
        for (int n : open) {
            if (n > 0) {
                return false;
            }
        }
        return true;
    }

    private void keep(Map<Column, Double> uses) {
        boolean any = false;
        Column most = null;
        double mostUsed = 0;
        for (Map.Entry<Column, Double> use : uses.entrySet()) {
            for (int n = (int) (use.getValue() + NEARLY); n > 0; n--) {
                any |= take(use.getKey());
            }
            if (use.getValue() > mostUsed) {
                mostUsed = use.getValue();
                most = use.getKey();
            }
        }
        if (!any && most != null) {
            take(most);
        }
    }

    /** Whether the pattern still makes something that is wanted, from stock that is there. */
    private boolean take(Column column) {
        boolean useful = false;
        for (int i = 0; i < open.length; i++) {
            useful |= open[i] > 0 && column.counts()[i] > 0;
        }
        if (!useful || available[column.stock()] == 0) {
            return false;
        }
        plan.add(column);
        for (int i = 0; i < open.length; i++) {
            open[i] = Math.max(0, open[i] - column.counts()[i]);
        }
        if (available[column.stock()] != Stock.UNLIMITED) {
            available[column.stock()]--;
        }
        return true;
    }

    /** The patterns known so far, without what is not wanted any more. */
    private List<Column> clipped() {
        Set<Column> result = new LinkedHashSet<>();
        for (Column column : seen) {
            int[] counts = new int[open.length];
            int sum = 0;
            for (int i = 0; i < counts.length; i++) {
                counts[i] = Math.min(open[i], column.counts()[i]);
                sum += counts[i];
            }
            if (sum > 0) {
                result.add(new Column(column.stock(), counts));
            }
        }
        return List.copyOf(result);
    }
}
