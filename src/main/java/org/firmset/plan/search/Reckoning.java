package org.firmset.plan.search;

import static java.math.BigInteger.ONE;
import static java.math.BigInteger.ZERO;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Material;
import org.firmset.plan.Need;
import org.firmset.plan.Obstacle;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Rule;
import org.firmset.plan.Site;
import org.firmset.plan.SpendingLimit;
import org.firmset.plan.Stage;
import org.firmset.plan.StockLot;
import org.firmset.plan.Trip;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.MassLimit;
import org.firmset.trade.haul.Rig;

/**
 * Keeps sums within what a computer's whole numbers hold. What all stages together could ever take is added up exactly;
 * where that is too much the problem is refused. Room and power beyond it make no difference, and are cut down to it.
 */
final class Reckoning {
    /** Room, power and money up to this are safe to reckon with as they are. */
    private static final long PLENTY = 1L << 45;

    private static final BigInteger LONGS = ONE.shiftLeft(62);
    /** So many times a sum may be taken for each site day. */
    private static final long TIMES = 16;

    private static final long MOST_RUNS_OF_A_TRIP = 1_000;
    /** Runs times materials. */
    private static final long MOST_CELLS = 10_000_000;

    private final PlanningProblem problem;
    private final long days;
    private final Map<String, Material> materials = new HashMap<>();
    private final Set<String> needed = new HashSet<>();
    private BigInteger packs = ZERO;
    private BigInteger grams = ZERO;
    private BigInteger millilitres = ZERO;
    private BigInteger cents = ZERO;
    private BigInteger wattHours = ZERO;
    private BigInteger labour = ZERO;

    Reckoning(PlanningProblem problem) {
        this.problem = problem;
        days = problem.trips().stream().mapToLong(t -> t.days().size()).sum();
        problem.materials().forEach(m -> materials.put(m.id(), m));
        problem.stages().stream().filter(s -> !s.finished()).forEach(this::addStage);
        problem.site().stock().forEach(this::addStock);
        problem.trips().forEach(this::addTrip);
        problem.offers().stream()
                .filter(o -> o.materials().stream().anyMatch(needed::contains))
                .forEach(o -> cents = cents.add(times(o.cents(), days).add(times(o.smallOrderCents(), days))));
        cents = cents.add(fuel());
    }

    private Material material(String id) {
        return Objects.requireNonNull(materials.get(id));
    }

    private void addStage(Stage stage) {
        labour = labour.add(BigInteger.valueOf(stage.labourQuarters()));
        wattHours = wattHours.add(times(stage.wattHoursPerHour(), stage.labourQuarters()));
        for (Need need : stage.needs()) {
            Material material = material(need.material());
            needed.add(need.material());
            packs = packs.add(BigInteger.valueOf(need.packs()));
            addSize(material, need.packs());
            cents = cents.add(times(material.cents(), need.packs()));
        }
    }

    private void addStock(StockLot lot) {
        addSize(material(lot.material()), lot.packs());
    }

    private void addSize(Material material, int count) {
        grams = grams.add(times(material.grams(), count));
        millilitres = millilitres.add(times(material.millilitres(), count));
    }

    private void addTrip(Trip trip) {
        cents = cents.add(BigInteger.valueOf(trip.cents()));
        if (!needed.isEmpty()) {
            cents = cents.add(times(trip.extraRunCents(), trip.mostExtraRuns()));
        }
    }

    private BigInteger fuel() {
        boolean none = problem.site().generatorWattHoursPerDay() == 0;
        return none
                ? ZERO
                : wattHours.multiply(BigInteger.valueOf(problem.site().generatorCentsPerKilowattHour()));
    }

    private static BigInteger times(long one, long other) {
        return BigInteger.valueOf(one).multiply(BigInteger.valueOf(other));
    }

    /** Grams as they count on the limit of which they take the greatest share, in thousandths. */
    private BigInteger shares() {
        long share = problem.trips().stream()
                .flatMap(t -> t.rig().limits().stream())
                .flatMap(l -> l.sharePermille().values().stream())
                .mapToLong(s -> Math.abs((long) s))
                .max()
                .orElse(0);
        return grams.multiply(BigInteger.valueOf(Math.max(1000, share)));
    }

    /** What no computer's whole numbers hold; empty for anything that could be built. */
    List<Obstacle> tooMuch() {
        List<Obstacle> found = new ArrayList<>();
        BigInteger most = LONGS.divide(BigInteger.valueOf(TIMES * (days + 2)));
        if (wattHours.compareTo(most) > 0) {
            found.add(refusal(Rule.POWER, "power that stages draw", "the draw and the labour of each stage"));
        }
        if (shares().compareTo(most) > 0) {
            found.add(refusal(Rule.RUNS, "weight of materials", "the weights of packs and how many are needed"));
        }
        if (millilitres.compareTo(most) > 0) {
            found.add(refusal(Rule.SUPPLIES, "volume of materials", "the sizes of packs and how many are needed"));
        }
        if (packs.compareTo(BigInteger.valueOf(Integer.MAX_VALUE)) > 0) {
            found.add(refusal(Rule.SUPPLIES, "number of packs", "how many packs each stage needs"));
        }
        if (cents.compareTo(most) > 0) {
            found.add(refusal(Rule.MONEY, "sum of all prices", "the prices of trips, runs, fuel and packs"));
        }
        return found;
    }

    private Obstacle refusal(Rule rule, String what, String check) {
        List<String> stages = problem.stages().stream()
                .filter(s -> !s.finished())
                .map(Stage::id)
                .toList();
        return new Obstacle(
                rule,
                stages,
                false,
                "The " + what + " is too great to plan with, and greater than any homestead's: no plan was looked for."
                        + " Check " + check + " for a slip.");
    }

    /** Whether the sums also stay within the solver's, which takes some of them thousands of times. */
    boolean fitsSolver() {
        BigInteger most = BigInteger.valueOf(PLENTY);
        long fullest = needed.stream()
                .map(this::material)
                .mapToLong(m -> m.grams() == 0 ? 0 : Math.ceilDiv(m.millilitres(), m.grams()))
                .max()
                .orElse(0);
        BigInteger units =
                labour.add(grams).add(BigInteger.valueOf(problem.stages().size()));
        return cents.compareTo(most) <= 0
                && units.multiply(BigInteger.valueOf(fullest)).compareTo(most) <= 0
                && grams.compareTo(most) <= 0
                && millilitres.compareTo(most) <= 0
                && wattHours.compareTo(most) <= 0;
    }

    /** The same problem for the planner, with room, power and money that nobody could use up left out. */
    PlanningProblem withinReach() {
        PlanningProblem within = problem;
        Site site = site();
        if (!site.equals(problem.site())) {
            within = within.withSite(site);
        }
        List<Trip> trips = problem.trips().stream().map(this::trip).toList();
        if (!trips.equals(problem.trips())) {
            within = within.withTrips(trips);
        }
        SpendingLimit limit = problem.spending();
        if (limit != null && limit.centsAMonth() > PLENTY) {
            within = within.withSpending(new SpendingLimit(cut(limit.centsAMonth(), cents), limit.hard()));
        }
        List<DeliveryOffer> offers = problem.offers().stream().map(this::offer).toList();
        return offers.equals(problem.offers()) ? within : within.withOffers(offers);
    }

    private static long cut(long there, BigInteger ever) {
        return there <= PLENTY ? there : Math.min(there, Math.max(PLENTY, ever.longValueExact() + 1));
    }

    private Site site() {
        Site site = problem.site();
        return site.withDryStorage(cut(site.dryStorageMillilitres(), millilitres));
    }

    private Trip trip(Trip trip) {
        Rig within = rig(trip.rig());
        return within.equals(trip.rig()) ? trip : trip.withRig(within);
    }

    private Rig rig(Rig rig) {
        BigInteger most = shares().divide(BigInteger.valueOf(1000)).add(ONE);
        List<Bay> bays = rig.bays().stream()
                .map(b -> new Bay(b.id(), b.name(), cut(b.millilitres(), millilitres), b.longestMillimetres()))
                .toList();
        List<MassLimit> limits = rig.limits().stream()
                .map(l -> new MassLimit(l.name(), cut(l.grams(), most), l.sharePermille()))
                .toList();
        return new Rig(rig.id(), rig.name(), bays, limits);
    }

    private DeliveryOffer offer(DeliveryOffer offer) {
        return offer.withGrams(cut(offer.grams(), grams))
                .withSmallOrders(cut(offer.leastOrderCents(), cents), offer.smallOrderCents());
    }

    /** How many extra runs of a trip could be of use: each takes its hours and brings a pack at least. */
    private long runsOfUse(Trip trip) {
        long hours = trip.extraRunQuarters() == 0
                ? Long.MAX_VALUE
                : trip.days().getFirst().labourQuarters() / trip.extraRunQuarters();
        return Math.min(
                hours, Math.min(packs.min(BigInteger.valueOf(Integer.MAX_VALUE)).longValue(), trip.mostExtraRuns()));
    }

    private long mostRuns() {
        long cells =
                Math.max(1, (long) problem.trips().size() * problem.materials().size());
        return Math.min(MOST_RUNS_OF_A_TRIP, MOST_CELLS / cells);
    }

    /** Whether all extra runs that could be of use can be looked at; else nothing is proven by what is found. */
    boolean looksAtAllRuns() {
        return problem.trips().stream().allMatch(t -> runsOfUse(t) <= mostRuns());
    }

    /** The same with no more extra runs than can be looked at. */
    PlanningProblem withFewRuns() {
        if (problem.trips().stream().allMatch(t -> t.mostExtraRuns() <= mostRuns())) {
            return problem;
        }
        return problem.withTrips(problem.trips().stream().map(this::withFewRuns).toList());
    }

    private Trip withFewRuns(Trip trip) {
        return trip.withMostExtraRuns((int) Math.min(runsOfUse(trip), mostRuns()));
    }
}
