package org.firmset.season.problem;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.firmset.homestead.DeliveryTerms;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Supplier;
import org.firmset.homestead.takeoff.Needs;
import org.firmset.measure.Cash;
import org.firmset.measure.Hours;
import org.firmset.measure.Mass;
import org.firmset.measure.Measured;
import org.firmset.measure.Volume;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Material;
import org.firmset.plan.Pin;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Site;
import org.firmset.plan.SiteDay;
import org.firmset.plan.SpendingLimit;
import org.firmset.plan.StockLot;
import org.firmset.plan.Style;
import org.firmset.plan.Subproject;
import org.firmset.plan.Tool;
import org.firmset.plan.Trip;
import org.firmset.plan.WeatherOdds;
import org.firmset.season.day.Climate;
import org.firmset.season.day.OpenCalendar;
import org.firmset.season.day.OpenDay;
import org.firmset.season.day.PlannedPowerWriter;
import org.firmset.season.day.SiteSky;
import org.firmset.season.day.StageEnergy;
import org.firmset.season.day.StageOdds;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** Writes what a homestead says as a planning problem. Ids are the homestead's keys. */
public final class ProblemWriter {
    private final Homestead homestead;
    private final LocalDate statusDate;
    private final Optional<Climate> climate;
    private final SiteSky sky;
    /** Where every stage needs light, hours without it are of no use. */
    private final boolean byHeadLamp;

    private final PlannedPowerWriter power;
    private final StageEnergy energy;
    private final List<List<OpenDay>> openTrips;
    private final Optional<WaterWriter> water;

    private ProblemWriter(Homestead homestead, LocalDate statusDate) {
        this.homestead = Needs.reckoned(homestead);
        this.statusDate = statusDate;
        climate = Climate.of(homestead.place());
        sky = SiteSky.of(homestead);
        power = new PlannedPowerWriter(homestead, sky);
        energy = StageEnergy.of(homestead);
        byHeadLamp = homestead.stages().stream().anyMatch(s -> s.headLamp());
        openTrips = OpenCalendar.trips(homestead, statusDate);
        water = WaterWriter.of(homestead);
    }

    /** @param homestead one without faults */
    public static PlanningProblem write(Homestead homestead, LocalDate statusDate, Style style) {
        return new ProblemWriter(homestead, statusDate).problem(style);
    }

    private PlanningProblem problem(Style style) {
        List<LocalDate> siteDates =
                openTrips.stream().flatMap(List::stream).map(OpenDay::date).toList();
        List<Tool> tools = allDayTools();
        StageWriter stages = new StageWriter(
                energy, climate, sky, siteDates, tools.stream().map(Tool::id).collect(Collectors.toSet()), water);
        WaitWriter waits = new WaitWriter(homestead, climate, statusDate, siteDates);
        return new PlanningProblem(
                statusDate,
                style,
                trips(),
                homestead.subprojects().stream()
                        .map(p -> new Subproject(p.key(), p.name(), p.priority(), p.target()))
                        .toList(),
                homestead.stages().stream().map(stages::write).toList(),
                homestead.waits().stream().map(waits::write).toList(),
                WaterWriter.materials(homestead).stream().map(this::material).toList(),
                homestead.suppliers().stream()
                        .filter(s -> s.delivery() != null && !s.prices().isEmpty())
                        .map(this::offer)
                        .toList(),
                site(),
                homestead.pins().stream()
                        .map(p -> new Pin(p.stage(), new HashSet<>(p.dates()), p.why()))
                        .toList(),
                tools,
                spending(),
                List.of(),
                odds(siteDates));
    }

    /** A tool that passes from hand to hand serves many stages in a day, so it holds none of them up. */
    private List<Tool> allDayTools() {
        return homestead.tools().stream()
                .filter(t -> t.allDay())
                .map(t -> new Tool(t.key(), t.name(), t.count()))
                .toList();
    }

    private List<WeatherOdds> odds(List<LocalDate> siteDates) {
        return homestead.stages().stream()
                .flatMap(s -> siteDates.stream()
                        .flatMap(date -> StageOdds.on(s, sky, date)
                                .map(o ->
                                        new WeatherOdds(s.key(), date, (int) Math.round(o.odds() * WeatherOdds.ALWAYS)))
                                .stream()))
                .toList();
    }

    private @Nullable SpendingLimit spending() {
        var limit = homestead.spendingLimit();
        return limit == null ? null : new SpendingLimit(Cash.cents(limit.aMonth()), limit.firm());
    }

    private List<Trip> trips() {
        List<Trip> trips = new ArrayList<>();
        RigWriter rigs = new RigWriter(homestead);
        long perTrip = Cash.cents(homestead.travel().costPerTrip());
        long perDay = Cash.cents(homestead.travel().costPerDay());
        LocalDate since = statusDate;
        for (List<OpenDay> days : openTrips) {
            LocalDate first = days.getFirst().date();
            trips.add(new Trip(
                    first.toString(),
                    siteDays(days),
                    rigs.rigFor(days),
                    perTrip + perDay * days.size(),
                    homestead.travel().mostExtraRuns(),
                    homestead.travel().extraRunTime().quarters(),
                    Cash.cents(homestead.travel().extraRunCost()),
                    power.start(since, first)));
            since = days.getLast().date().plusDays(1);
        }
        return trips;
    }

    private List<SiteDay> siteDays(List<OpenDay> days) {
        List<SiteDay> result = new ArrayList<>();
        for (int i = 0; i < days.size(); i++) {
            Hours arriving = i == 0 ? homestead.travel().lostArriving() : Hours.NONE;
            Hours leaving = i == days.size() - 1 ? homestead.travel().lostLeaving() : Hours.NONE;
            result.add(siteDay(days.get(i), arriving.quarters(), leaving.quarters()));
        }
        return result;
    }

    private SiteDay siteDay(OpenDay day, int arriving, int leaving) {
        int inLight = (int) (sky.usable(day.date()).usable().toMinutes() / 15);
        int light = Math.max(0, Math.min(day.siteHours().quarters(), inLight) - arriving - leaving);
        int all = Math.max(0, day.siteHours().quarters() - arriving - leaving);
        int shares = day.people().stream().mapToInt(p -> p.workShare()).sum();
        return new SiteDay(
                day.date(),
                (byHeadLamp ? all : light) * shares / 100,
                light * shares / 100,
                day.people().size(),
                power.day(day.date(), Math.ceilDiv(arriving, 4)));
    }

    private Material material(org.firmset.homestead.Material material) {
        List<Supplier> sellers = homestead.suppliers().stream()
                .filter(s -> s.prices().stream().anyMatch(p -> p.material().equals(material.key())))
                .toList();
        int lead = sellers.stream().mapToInt(Supplier::leadDays).min().orElse(0);
        long cents = sellers.stream()
                .flatMap(s -> s.prices().stream())
                .filter(p -> p.material().equals(material.key()))
                .mapToLong(p -> Cash.cents(p.amount()))
                .min()
                .orElse(0);
        return new Material(
                material.key(),
                material.name(),
                thousandths(material.mass()),
                millilitres(material.volume()),
                material.longest() == null ? 0 : thousandths(material.longest()),
                material.dry(),
                material.shelfLifeDays() == null ? Material.NEVER_GOES_OFF : material.shelfLifeDays(),
                statusDate.plusDays(lead),
                cents);
    }

    private DeliveryOffer offer(Supplier supplier) {
        var terms = java.util.Objects.requireNonNull(supplier.delivery());
        Set<String> materials =
                supplier.prices().stream().map(p -> p.material()).collect(Collectors.toSet());
        return new DeliveryOffer(
                supplier.key(),
                supplier.name(),
                materials,
                mostGrams(terms),
                statusDate.plusDays(terms.leadDays()),
                EnumSet.copyOf(terms.weekdays()),
                Cash.cents(terms.fee()),
                cents(terms.leastOrder()),
                cents(terms.smallOrderFee()),
                Set.copyOf(homestead.place().softMonths()),
                terms.attended());
    }

    private static long cents(@Nullable Money money) {
        return money == null ? 0 : Cash.cents(money);
    }

    /** What the truck takes, or what the track bears besides the truck itself. */
    private long mostGrams(DeliveryTerms terms) {
        Mass track = homestead.place().trackLimit();
        Mass empty = terms.truckEmptyMass();
        long most = thousandths(terms.largestMass());
        return track == null || empty == null
                ? most
                : Math.clamp(
                        track.value()
                                .subtract(empty.value())
                                .movePointRight(3)
                                .setScale(0, java.math.RoundingMode.FLOOR)
                                .longValueExact(),
                        0,
                        most);
    }

    private Site site() {
        List<StockLot> stock = new ArrayList<>();
        homestead.stock().forEach(l -> stock.add(new StockLot(l.material(), l.packs(), l.since())));
        List<LocalDate> firstDates =
                openTrips.stream().map(days -> days.getFirst().date()).toList();
        water.ifPresent(w -> stock.addAll(w.stock(statusDate, firstDates)));
        long dry = millilitres(homestead.storage().dryVolume());
        return new Site(dry, power.supply(), stock);
    }

    /** Grams of a mass, millimetres of a length; rounded up, so that what just fits on paper does not on the road. */
    public static long thousandths(Measured measured) {
        return measured.value()
                .movePointRight(3)
                .setScale(0, java.math.RoundingMode.CEILING)
                .longValueExact();
    }

    static long millilitres(Volume volume) {
        return volume.value()
                .movePointRight(6)
                .setScale(0, java.math.RoundingMode.CEILING)
                .longValueExact();
    }
}
