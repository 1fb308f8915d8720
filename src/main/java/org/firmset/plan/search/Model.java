package org.firmset.plan.search;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.firmset.plan.DayPower;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Former;
import org.firmset.plan.Material;
import org.firmset.plan.Need;
import org.firmset.plan.Pin;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Stage;
import org.firmset.plan.StockLot;
import org.firmset.plan.Style;
import org.firmset.plan.Subproject;
import org.firmset.plan.Tool;
import org.firmset.plan.ToolUse;
import org.firmset.plan.Trip;
import org.firmset.plan.WeatherOdds;
import org.jspecify.annotations.Nullable;

/**
 * The planning problem by number instead of by name: stages, site days, trips and materials are counted from 0 in the
 * order of the problem, dates are epoch days. Does not change once made.
 */
final class Model {
    /** In place of a date: the plan before did not have the stage. */
    static final int NOT_PLANNED = Integer.MIN_VALUE;

    private static final int MOST_EPOCH = Integer.MAX_VALUE / 2;

    final PlanningProblem problem;
    final List<SiteDay> days = new ArrayList<>();
    final int[] dayEpoch;
    final int[] tripOfDay;
    final int[] firstDayOfTrip;
    final int[] lastDayOfTrip;
    final int statusEpoch;

    final int stageCount;
    final int[] laneOf;
    /** Whether a stage may work on a day as far as season, crew and pins go. */
    final boolean[][] allowed;

    final List<List<Link>> before = new ArrayList<>();
    final List<List<Link>> after = new ArrayList<>();
    final int[][] needMaterial;
    final int[][] needPacks;
    /** What makes one plan better than another; without a plan before, none can be kept to. */
    final Style style;

    /** For each stage the epoch days on which the plan before started and finished it; empty when there was none. */
    final int[] formerStart;

    final int[] formerFinish;
    /** For each stage and site day how often in a thousand the weather is unfit; empty for stages that ask nothing of it. */
    final int[][] unfit;

    final int[][] toolOf;
    final int[][] toolCount;
    final Index stageIndex;
    final Index materialIndex;
    final Index laneIndex;
    final int[] availableEpoch;
    /** For each offer and site day the date on which it brings what is there on that day; null when it brings nothing. */
    final @Nullable LocalDate[][] brought;

    /** No charge goes down by more between two moments of a trip, whatever comes in besides. */
    final long usableWattHours;
    /** What comes in on a day at the most, less what is drawn besides work. */
    final long[] broughtWattHours;

    /** Each day as the battery sees it without work; empty when no stage draws. */
    final BatteryHours[] batteryHours;
    /** What the battery allows of each stage by itself. */
    final AloneOnBattery alone;

    Model(PlanningProblem problem) {
        this.problem = problem;
        List<Trip> trips = problem.trips();
        firstDayOfTrip = new int[trips.size()];
        lastDayOfTrip = new int[trips.size()];
        List<Integer> tripNumbers = new ArrayList<>();
        for (int t = 0; t < trips.size(); t++) {
            firstDayOfTrip[t] = days.size();
            for (SiteDay day : trips.get(t).days()) {
                days.add(day);
                tripNumbers.add(t);
            }
            lastDayOfTrip[t] = days.size() - 1;
        }
        tripOfDay = tripNumbers.stream().mapToInt(Integer::intValue).toArray();
        long capacity = problem.site().power().capacityWattHours();
        usableWattHours = days.stream()
                .mapToLong(d -> Math.max(0, capacity - d.power().floorWattHours()))
                .max()
                .orElse(0);
        broughtWattHours = days.stream().mapToLong(this::brought).toArray();
        dayEpoch = days.stream().mapToInt(d -> epoch(d.date())).toArray();
        statusEpoch = epoch(problem.statusDate());

        stageIndex = new Index(problem.stages().stream().map(Stage::id).toList());
        materialIndex = new Index(problem.materials().stream().map(Material::id).toList());
        laneIndex = new Index(problem.subprojects().stream().map(Subproject::id).toList());
        stageCount = problem.stages().size();
        laneOf = problem.stages().stream()
                .mapToInt(s -> laneIndex.of(s.subproject()))
                .toArray();
        needMaterial = new int[stageCount][];
        needPacks = new int[stageCount][];
        for (int s = 0; s < stageCount; s++) {
            List<Need> needs = stage(s).needs();
            needMaterial[s] =
                    needs.stream().mapToInt(n -> materialIndex.of(n.material())).toArray();
            needPacks[s] = needs.stream().mapToInt(Need::packs).toArray();
        }
        Index tools = new Index(problem.tools().stream().map(Tool::id).toList());
        toolOf = new int[stageCount][];
        toolCount = new int[stageCount][];
        for (int s = 0; s < stageCount; s++) {
            List<ToolUse> uses = stage(s).tools();
            toolOf[s] = uses.stream().mapToInt(u -> tools.of(u.tool())).toArray();
            toolCount[s] = uses.stream().mapToInt(ToolUse::count).toArray();
        }
        availableEpoch = problem.materials().stream()
                .mapToInt(m -> epoch(m.availableFrom()))
                .toArray();
        brought = new LocalDate[problem.offers().size()][];
        for (int o = 0; o < brought.length; o++) {
            brought[o] = brought(problem.offers().get(o));
        }
        allowed = allowedDays();
        formerStart = former(Former::start);
        formerFinish = former(Former::finish);
        unfit = unfit();
        style = problem.style() == Style.LEAST_CHANGE && problem.former().isEmpty() ? Style.SOONEST : problem.style();
        batteryHours = batteryHours();
        alone = new AloneOnBattery(this);
        linkStages();
    }

    private BatteryHours[] batteryHours() {
        boolean used = problem.stages().stream().anyMatch(s -> s.wattHoursPerHour() > 0);
        BatteryHours[] result = new BatteryHours[used ? days.size() : 0];
        for (int d = 0; d < result.length; d++) {
            result[d] = new BatteryHours(problem.site().power(), days.get(d).power(), isFirstDay(d));
        }
        return result;
    }

    private long brought(SiteDay day) {
        DayPower power = day.power();
        long base = power.baseWatts() * DayPower.HOURS;
        return Math.max(0, power.harvestWattHours() + problem.site().generatorWattHoursPerDay() - base);
    }

    private @Nullable LocalDate[] brought(DeliveryOffer offer) {
        @Nullable LocalDate[] result = new @Nullable LocalDate[days.size()];
        for (int d = 0; d < result.length; d++) {
            result[d] = brought(offer, d);
        }
        return result;
    }

    /** The later it is dropped the longer it keeps, and the more can be had: no other date could be better. */
    private @Nullable LocalDate brought(DeliveryOffer offer, int day) {
        LocalDate date = days.get(day).date();
        if (offer.attended() || !isFirstDay(day)) {
            return offer.comesOn(date) ? date : null;
        }
        LocalDate eve = problem.statusDate().minusDays(1);
        return offer.lastBetween(day == 0 ? eve : days.get(day - 1).date(), date)
                .orElse(null);
    }

    /** Whether an offer may bring a material on a date for a site day. What must stay dry needs somebody to stow it. */
    boolean brings(DeliveryOffer offer, int material, LocalDate broughtOn, int day) {
        return offer.materials().contains(material(material).id())
                && availableEpoch[material] <= epoch(broughtOn)
                && (!material(material).dry() || broughtOn.equals(days.get(day).date()));
    }

    static int epoch(LocalDate date) {
        // beyond five million years one date is as good as another
        return Math.clamp(date.toEpochDay(), -MOST_EPOCH, MOST_EPOCH);
    }

    private int[] former(Function<Former, LocalDate> date) {
        if (problem.former().isEmpty()) {
            return new int[0];
        }
        int[] result = new int[stageCount];
        Arrays.fill(result, NOT_PLANNED);
        problem.former().forEach(f -> result[stageIndex.of(f.stage())] = epoch(date.apply(f)));
        return result;
    }

    private int[][] unfit() {
        int[][] result = new int[stageCount][0];
        for (WeatherOdds odds : problem.odds()) {
            int d = dayFrom(epoch(odds.date()));
            if (stageIndex.knows(odds.stage())
                    && d < days.size()
                    && days.get(d).date().equals(odds.date())) {
                int s = stageIndex.of(odds.stage());
                result[s] = result[s].length == 0 ? new int[days.size()] : result[s];
                result[s][d] = WeatherOdds.ALWAYS - odds.permille();
            }
        }
        return result;
    }

    private boolean[][] allowedDays() {
        Map<String, Pin> pins = new HashMap<>();
        problem.pins().forEach(p -> pins.put(p.stage(), p));
        boolean[][] result = new boolean[stageCount][days.size()];
        for (int s = 0; s < stageCount; s++) {
            Stage stage = stage(s);
            Pin pin = pins.get(stage.id());
            boolean equipped = hasTools(s);
            for (int d = 0; d < days.size(); d++) {
                SiteDay day = days.get(d);
                result[s][d] = equipped
                        && day.people() >= stage.crew()
                        && (pin == null || pin.dates().contains(day.date()))
                        && !stage.isShutOn(day.date());
            }
        }
        return result;
    }

    /** Whether there are as many of every tool as a stage uses at once. */
    boolean hasTools(int s) {
        for (int u = 0; u < toolOf[s].length; u++) {
            if (toolCount[s][u] > problem.tools().get(toolOf[s][u]).count()) {
                return false;
            }
        }
        return true;
    }

    private void linkStages() {
        for (int s = 0; s < stageCount; s++) {
            before.add(new ArrayList<>());
            after.add(new ArrayList<>());
        }
        List<Link> links = new ArrayList<>();
        for (int w = 0; w < problem.waits().size(); w++) {
            links.add(new Link(w, problem.waits().get(w), this));
        }
        for (Link link : Spare.leftOut(this, links)) {
            before.get(link.to).add(link);
            after.get(link.from).add(link);
        }
    }

    Stage stage(int s) {
        return problem.stages().get(s);
    }

    /** How many waits there are that count. */
    long linkCount() {
        return before.stream().mapToLong(List::size).sum();
    }

    /** How much a day to the finish of a subproject counts. */
    int weight(int lane) {
        return problem.subprojects().get(lane).weight();
    }

    Material material(int m) {
        return problem.materials().get(m);
    }

    Trip trip(int t) {
        return problem.trips().get(t);
    }

    StockLot lot(int l) {
        return problem.site().stock().get(l);
    }

    boolean isFirstDay(int day) {
        return firstDayOfTrip[tripOfDay[day]] == day;
    }

    int dayCount() {
        return days.size();
    }

    int tripCount() {
        return problem.trips().size();
    }

    /** The first site day on or after an epoch day; {@link #dayCount()} when there is none. */
    int dayFrom(int epoch) {
        int at = Arrays.binarySearch(dayEpoch, epoch);
        return at >= 0 ? at : -at - 1;
    }
}
