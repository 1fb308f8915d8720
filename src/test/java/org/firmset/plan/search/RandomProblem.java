package org.firmset.plan.search;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.firmset.plan.DayPower;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Former;
import org.firmset.plan.Layout;
import org.firmset.plan.LeastWait;
import org.firmset.plan.Material;
import org.firmset.plan.Need;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.PowerSupply;
import org.firmset.plan.Site;
import org.firmset.plan.SiteDay;
import org.firmset.plan.SpendingLimit;
import org.firmset.plan.Stage;
import org.firmset.plan.StockLot;
import org.firmset.plan.Style;
import org.firmset.plan.Subproject;
import org.firmset.plan.Tool;
import org.firmset.plan.ToolUse;
import org.firmset.plan.Trip;
import org.firmset.plan.Wait;
import org.firmset.plan.WaitKind;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.MassLimit;
import org.firmset.trade.haul.Rig;
import org.jspecify.annotations.Nullable;

/**
 * A small problem made by chance, in which tools are few and money is short. It depends on nothing but the seed. A trip
 * often begins on the last day of a month, and the limit lies about where the costs of a month do.
 */
public final class RandomProblem {
    private static final Rig PICKUP = new Rig(
            "pickup",
            "Pickup",
            List.of(new Bay("bed", "Bed", 900_000, 2_400)),
            List.of(new MassLimit("Payload", 250_000, Map.of("bed", 1000))));

    private final SplittableRandom random;
    private final LocalDate statusDate;
    private final List<Trip> trips;
    private final List<Tool> tools;
    private final List<Material> materials;
    private final List<Stage> stages;

    private RandomProblem(long seed) {
        random = new SplittableRandom(seed);
        statusDate = LocalDate.parse("2027-04-20").plusDays(between(0, 30));
        trips = trips();
        tools = many(between(1, 3), i -> new Tool("tool-" + i, "Tool " + i, between(1, chance(60) ? 1 : 3)));
        materials = many(between(0, 3), this::material);
        stages = many(between(2, 8), this::stage);
    }

    public static PlanningProblem of(long seed) {
        return new RandomProblem(seed).problem();
    }

    private PlanningProblem problem() {
        return new PlanningProblem(
                statusDate,
                Style.SOONEST,
                trips,
                List.of(new Subproject("cabin", "Cabin", 3, null), new Subproject("shed", "Shed", 1, null)),
                stages,
                waits(),
                materials,
                offers(),
                site(),
                List.of(),
                tools,
                limit(),
                former());
    }

    /** Over some three or four months. */
    private List<Trip> trips() {
        List<Trip> made = new ArrayList<>();
        LocalDate end = statusDate.plusDays(between(80, 115));
        LocalDate first = statusDate.plusDays(between(0, 8));
        while (first.isBefore(end)) {
            Trip trip = trip("trip-" + (made.size() + 1), first);
            made.add(trip);
            LocalDate next = trip.lastDate().plusDays(between(3, 20));
            LocalDate lastOfMonth = next.with(TemporalAdjusters.lastDayOfMonth());
            first = chance(25) ? lastOfMonth : next;
        }
        return made;
    }

    private Trip trip(String id, LocalDate first) {
        int people = between(1, 3);
        int quarters = between(10, 16) * people;
        List<SiteDay> days = IntStream.range(0, between(1, 3))
                .mapToObj(i -> day(first.plusDays(i), quarters, people))
                .toList();
        return new Trip(
                id,
                days,
                PICKUP,
                between(20, 120) * 100L,
                chance(70) ? 1 : 0,
                between(0, 4),
                between(0, 2_500),
                chance(85) ? Trip.FULL : between(200, 1_500));
    }

    private SiteDay day(LocalDate date, int quarters, int people) {
        int light = chance(80) ? quarters : quarters - between(0, 6);
        return new SiteDay(date, quarters, light, people, power());
    }

    private DayPower power() {
        int noon = between(0, 160);
        List<Long> sun = IntStream.range(0, DayPower.HOURS)
                .mapToObj(h -> (long) Math.max(0, noon - 25 * Math.abs(h - 12)))
                .toList();
        return new DayPower(
                sun, chance(20) ? between(1, 8) : 0, chance(20) ? between(1, 60) : 0, chance(90), between(6, 9));
    }

    private Material material(int number) {
        return new Material(
                "material-" + number,
                "Material " + number,
                between(5, 40) * 1_000L,
                between(5, 80) * 1_000L,
                between(300, 2_400),
                chance(25),
                chance(25) ? between(5, 60) : Material.NEVER_GOES_OFF,
                chance(25) ? statusDate.plusDays(between(0, 30)) : statusDate,
                between(2, 40) * 50L);
    }

    private Stage stage(int number) {
        Layout layout = one(List.of(Layout.values()));
        int most = switch (layout) {
            case IN_ONE_GO -> 14;
            case UNBROKEN_DAYS -> 26;
            case SPLITTABLE -> 45;
        };
        return new Stage(
                "stage-" + number,
                "Stage " + number,
                chance(50) ? "cabin" : "shed",
                between(2, most),
                chance(80) ? 1 : 2,
                layout,
                chance(20) ? between(1, 6) : 0,
                layout == Layout.SPLITTABLE && chance(20) ? between(8, 20) : Stage.NO_LIMIT,
                chance(40) ? between(50, 400) : 0,
                chance(85),
                List.of(),
                chance(60) ? some(materials, m -> new Need(m.id(), between(1, 14))) : List.of(),
                chance(80) ? some(tools, this::use) : List.of(),
                null,
                null);
    }

    /** Hardly ever more than there are, which no plan can do anything about. */
    private ToolUse use(Tool tool) {
        return new ToolUse(tool.id(), chance(2) ? tool.count() + 1 : between(1, tool.count()));
    }

    private List<Wait> waits() {
        List<Wait> waits = new ArrayList<>();
        for (int to = 1; to < stages.size(); to++) {
            for (int from = 0; from < to; from++) {
                if (chance(18)) {
                    waits.add(wait(stages.get(from).id(), stages.get(to).id()));
                }
            }
        }
        return waits;
    }

    private Wait wait(String from, String to) {
        int least = chance(50) ? 0 : between(1, 14);
        int most = chance(15) ? least + between(15, 60) : Wait.NO_LIMIT;
        return new Wait(from + "-" + to, from + " to " + to, WaitKind.CURE, from, to, new LeastWait.Days(least), most);
    }

    private List<DeliveryOffer> offers() {
        Set<String> brings = materials.stream().map(Material::id).collect(Collectors.toSet());
        Set<DayOfWeek> weekdays =
                Stream.of(DayOfWeek.values()).filter(d -> chance(60)).collect(Collectors.toSet());
        return materials.isEmpty() || chance(30)
                ? List.of()
                : List.of(new DeliveryOffer(
                        "offer",
                        "Offer",
                        brings,
                        between(300, 3_000) * 1_000L,
                        statusDate.plusDays(between(0, 20)),
                        weekdays,
                        between(0, 3_000),
                        chance(40) ? between(1, 12) * 1_000L : 0,
                        between(0, 2_500),
                        chance(30) ? Set.of(statusDate.plusDays(between(0, 90)).getMonth()) : Set.of(),
                        chance(60)));
    }

    private Site site() {
        boolean generator = chance(60);
        List<StockLot> stock = materials.isEmpty() || chance(75)
                ? List.of()
                : List.of(new StockLot(one(materials).id(), between(1, 6), statusDate.minusDays(between(1, 20))));
        return new Site(between(200, 1_500) * 1_000L, power(generator), stock);
    }

    private PowerSupply power(boolean withGenerator) {
        int from = between(5, 10);
        int watts = between(200, 1_200);
        return new PowerSupply(
                between(200, 1_600),
                chance(50) ? 100 : between(80, 99),
                chance(50) ? 100 : between(80, 99),
                withGenerator
                        ? new PowerSupply.Generator(
                                watts, Math.min(between(500, 3_000), watts * (24 - from)), from, between(100, 2_000))
                        : PowerSupply.Generator.NONE);
    }

    private @Nullable SpendingLimit limit() {
        long dearest = trips.stream().mapToLong(Trip::cents).max().orElseThrow();
        long about = (trips.stream().mapToLong(Trip::cents).sum() / 2 + materialCents()) / 4;
        long cents = chance(5) ? dearest / 2 : Math.max(dearest, about * between(80, 170) / 100);
        return chance(5) ? null : new SpendingLimit(cents, chance(75));
    }

    private long materialCents() {
        Map<String, Long> prices = materials.stream().collect(Collectors.toMap(Material::id, Material::cents));
        return stages.stream()
                .flatMap(stage -> stage.needs().stream())
                .mapToLong(need -> need.packs() * prices.getOrDefault(need.material(), 0L))
                .sum();
    }

    private List<Former> former() {
        if (chance(50)) {
            return List.of();
        }
        List<Former> former = new ArrayList<>();
        for (Stage stage : stages) {
            if (chance(80)) {
                LocalDate start = one(trips).firstDate();
                former.add(new Former(stage.id(), start, start.plusDays(between(0, 20))));
            }
        }
        return former;
    }

    /** Both ends included. */
    private int between(int least, int most) {
        return random.nextInt(least, most + 1);
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private static <T> List<T> many(int count, IntFunction<T> maker) {
        return IntStream.rangeClosed(1, count).mapToObj(maker).toList();
    }

    private <T, R> List<R> some(List<T> of, Function<T, R> maker) {
        return of.stream().filter(each -> chance(60)).map(maker).toList();
    }
}
