package org.firmset.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Builds small planning problems for tests. Dates are ISO texts; the status date is Saturday 2027-05-01; every part is as
 * plain as it can be until a draft says otherwise, so that a test shows only what it is about.
 */
public final class Problems {
    public static final LocalDate STATUS_DATE = LocalDate.parse("2027-05-01");

    private static final String SUBPROJECT = "cabin";

    private final List<Trip> trips = new ArrayList<>();
    private final List<Subproject> others = new ArrayList<>();
    private final List<Stage> stages = new ArrayList<>();
    private final List<Wait> waits = new ArrayList<>();
    private final List<Material> materials = new ArrayList<>();
    private final List<DeliveryOffer> offers = new ArrayList<>();
    private final List<StockLot> stock = new ArrayList<>();
    private final List<Pin> pins = new ArrayList<>();
    private final List<Tool> tools = new ArrayList<>();
    private final List<Former> former = new ArrayList<>();
    private @Nullable SpendingLimit spending;
    private int weight = 1;
    private long dryStorageMillilitres = 1_000_000;
    private PowerSupply power = new PowerSupply(2_000, 100, 100, PowerSupply.Generator.NONE);

    private Problems() {}

    public static Problems problem() {
        return new Problems();
    }

    /** The name that the fixture gives to the thing with an id: slab is called Slab. */
    static String name(String id) {
        return id.substring(0, 1).toUpperCase(Locale.ROOT) + id.substring(1);
    }

    /** One more beside the one that is always there. */
    public Problems subproject(String id, int weightOfIt) {
        others.add(new Subproject(id, name(id), weightOfIt, null));
        return this;
    }

    /** How much the subproject counts that is always there. */
    public Problems weight(int ofIt) {
        weight = ofIt;
        return this;
    }

    /** A trip of two people with 32 quarter-hours a day, no sun and no extra run. */
    public Problems trip(String id, String firstDate, int days) {
        return trip(id, firstDate, days, draft -> draft);
    }

    public Problems trip(String id, String firstDate, int days, UnaryOperator<TripDraft> how) {
        trips.add(how.apply(new TripDraft(id, LocalDate.parse(firstDate), days)).trip());
        return this;
    }

    /** A splittable stage for one person, without power or materials. */
    public Problems stage(String id, int quarters) {
        return stage(id, quarters, draft -> draft);
    }

    public Problems stage(String id, int quarters, UnaryOperator<StageDraft> how) {
        stages.add(how.apply(new StageDraft(id, SUBPROJECT, quarters)).stage());
        return this;
    }

    public Problems wait(String from, String to, int leastDays) {
        return wait(from, to, new LeastWait.Days(leastDays), Wait.NO_LIMIT);
    }

    public Problems wait(String from, String to, LeastWait least, int mostDays) {
        return wait(from + "-" + to, from, to, least, mostDays);
    }

    /** One of several between the same stages. */
    public Problems wait(String id, String from, String to, LeastWait least, int mostDays) {
        waits.add(new Wait(id, name(id), WaitKind.CURE, from, to, least, mostDays));
        return this;
    }

    /** A material in packs of 25 kg, 20 l and 600 mm that need not be dry and never goes off. */
    public Problems material(String id) {
        return material(id, draft -> draft);
    }

    public Problems material(String id, UnaryOperator<MaterialDraft> how) {
        materials.add(how.apply(new MaterialDraft(id)).material());
        return this;
    }

    public Problems offer(DeliveryOffer offer) {
        offers.add(offer);
        return this;
    }

    public Problems stock(String material, int packs, String arrivedOn) {
        stock.add(new StockLot(material, packs, LocalDate.parse(arrivedOn)));
        return this;
    }

    public Problems pin(String stage, String... dates) {
        Set<LocalDate> on = Arrays.stream(dates).map(LocalDate::parse).collect(Collectors.toSet());
        pins.add(new Pin(stage, on, "the owners said so"));
        return this;
    }

    public Problems tool(String id, int count) {
        tools.add(new Tool(id, name(id), count));
        return this;
    }

    public Problems spending(long centsAMonth, boolean hard) {
        spending = new SpendingLimit(centsAMonth, hard);
        return this;
    }

    /** The plan before had the stage there. */
    public Problems former(String stage, String start, String finish) {
        former.add(new Former(stage, LocalDate.parse(start), LocalDate.parse(finish)));
        return this;
    }

    public Problems dryStorage(long millilitres) {
        dryStorageMillilitres = millilitres;
        return this;
    }

    /** Without losses. */
    public Problems battery(long wattHours) {
        power = new PowerSupply(wattHours, 100, 100, power.generator());
        return this;
    }

    /** All of it can be had in the hour from 7:00, when work begins; a kWh costs 60 cents. */
    public Problems generator(long wattHoursPerDay) {
        return power(new PowerSupply(
                power.capacityWattHours(),
                100,
                100,
                new PowerSupply.Generator(wattHoursPerDay, wattHoursPerDay, 7, 60)));
    }

    public Problems power(PowerSupply supply) {
        power = supply;
        return this;
    }

    public PlanningProblem build() {
        Site site = new Site(dryStorageMillilitres, power, stock);
        List<Subproject> subprojects = new ArrayList<>(others);
        subprojects.addFirst(new Subproject(SUBPROJECT, name(SUBPROJECT), weight, null));
        return new PlanningProblem(
                STATUS_DATE,
                Style.SOONEST,
                trips,
                subprojects,
                stages,
                waits,
                materials,
                offers,
                site,
                pins,
                tools,
                spending,
                former);
    }
}
