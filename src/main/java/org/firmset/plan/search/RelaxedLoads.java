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
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Layout;
import org.firmset.trade.haul.Payload;
import org.firmset.trade.haul.Rig;

/**
 * Loads as {@link Relaxed} sees them: by mass, materials that come the same way taken together. A trip brings what its
 * arrival run and its extra runs can carry, extra runs take their hours and their money, a delivery comes whole or not at
 * all, and the dry room holds what it holds. Bays and single packs are left out, so every plan keeps this,
 * unless it is written carefully: then it keeps a pack's room to spare everywhere, and proves nothing.
 */
final class RelaxedLoads {
    private final Model model;
    private final RelaxedWork work;
    private final CpModel cp;
    private final boolean careful;
    private final LoadGroups groups;
    private final IntVar[] extraRuns;
    private final Map<Integer, BoolVar> deliveries = new LinkedHashMap<>();
    private final IntVar[][] own;
    /** What is on site after each trip. */
    private final IntVar[][] left;

    private final List<Map<Integer, IntVar>> delivered = new ArrayList<>();
    private final SmallOrders smallOrders;

    RelaxedLoads(Model model, Windows windows, RelaxedWork work, boolean careful) {
        this.model = model;
        this.work = work;
        this.careful = careful;
        cp = work.cp;
        groups = new LoadGroups(model, windows, careful);
        extraRuns = new IntVar[model.tripCount()];
        for (int t = 0; t < extraRuns.length; t++) {
            extraRuns[t] =
                    cp.newIntVar(0, groups.count() == 0 ? 0 : model.trip(t).mostExtraRuns(), "");
        }
        own = new IntVar[groups.count()][model.tripCount()];
        left = new IntVar[groups.count()][model.tripCount()];
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
        long[][] grams = new long[groups.count()][model.tripCount()];
        long[][][] brought = new long[groups.count()][model.problem.offers().size()][model.dayCount()];
        for (int g = 0; g < groups.count(); g++) {
            for (int m : groups.materials(g)) {
                groupOf[m] = g;
            }
            for (int t = 0; t < model.tripCount(); t++) {
                grams[g][t] = LoadGroups.UNIT_GRAMS * solution.value(own[g][t]);
            }
            long[][] ofGroup = brought[g];
            delivered
                    .get(g)
                    .forEach((key, units) -> ofGroup[key / model.dayCount()][key % model.dayCount()] =
                            LoadGroups.UNIT_GRAMS * solution.value(units));
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

    void write() {
        for (int g = 0; g < groups.count(); g++) {
            bring(g);
        }
        for (int t = 0; t < model.tripCount(); t++) {
            carry(t);
            extraRunsNeedTheTrip(t);
        }
        loadTrucks();
        deliveries.forEach(this::order);
        for (int g = 0; g < groups.count(); g++) {
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

    /** In thousandths of a cent: in no month more for trips, runs, deliveries and what they bring than may be spent. */
    private void pay() {
        if (!groups.isPaid()) {
            return;
        }
        long limit = Math.min(
                Long.MAX_VALUE / 8 / LoadGroups.MILLI,
                Objects.requireNonNull(model.problem.spending()).centsAMonth());
        Purse months = new Purse(model);
        LinearExprBuilder[] spent = new LinearExprBuilder[months.monthCount()];
        Arrays.setAll(spent, m -> LinearExpr.newBuilder());
        for (int t = 0; t < model.tripCount(); t++) {
            LinearExprBuilder month = spent[months.monthOf(model.firstDayOfTrip[t])];
            month.addTerm(work.made[t], LoadGroups.MILLI * model.trip(t).cents());
            month.addTerm(extraRuns[t], LoadGroups.MILLI * model.trip(t).extraRunCents());
            for (int g = 0; g < groups.count(); g++) {
                month.addTerm(own[g][t], groups.milliCents(g));
            }
        }
        deliveries.forEach((key, comes) -> spent[months.monthOf(key % model.dayCount())].addTerm(
                comes, LoadGroups.MILLI * offer(key).cents()));
        smallOrders.forEach(
                (key, extra) -> spent[months.monthOf(key % model.dayCount())].addTerm(extra, LoadGroups.MILLI));
        for (int g = 0; g < groups.count(); g++) {
            long each = groups.milliCents(g);
            delivered
                    .get(g)
                    .forEach((key, units) -> spent[months.monthOf(key % model.dayCount())].addTerm(units, each));
        }
        for (LinearExprBuilder month : spent) {
            cp.addLessOrEqual(month, LoadGroups.MILLI * limit);
        }
    }

    private void extraRunsNeedTheTrip(int t) {
        if (model.trip(t).mostExtraRuns() > 0) {
            cp.addLessOrEqual(
                    extraRuns[t], LinearExpr.term(work.made[t], model.trip(t).mostExtraRuns()));
        }
    }

    private void bring(int g) {
        LoadGroups.Way way = groups.way(g);
        long all = groups.needed(g);
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
                        model.problem.offers().get(offer), groups.materials(g).getFirst(), brought, day);
    }

    /** What has a price but no mass is not seen here: an order of it may be as large as one likes. */
    private void order(int key, BoolVar comes) {
        List<SmallOrders.Goods> goods = new ArrayList<>();
        for (int g = 0; g < groups.count(); g++) {
            IntVar units = delivered.get(g).get(key);
            if (units != null) {
                goods.add(new SmallOrders.Goods(units, careful ? groups.milliCents(g) : groups.mostMilliCents(g)));
            }
        }
        boolean seen = groups.allMaterials()
                .allMatch(m -> m.grams() > 0
                        || m.cents() == 0
                        || !offer(key).materials().contains(m.id()));
        if (seen) {
            smallOrders.add(key, offer(key), comes, goods);
        }
    }

    /** All runs of a trip together carry no more than so many full ones. */
    private void carry(int t) {
        Rig rig = model.trip(t).rig();
        long spare = careful ? rig.bays().size() * groups.heaviestPack() : 0;
        long most = Math.clamp(
                Math.ceilDiv(Payload.mostGrams(rig) - spare, LoadGroups.UNIT_GRAMS), 0, LoadGroups.MOST_UNITS);
        LinearExprBuilder carried = LinearExpr.newBuilder();
        for (int g = 0; g < groups.count(); g++) {
            carried.add(own[g][t]);
        }
        carried.addTerm(work.made[t], -most);
        carried.addTerm(extraRuns[t], -most);
        cp.addLessOrEqual(carried, 0);
    }

    private void loadTrucks() {
        for (Map.Entry<Integer, BoolVar> delivery : deliveries.entrySet()) {
            int key = delivery.getKey();
            long most = Math.min(LoadGroups.MOST_UNITS, Math.ceilDiv(offer(key).grams(), LoadGroups.UNIT_GRAMS));
            LinearExprBuilder carried = LinearExpr.newBuilder();
            for (Map<Integer, IntVar> group : delivered) {
                if (group.get(key) != null) {
                    carried.add(group.get(key));
                }
            }
            carried.addTerm(delivery.getValue(), -most);
            cp.addLessOrEqual(carried, 0);
            cp.addImplication(delivery.getValue(), work.made[model.tripOfDay[key % model.dayCount()]]);
        }
    }

    /** What is on site after a trip is what was there, what came and not what was used. */
    private void keepStock(int g) {
        long all = groups.needed(g) + groups.stock(g);
        IntVar before = cp.newConstant(groups.stock(g));
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
        int shelfLife = groups.way(g).shelfLifeDays();
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
            cp.addLessOrEqual(rest, groups.stock(g) + (careful ? 0 : groups.lastPacks(g, model.tripOfDay[d])));
        }
    }

    private int broughtEpoch(int key) {
        return Model.epoch(Objects.requireNonNull(model.brought[key / model.dayCount()][key % model.dayCount()]));
    }

    private void use(LinearExprBuilder sum, int g, int from, int to, long sign) {
        for (int s = 0; s < model.stageCount; s++) {
            LoadGroups.Use use = groups.use(g, s);
            if (use.whole() == 0) {
                continue;
            }
            boolean whole = model.stage(s).layout() == Layout.IN_ONE_GO;
            for (int d = from; d <= to; d++) {
                if (whole && work.works[s][d] != null) {
                    sum.addTerm(work.works[s][d], sign * use.whole());
                } else if (!whole && work.amount[s][d] != null) {
                    sum.addTerm(work.amount[s][d], sign * use.perQuarter());
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
        for (int g = 0; g < groups.count(); g++) {
            if (!groups.way(g).dry()) {
                continue;
            }
            comings.addAll(comings(g, t, day));
            long each = groups.millilitres(g);
            there.addTerm(left[g][t], each);
            use(there, g, day + 1, model.lastDayOfTrip[t], each);
            for (Map.Entry<Integer, IntVar> brought : delivered.get(g).entrySet()) {
                int on = brought.getKey() % model.dayCount();
                if (model.tripOfDay[on] == t && on > day) {
                    there.addTerm(brought.getValue(), -each);
                }
            }
            slack += careful
                    ? -each * Math.ceilDiv(groups.heaviestPack(), LoadGroups.UNIT_GRAMS)
                    : each * groups.slack(g, t);
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
            cp.addLessOrEqual(own[g][t], LinearExpr.term(arrives, groups.needed(g)));
            result.add(arrives);
        }
        for (int offer : groups.way(g).offers()) {
            IntVar brought = delivered.get(g).get(key(offer, day));
            if (brought != null) {
                BoolVar arrives = cp.newBoolVar("");
                cp.addLessOrEqual(brought, LinearExpr.term(arrives, groups.needed(g)));
                result.add(arrives);
            }
        }
        return result;
    }
}
