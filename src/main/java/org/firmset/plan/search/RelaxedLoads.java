package org.firmset.plan.search;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Layout;
import org.firmset.plan.Material;
import org.firmset.plan.Stage;
import org.firmset.plan.StockLot;
import org.firmset.trade.haul.Payload;
import org.firmset.trade.haul.Rig;
import org.jspecify.annotations.Nullable;

/**
 * Loads as {@link Relaxed} sees them: by mass, materials that come the same way taken together. A trip brings what its
 * arrival run and its extra runs can carry, extra runs take their hours and their money, a delivery comes whole or not at
 * all, and the dry room holds what it holds. Bays and single packs are left out, so every plan keeps this,
 * unless it is written carefully: then it keeps a pack's room to spare everywhere, and proves nothing.
 */
final class RelaxedLoads {
    private static final long UNIT_GRAMS = 100;
    private static final long MOST_UNITS = 1L << 40;

    private static final long MILLI = 1000;

    /**
     * Materials that are equally dry, keep equally long, are to be had from the same date and brought by the same offers.
     *
     * @param material where each is paid by itself; the same for all where money has no limit
     */
    private record Way(boolean dry, int shelfLifeDays, int available, Set<Integer> offers, int material) {}

    private record Group(Way way, List<Integer> materials) {}

    /** What one stage uses of a group, in units of mass rounded down. */
    private record Use(long whole, long perQuarter) {}

    private final Model model;
    private final CpModel cp;
    private final @Nullable IntVar[][] amount;
    private final @Nullable BoolVar[][] works;
    private final BoolVar[] made;
    private final boolean careful;
    private final Windows windows;
    private final List<Group> groups;
    private final Use[][] uses;
    private final IntVar[] extraRuns;
    private final Map<Integer, BoolVar> deliveries = new LinkedHashMap<>();
    private final IntVar[][] own;
    /** What is on site after each trip. */
    private final IntVar[][] left;

    private final List<Map<Integer, IntVar>> delivered = new ArrayList<>();
    private final SmallOrders smallOrders;

    RelaxedLoads(
            Model model,
            Windows windows,
            CpModel cp,
            @Nullable IntVar[][] amount,
            @Nullable BoolVar[][] works,
            BoolVar[] made,
            boolean careful) {
        this.careful = careful;
        this.model = model;
        this.windows = windows;
        this.cp = cp;
        this.amount = amount;
        this.works = works;
        this.made = made;
        groups = groups();
        uses = uses();
        extraRuns = new IntVar[model.tripCount()];
        for (int t = 0; t < extraRuns.length; t++) {
            extraRuns[t] = cp.newIntVar(0, groups.isEmpty() ? 0 : model.trip(t).mostExtraRuns(), "");
        }
        own = new IntVar[groups.size()][model.tripCount()];
        left = new IntVar[groups.size()][model.tripCount()];
        smallOrders = new SmallOrders(cp, careful);
    }

    /** How many extra runs each trip makes. */
    IntVar extraRuns(int trip) {
        return extraRuns[trip];
    }

    /** Adds what extra runs and deliveries cost. */
    void addCosts(LinearExprBuilder cents) {
        for (int t = 0; t < extraRuns.length; t++) {
            cents.addTerm(extraRuns[t], model.trip(t).extraRunCents());
        }
        deliveries.forEach((key, comes) -> cents.addTerm(comes, offer(key).cents()));
        smallOrders.forEach((key, extra) -> cents.add(extra));
    }

    Guide.Loads loads(CpSolver solution) {
        int[] groupOf = new int[model.problem.materials().size()];
        Arrays.fill(groupOf, Guide.Loads.NO_GROUP);
        long[][] grams = new long[groups.size()][model.tripCount()];
        long[][][] brought = new long[groups.size()][model.problem.offers().size()][model.dayCount()];
        for (int g = 0; g < groups.size(); g++) {
            for (int m : groups.get(g).materials()) {
                groupOf[m] = g;
            }
            for (int t = 0; t < model.tripCount(); t++) {
                grams[g][t] = UNIT_GRAMS * solution.value(own[g][t]);
            }
            long[][] ofGroup = brought[g];
            delivered
                    .get(g)
                    .forEach((key, units) -> ofGroup[key / model.dayCount()][key % model.dayCount()] =
                            UNIT_GRAMS * solution.value(units));
        }
        int[] extra = Arrays.stream(extraRuns)
                .mapToInt(runs -> (int) solution.value(runs))
                .toArray();
        return new Guide.Loads(groupOf, grams, extra, brought);
    }

    private int key(int offer, int day) {
        return offer * model.dayCount() + day;
    }

    private DeliveryOffer offer(int key) {
        return model.problem.offers().get(key / model.dayCount());
    }

    private List<Group> groups() {
        Map<Way, List<Integer>> byWay = new LinkedHashMap<>();
        for (int m = 0; m < model.problem.materials().size(); m++) {
            if (isUsed(m)) {
                byWay.computeIfAbsent(way(m), w -> new ArrayList<>()).add(m);
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

    private Way way(int m) {
        Material material = model.material(m);
        Set<Integer> offers = new java.util.TreeSet<>();
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

    void write() {
        for (int g = 0; g < groups.size(); g++) {
            bring(g);
        }
        for (int t = 0; t < model.tripCount(); t++) {
            carry(t);
            extraRunsNeedTheTrip(t);
        }
        loadTrucks();
        deliveries.forEach(this::order);
        for (int g = 0; g < groups.size(); g++) {
            keepStock(g);
            useInTime(g);
        }
        for (int t = 0; t < model.tripCount(); t++) {
            for (int d = model.firstDayOfTrip[t]; d <= model.lastDayOfTrip[t]; d++) {
                keepDry(t, d);
            }
        }
        pay();
    }

    private boolean isPaid() {
        var limit = model.problem.spending();
        return limit != null && limit.hard();
    }

    /** In thousandths of a cent: in no month more for trips, runs, deliveries and what they bring than may be spent. */
    private void pay() {
        if (!isPaid()) {
            return;
        }
        long limit = Math.min(
                Long.MAX_VALUE / 8 / MILLI,
                Objects.requireNonNull(model.problem.spending()).centsAMonth());
        Purse months = new Purse(model);
        LinearExprBuilder[] spent = new LinearExprBuilder[months.monthCount()];
        Arrays.setAll(spent, m -> LinearExpr.newBuilder());
        for (int t = 0; t < model.tripCount(); t++) {
            LinearExprBuilder month = spent[months.monthOf(model.firstDayOfTrip[t])];
            month.addTerm(made[t], MILLI * model.trip(t).cents());
            month.addTerm(extraRuns[t], MILLI * model.trip(t).extraRunCents());
            for (int g = 0; g < groups.size(); g++) {
                month.addTerm(own[g][t], milliCents(g));
            }
        }
        deliveries.forEach((key, comes) -> spent[months.monthOf(key % model.dayCount())].addTerm(
                comes, MILLI * offer(key).cents()));
        smallOrders.forEach((key, extra) -> spent[months.monthOf(key % model.dayCount())].addTerm(extra, MILLI));
        for (int g = 0; g < groups.size(); g++) {
            long each = milliCents(g);
            delivered
                    .get(g)
                    .forEach((key, units) -> spent[months.monthOf(key % model.dayCount())].addTerm(units, each));
        }
        for (LinearExprBuilder month : spent) {
            cp.addLessOrEqual(month, MILLI * limit);
        }
    }

    /** The least that a unit of mass of a group costs. */
    private long milliCents(int g) {
        return groups.get(g).materials().stream()
                .map(model::material)
                .mapToLong(m -> m.grams() == 0 ? 0 : MILLI * m.cents() * UNIT_GRAMS / m.grams())
                .min()
                .orElse(0);
    }

    private void extraRunsNeedTheTrip(int t) {
        if (model.trip(t).mostExtraRuns() > 0) {
            cp.addLessOrEqual(
                    extraRuns[t], LinearExpr.term(made[t], model.trip(t).mostExtraRuns()));
        }
    }

    private long needed(int g) {
        long sum = 0;
        for (Use use : uses[g]) {
            sum += use.whole();
        }
        return sum;
    }

    private void bring(int g) {
        Way way = groups.get(g).way();
        long all = needed(g);
        for (int t = 0; t < model.tripCount(); t++) {
            boolean toBeHad = way.available() <= model.dayEpoch[model.firstDayOfTrip[t]];
            own[g][t] = cp.newIntVar(0, toBeHad ? all : 0, "");
        }
        Map<Integer, IntVar> brought = new LinkedHashMap<>();
        for (int offer : way.offers()) {
            for (int d = 0; d < model.dayCount(); d++) {
                if (brings(offer, g, d)) {
                    int key = key(offer, d);
                    deliveries.computeIfAbsent(key, k -> cp.newBoolVar(""));
                    brought.put(key, cp.newIntVar(0, all, ""));
                }
            }
        }
        delivered.add(brought);
    }

    /** Materials of a group are brought alike. */
    private boolean brings(int offer, int g, int day) {
        LocalDate brought = model.brought[offer][day];
        return brought != null
                && model.brings(
                        model.problem.offers().get(offer),
                        groups.get(g).materials().getFirst(),
                        brought,
                        day);
    }

    /** What has a price but no mass is not seen here: an order of it may be as large as one likes. */
    private void order(int key, BoolVar comes) {
        List<SmallOrders.Goods> goods = new ArrayList<>();
        for (int g = 0; g < groups.size(); g++) {
            IntVar units = delivered.get(g).get(key);
            if (units != null) {
                goods.add(new SmallOrders.Goods(units, careful ? milliCents(g) : mostMilliCents(g)));
            }
        }
        boolean seen = groups.stream()
                .flatMap(g -> g.materials().stream())
                .map(model::material)
                .allMatch(m -> m.grams() > 0
                        || m.cents() == 0
                        || !offer(key).materials().contains(m.id()));
        if (seen) {
            smallOrders.add(key, offer(key), comes, goods);
        }
    }

    /** The most that a unit of mass of a group costs, rounded up. */
    private long mostMilliCents(int g) {
        return groups.get(g).materials().stream()
                .map(model::material)
                .mapToLong(m -> m.grams() == 0 ? 0 : Math.ceilDiv(MILLI * m.cents() * UNIT_GRAMS, m.grams()))
                .max()
                .orElse(0);
    }

    /** All runs of a trip together carry no more than so many full ones. */
    private void carry(int t) {
        Rig rig = model.trip(t).rig();
        long spare = careful ? rig.bays().size() * heaviestPack() : 0;
        long most = Math.clamp(Math.ceilDiv(Payload.mostGrams(rig) - spare, UNIT_GRAMS), 0, MOST_UNITS);
        LinearExprBuilder carried = LinearExpr.newBuilder();
        for (int g = 0; g < groups.size(); g++) {
            carried.add(own[g][t]);
        }
        carried.addTerm(made[t], -most);
        carried.addTerm(extraRuns[t], -most);
        cp.addLessOrEqual(carried, 0);
    }

    /** Of what own vehicles fetch again and again; a single great piece is another matter. */
    private long heaviestPack() {
        return groups.stream()
                .filter(g -> g.way().dry())
                .flatMap(g -> g.materials().stream())
                .mapToLong(m -> model.material(m).grams())
                .max()
                .orElse(0);
    }

    private void loadTrucks() {
        for (Map.Entry<Integer, BoolVar> delivery : deliveries.entrySet()) {
            int key = delivery.getKey();
            long most = Math.min(MOST_UNITS, Math.ceilDiv(offer(key).grams(), UNIT_GRAMS));
            LinearExprBuilder carried = LinearExpr.newBuilder();
            for (Map<Integer, IntVar> group : delivered) {
                if (group.get(key) != null) {
                    carried.add(group.get(key));
                }
            }
            carried.addTerm(delivery.getValue(), -most);
            cp.addLessOrEqual(carried, 0);
            cp.addImplication(delivery.getValue(), made[model.tripOfDay[key % model.dayCount()]]);
        }
    }

    /** What is on site after a trip is what was there, what came and not what was used. */
    private void keepStock(int g) {
        long all = needed(g) + stock(g);
        IntVar before = cp.newConstant(stock(g));
        for (int t = 0; t < model.tripCount(); t++) {
            IntVar after = cp.newIntVar(0, all, "");
            LinearExprBuilder change = LinearExpr.newBuilder();
            change.add(before);
            change.addTerm(after, -1);
            change.add(own[g][t]);
            for (Map.Entry<Integer, IntVar> brought : delivered.get(g).entrySet()) {
                if (model.tripOfDay[brought.getKey() % model.dayCount()] == t) {
                    change.add(brought.getValue());
                }
            }
            use(change, g, model.firstDayOfTrip[t], model.lastDayOfTrip[t], -1);
            // packs may be brought for nothing, but never used before they come
            cp.addGreaterOrEqual(change, 0);
            left[g][t] = after;
            before = after;
        }
    }

    /**
     * On a day no more is used than came within the shelf life before it; each day by itself. Whole packs are used up
     * ahead of the work, so that of a stage in progress a pack less may be used on a day than its share.
     */
    private void useInTime(int g) {
        int shelfLife = groups.get(g).way().shelfLifeDays();
        if (shelfLife >= model.dayEpoch[model.dayCount() - 1] - model.dayEpoch[0]) {
            return;
        }
        for (int d = 0; d < model.dayCount(); d++) {
            int oldest = model.dayEpoch[d] - shelfLife;
            LinearExprBuilder rest = LinearExpr.newBuilder();
            use(rest, g, d, d, 1);
            for (int t = 0; t <= model.tripOfDay[d]; t++) {
                if (model.dayEpoch[model.firstDayOfTrip[t]] >= oldest) {
                    rest.addTerm(own[g][t], -1);
                }
            }
            for (Map.Entry<Integer, IntVar> brought : delivered.get(g).entrySet()) {
                int on = brought.getKey() % model.dayCount();
                if (on <= d && broughtEpoch(brought.getKey()) >= oldest) {
                    rest.addTerm(brought.getValue(), -1);
                }
            }
            cp.addLessOrEqual(rest, stock(g) + (careful ? 0 : lastPacks(g, model.tripOfDay[d])));
        }
    }

    private int broughtEpoch(int key) {
        return Model.epoch(Objects.requireNonNull(model.brought[key / model.dayCount()][key % model.dayCount()]));
    }

    private void use(LinearExprBuilder sum, int g, int from, int to, long sign) {
        for (int s = 0; s < model.stageCount; s++) {
            Use use = uses[g][s];
            if (use.whole() == 0) {
                continue;
            }
            boolean whole = model.stage(s).layout() == Layout.IN_ONE_GO;
            for (int d = from; d <= to; d++) {
                if (whole && works[s][d] != null) {
                    sum.addTerm(works[s][d], sign * use.whole());
                } else if (!whole && amount[s][d] != null) {
                    sum.addTerm(amount[s][d], sign * use.perQuarter());
                }
            }
        }
    }

    /**
     * At the end of a day on which dry goods come, the dry room holds what is there. Of a stage in progress a pack more
     * may be used up than its share, and what is lost by rounding down may be used as well.
     */
    private void keepDry(int t, int day) {
        List<Literal> comings = new ArrayList<>();
        LinearExprBuilder there = LinearExpr.newBuilder();
        long slack = 0;
        for (int g = 0; g < groups.size(); g++) {
            if (!groups.get(g).way().dry()) {
                continue;
            }
            comings.addAll(comings(g, t, day));
            long each = millilitres(g);
            there.addTerm(left[g][t], each);
            use(there, g, day + 1, model.lastDayOfTrip[t], each);
            for (Map.Entry<Integer, IntVar> brought : delivered.get(g).entrySet()) {
                int on = brought.getKey() % model.dayCount();
                if (model.tripOfDay[on] == t && on > day) {
                    there.addTerm(brought.getValue(), -each);
                }
            }
            slack += careful ? -each * Math.ceilDiv(heaviestPack(), UNIT_GRAMS) : each * slack(g, t);
        }
        for (Literal comes : comings) {
            cp.addLessOrEqual(there, model.problem.site().dryStorageMillilitres() + slack)
                    .onlyEnforceIf(comes);
        }
    }

    /** What says that something of a dry group comes on a day. */
    private List<Literal> comings(int g, int t, int day) {
        List<Literal> result = new ArrayList<>();
        if (day == model.firstDayOfTrip[t]) {
            BoolVar arrives = cp.newBoolVar("");
            cp.addLessOrEqual(own[g][t], LinearExpr.term(arrives, needed(g)));
            result.add(arrives);
        }
        for (int offer : groups.get(g).way().offers()) {
            IntVar brought = delivered.get(g).get(key(offer, day));
            if (brought != null) {
                BoolVar arrives = cp.newBoolVar("");
                cp.addLessOrEqual(brought, LinearExpr.term(arrives, needed(g)));
                result.add(arrives);
            }
        }
        return result;
    }

    /** The least room a unit of mass of a group takes. */
    private long millilitres(int g) {
        return groups.get(g).materials().stream()
                .map(model::material)
                .mapToLong(m -> m.grams() == 0 ? 0 : m.millilitres() * UNIT_GRAMS / m.grams())
                .min()
                .orElse(0);
    }

    /** What may be used up of a group by a day beyond the shares of the work done. */
    private long slack(int g, int t) {
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
    private long lastPacks(int g, int t) {
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

    private long stock(int g) {
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
}
