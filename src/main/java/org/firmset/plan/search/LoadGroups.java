package org.firmset.plan.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.firmset.plan.Layout;
import org.firmset.plan.Material;
import org.firmset.plan.Stage;
import org.firmset.plan.StockLot;

/**
 * Materials that come the same way, taken together by mass, and what is known of each group before there is a plan. Mass is
 * counted in units of {@link #UNIT_GRAMS}. Sums are rounded so that no plan is forbidden, or, written carefully, so that
 * none is allowed that a single pack would break.
 */
final class LoadGroups {
    static final long UNIT_GRAMS = 100;
    static final long MOST_UNITS = 1L << 40;

    /** Money is counted in thousandths of a cent, as a unit of mass costs parts of one. */
    static final long MILLI = 1000;

    /**
     * Materials that are equally dry, keep equally long, are to be had from the same date and brought by the same offers.
     *
     * @param material where each is paid by itself; the same for all where money has no limit
     */
    record Way(boolean dry, int shelfLifeDays, int available, Set<Integer> offers, int material) {}

    private record Group(Way way, List<Integer> materials) {}

    /** What one stage uses of a group, in units of mass rounded down. */
    record Use(long whole, long perQuarter) {}

    private final Model model;
    private final Windows windows;
    private final boolean careful;
    private final List<Group> groups;
    private final Use[][] uses;

    LoadGroups(Model model, Windows windows, boolean careful) {
        this.model = model;
        this.windows = windows;
        this.careful = careful;
        groups = groups();
        uses = uses();
    }

    int count() {
        return groups.size();
    }

    Way way(int g) {
        return groups.get(g).way();
    }

    List<Integer> materials(int g) {
        return groups.get(g).materials();
    }

    Stream<Material> allMaterials() {
        return groups.stream().flatMap(g -> g.materials().stream()).map(model::material);
    }

    Use use(int g, int stage) {
        return uses[g][stage];
    }

    private List<Group> groups() {
        Map<Way, List<Integer>> byWay = new LinkedHashMap<>();
        for (int m = 0; m < model.problem.materials().size(); m++) {
            if (isUsed(m)) {
                byWay.computeIfAbsent(wayOf(m), w -> new ArrayList<>()).add(m);
            }
        }
        return byWay.entrySet().stream()
                .map(e -> new Group(e.getKey(), e.getValue()))
                .toList();
    }

    private boolean isUsed(int material) {
        for (int s = 0; s < model.stageCount; s++) {
            for (int m : model.needMaterial[s]) {
                if (m == material && !model.stage(s).finished()) {
                    return true;
                }
            }
        }
        return false;
    }

    private Way wayOf(int m) {
        Material material = model.material(m);
        Set<Integer> offers = new TreeSet<>();
        for (int o = 0; o < model.problem.offers().size(); o++) {
            if (model.problem.offers().get(o).materials().contains(material.id())) {
                offers.add(o);
            }
        }
        return new Way(material.dry(), material.shelfLifeDays(), model.availableEpoch[m], offers, isPaid() ? m : 0);
    }

    private Use[][] uses() {
        Use[][] result = new Use[groups.size()][model.stageCount];
        for (int g = 0; g < result.length; g++) {
            for (int s = 0; s < model.stageCount; s++) {
                long grams = 0;
                for (int n = 0;
                        n < model.needMaterial[s].length && !model.stage(s).finished();
                        n++) {
                    int m = model.needMaterial[s][n];
                    grams += groups.get(g).materials().contains(m)
                            ? model.needPacks[s][n] * model.material(m).grams()
                            : 0;
                }
                int quarters = Math.max(1, model.stage(s).labourQuarters());
                long units = careful ? Math.ceilDiv(grams, UNIT_GRAMS) : grams / UNIT_GRAMS;
                result[g][s] = new Use(units, careful ? Math.ceilDiv(units, quarters) : units / quarters);
            }
        }
        return result;
    }

    /** Whether money has a limit that no plan may break. */
    boolean isPaid() {
        var limit = model.problem.spending();
        return limit != null && limit.hard();
    }

    /** Of all that is not finished. */
    long needed(int g) {
        long sum = 0;
        for (Use use : uses[g]) {
            sum += use.whole();
        }
        return sum;
    }

    /** The least that a unit of mass of a group costs. */
    long milliCents(int g) {
        return groups.get(g).materials().stream()
                .map(model::material)
                .mapToLong(m -> m.grams() == 0 ? 0 : MILLI * m.cents() * UNIT_GRAMS / m.grams())
                .min()
                .orElse(0);
    }

    /** The most that a unit of mass of a group costs, rounded up. */
    long mostMilliCents(int g) {
        return groups.get(g).materials().stream()
                .map(model::material)
                .mapToLong(m -> m.grams() == 0 ? 0 : Math.ceilDiv(MILLI * m.cents() * UNIT_GRAMS, m.grams()))
                .max()
                .orElse(0);
    }

    /** The least room a unit of mass of a group takes. */
    long millilitres(int g) {
        return groups.get(g).materials().stream()
                .map(model::material)
                .mapToLong(m -> m.grams() == 0 ? 0 : m.millilitres() * UNIT_GRAMS / m.grams())
                .min()
                .orElse(0);
    }

    /** Of what own vehicles fetch again and again; a single great piece is another matter. */
    long heaviestPack() {
        return groups.stream()
                .filter(g -> g.way().dry())
                .flatMap(g -> g.materials().stream())
                .mapToLong(m -> model.material(m).grams())
                .max()
                .orElse(0);
    }

    /** What lies on site of it. */
    long stock(int g) {
        Set<String> ids = groups.get(g).materials().stream()
                .map(m -> model.material(m).id())
                .collect(Collectors.toSet());
        long grams = 0;
        for (StockLot lot : model.problem.site().stock()) {
            if (ids.contains(lot.material())) {
                grams += lot.packs()
                        * model.material(model.materialIndex.of(lot.material())).grams();
            }
        }
        return Math.min(MOST_UNITS, Math.ceilDiv(grams, UNIT_GRAMS));
    }

    /** What may be used up of a group by a day beyond the shares of the work done. */
    long slack(int g, int t) {
        long rounding = 0;
        for (int s = 0; s < model.stageCount; s++) {
            Stage stage = model.stage(s);
            if (uses[g][s].whole() > 0) {
                rounding += 1 + (stage.layout() == Layout.IN_ONE_GO ? 0 : stage.labourQuarters());
            }
        }
        return rounding + lastPacks(g, t);
    }

    /** A pack of each material of a group for each stage that may be in progress on a trip. */
    long lastPacks(int g, int t) {
        long sum = 0;
        for (int s = 0; s < model.stageCount; s++) {
            boolean open = uses[g][s].whole() > 0
                    && model.stage(s).layout() != Layout.IN_ONE_GO
                    && windows.earliestEpoch(s) <= model.dayEpoch[model.lastDayOfTrip[t]]
                    && windows.latestFinishDay(s) >= model.firstDayOfTrip[t];
            for (int n = 0; open && n < model.needMaterial[s].length; n++) {
                int m = model.needMaterial[s][n];
                sum += groups.get(g).materials().contains(m)
                        ? Math.ceilDiv(model.material(m).grams(), UNIT_GRAMS)
                        : 0;
            }
        }
        return sum;
    }
}
