package org.firmset.plan.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.firmset.plan.Bay;
import org.firmset.plan.MassLimit;
import org.firmset.plan.Material;
import org.firmset.plan.Rig;
import org.firmset.plan.Stage;
import org.firmset.plan.StockLot;
import org.firmset.plan.Trip;

/**
 * What stages use up against what all runs of a trip could bring at the most, in grams and in millilitres. Materials that
 * a supplier may bring, and what is on site already, are left out or taken off: the rest is a limit every plan keeps.
 */
final class Weights {
    /** @param perQuarter for each stage; rounded down, so that no plan is over it that is not over the rules */
    record Scale(long[] perQuarterOf, long[] broughtBy, long there) {
        long perQuarter(int stage) {
            return perQuarterOf[stage];
        }

        long brought(int trip) {
            return broughtBy[trip];
        }
    }

    private final Model model;
    private final boolean[] hauled;

    Weights(Model model) {
        this.model = model;
        hauled = new boolean[model.problem.materials().size()];
        for (int m = 0; m < hauled.length; m++) {
            String id = model.material(m).id();
            hauled[m] =
                    model.problem.offers().stream().noneMatch(o -> o.materials().contains(id));
        }
    }

    List<Scale> scales() {
        List<Scale> scales = new ArrayList<>();
        scales.add(scale(true));
        scales.add(scale(false));
        return scales;
    }

    private Scale scale(boolean mass) {
        long[] perQuarter = new long[model.stageCount];
        for (int s = 0; s < perQuarter.length; s++) {
            Stage stage = model.stage(s);
            long sum = 0;
            for (int n = 0; n < model.needMaterial[s].length; n++) {
                int m = model.needMaterial[s][n];
                sum += hauled[m] ? model.needPacks[s][n] * size(model.material(m), mass) : 0;
            }
            perQuarter[s] = stage.finished() ? 0 : sum / Math.max(1, stage.labourQuarters());
        }
        long there = 0;
        for (StockLot lot : model.problem.site().stock()) {
            int m = model.materialIndex.of(lot.material());
            there += hauled[m] ? lot.packs() * size(model.material(m), mass) : 0;
        }
        long[] brought = new long[model.tripCount()];
        for (int t = 0; t < brought.length; t++) {
            Trip trip = model.trip(t);
            brought[t] = (1L + trip.mostExtraRuns()) * (mass ? mostGrams(trip.rig()) : mostMillilitres(trip.rig()));
        }
        return new Scale(perQuarter, brought, there);
    }

    private static long size(Material material, boolean mass) {
        return mass ? material.grams() : material.millilitres();
    }

    private static long mostMillilitres(Rig rig) {
        return rig.bays().stream().mapToLong(Bay::millilitres).sum();
    }

    /** Over all sharings between two bays, or the sum of what each bay takes alone where there are more. */
    static long mostGrams(Rig rig) {
        if (rig.bays().size() == 2) {
            return mostOfTwo(rig, rig.bays().get(0).id(), rig.bays().get(1).id());
        }
        return rig.bays().stream().mapToLong(b -> alone(rig.limits(), b.id())).sum();
    }

    private static long alone(List<MassLimit> limits, String bay) {
        return limits.stream()
                .filter(l -> l.shareOf(bay) > 0)
                .mapToLong(l -> Math.ceilDiv(l.grams() * 1000, l.shareOf(bay)))
                .min()
                .orElse(Long.MAX_VALUE / 1_000_000);
    }

    /** The most lies where a limit crosses another or an axis; each such point bounds it from above when rounded up. */
    private static long mostOfTwo(Rig rig, String one, String other) {
        long best = Math.min(alone(rig.limits(), one), Long.MAX_VALUE / 1_000_000);
        best = Math.max(best, alone(rig.limits(), other));
        for (MassLimit a : rig.limits()) {
            for (MassLimit b : rig.limits()) {
                long determinant = (long) a.shareOf(one) * b.shareOf(other) - (long) a.shareOf(other) * b.shareOf(one);
                if (determinant > 0) {
                    double x = 1000.0
                            * (a.grams() * (double) b.shareOf(other) - b.grams() * (double) a.shareOf(other))
                            / determinant;
                    double y = 1000.0
                            * (b.grams() * (double) a.shareOf(one) - a.grams() * (double) b.shareOf(one))
                            / determinant;
                    if (x >= 0 && y >= 0 && holds(rig, Map.of(one, x, other, y))) {
                        best = Math.max(best, (long) Math.ceil(x + y));
                    }
                }
            }
        }
        return best;
    }

    private static boolean holds(Rig rig, Map<String, Double> grams) {
        for (MassLimit limit : rig.limits()) {
            double sum = 0;
            for (Map.Entry<String, Double> bay : grams.entrySet()) {
                sum += bay.getValue() * limit.shareOf(bay.getKey()) / 1000;
            }
            if (sum > limit.grams() + 1) {
                return false;
            }
        }
        return true;
    }
}
