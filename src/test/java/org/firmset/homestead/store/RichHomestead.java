package org.firmset.homestead.store;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.firmset.homestead.AddedDate;
import org.firmset.homestead.Axles;
import org.firmset.homestead.BatteryKind;
import org.firmset.homestead.BetweenTrips;
import org.firmset.homestead.BudgetItem;
import org.firmset.homestead.BudgetKind;
import org.firmset.homestead.Budgeting;
import org.firmset.homestead.CementClass;
import org.firmset.homestead.Conditions;
import org.firmset.homestead.Cure;
import org.firmset.homestead.DayRoutine;
import org.firmset.homestead.Deck;
import org.firmset.homestead.DeliveryTerms;
import org.firmset.homestead.ForecastDay;
import org.firmset.homestead.Generator;
import org.firmset.homestead.Given;
import org.firmset.homestead.Hazard;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.HorizonSector;
import org.firmset.homestead.Inverter;
import org.firmset.homestead.Material;
import org.firmset.homestead.MonthNormal;
import org.firmset.homestead.Need;
import org.firmset.homestead.OpenDates;
import org.firmset.homestead.OpenRule;
import org.firmset.homestead.Person;
import org.firmset.homestead.Pin;
import org.firmset.homestead.Place;
import org.firmset.homestead.PowerKit;
import org.firmset.homestead.Price;
import org.firmset.homestead.Progress;
import org.firmset.homestead.Rack;
import org.firmset.homestead.SeasonWindow;
import org.firmset.homestead.SpendingLimit;
import org.firmset.homestead.Stage;
import org.firmset.homestead.StageLayout;
import org.firmset.homestead.StockLot;
import org.firmset.homestead.Storage;
import org.firmset.homestead.Subproject;
import org.firmset.homestead.Supplier;
import org.firmset.homestead.Supply;
import org.firmset.homestead.Takeoff;
import org.firmset.homestead.Tool;
import org.firmset.homestead.ToolCost;
import org.firmset.homestead.ToolTime;
import org.firmset.homestead.Trailer;
import org.firmset.homestead.Travel;
import org.firmset.homestead.TripSharing;
import org.firmset.homestead.Vehicle;
import org.firmset.homestead.Wait;
import org.firmset.homestead.WaitKind;
import org.firmset.homestead.WaterStore;
import org.firmset.measure.Area;
import org.firmset.measure.Cash;
import org.firmset.measure.Energy;
import org.firmset.measure.Hours;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Power;
import org.firmset.measure.Speed;
import org.firmset.measure.Temperature;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Volume;
import org.firmset.trade.cure.Ageing;
import org.firmset.trade.cure.StrengthMethod;
import org.javamoney.moneta.Money;

/** A homestead in which nothing is left out: every part filled, every list longer than one, every kind of thing used. */
final class RichHomestead {
    private static final LocalDate DAY = LocalDate.of(2027, 4, 3);

    private RichHomestead() {}

    static Homestead make() {
        return named("Nørre Høj 🏡");
    }

    static Homestead named(String name) {
        return new Homestead(
                name,
                UnitSystem.US,
                "USD",
                place(),
                travel(),
                openDates(),
                List.of(person("zoe", 1), person("abe", 2)),
                List.of(subproject("water", 1), subproject("cabin", 2)),
                List.of(stage("footings", "water", 0), stage("walls", "cabin", 1), stage("roof", "cabin", 2)),
                waits(),
                List.of(material("rebar", 1), material("cement", 2)),
                List.of(supplier("yard", 1), supplier("mill", 2)),
                List.of(tool("vibrator", 1), tool("mixer", 2)),
                List.of(vehicle("truck", 1), vehicle("car", 2)),
                List.of(trailer("tandem", 1), trailer("box", 2)),
                power(),
                new SpendingLimit(Cash.of(new BigDecimal("1250.50"), "USD"), true),
                new Budgeting(
                        new BigDecimal("7.25"),
                        new BigDecimal("8.5"),
                        new BigDecimal("20.125"),
                        TripSharing.BY_MASS,
                        List.of(
                                new BudgetItem("Permit", BudgetKind.FEE, "cabin", "roof", usd("180.40"), DAY),
                                new BudgetItem(
                                        "Digger",
                                        BudgetKind.TOOL,
                                        "water",
                                        "footings",
                                        usd("310.05"),
                                        DAY.plusDays(3)))),
                new Storage(Volume.ofCubicMetres(6.2)),
                List.of(new StockLot("rebar", 7, DAY), new StockLot("cement", 3, DAY.minusDays(20))),
                List.of(
                        new Pin("walls", List.of(DAY.plusDays(8), DAY.plusDays(7)), "the neighbour lends a hand"),
                        new Pin("footings", List.of(DAY, DAY.plusDays(1)), "the mixer is rented")),
                List.of(takeoff("cap", 1), takeoff("fill", 2)),
                new WaterStore(
                        Volume.ofCubicMetres(1.1),
                        Volume.ofCubicMetres(0.35),
                        Area.ofSquareMetres(22.5),
                        79,
                        Volume.ofCubicMetres(0.019),
                        Mass.ofKilograms(1.3)));
    }

    private static Takeoff takeoff(String key, int i) {
        return new Takeoff(
                key,
                "Takeoff " + i,
                "slab",
                i == 1 ? "footings" : "walls",
                List.of(new Given("plan", i + " m x 2 ft 6 in"), new Given("thickness", "4 1/" + (i + 1) + " in")),
                List.of(new Supply("bags", "cement"), new Supply("mixing-water", "rebar")));
    }

    private static Place place() {
        List<MonthNormal> climate = IntStream.rangeClosed(1, 12)
                .mapToObj(month -> new MonthNormal(
                        Temperature.ofCelsius(month + 10.5),
                        Temperature.ofCelsius(month - 20.25),
                        new BigDecimal(month + ".50"),
                        new BigDecimal("1." + (month + 10)),
                        Length.ofMetres(0.031 + month / 1000.0),
                        Speed.ofMetresPerSecond(2.1 + month)))
                .toList();
        return new Place(
                new BigDecimal("44.123456780"),
                new BigDecimal("-110.500"),
                "America/Denver",
                climate,
                Mass.ofKilograms(18_143.6948),
                List.of(Month.APRIL, Month.MARCH),
                List.of(sector(300, 45, "12.5"), sector(120, 140, "7.25")),
                List.of(forecast(2), forecast(1)));
    }

    private static HorizonSector sector(int from, int to, String elevation) {
        return new HorizonSector(BigDecimal.valueOf(from), BigDecimal.valueOf(to), new BigDecimal(elevation));
    }

    private static ForecastDay forecast(int i) {
        return new ForecastDay(
                DAY.plusDays(i),
                Temperature.ofCelsius(14.5 + i),
                Temperature.ofCelsius(-1.5 - i),
                60 + i,
                new BigDecimal("3.2" + i),
                Speed.ofMetresPerSecond(5.5 + i));
    }

    private static Travel travel() {
        return new Travel(
                Length.ofMetres(161_000.4),
                new Hours(10),
                new Hours(7),
                usd("85.50"),
                usd("40.05"),
                "car",
                "box",
                2,
                new Hours(13),
                usd("31.20"));
    }

    private static OpenDates openDates() {
        return new OpenDates(
                List.of(openRule("summer", 1), openRule("autumn", 2)),
                List.of(
                        new AddedDate(DAY.plusDays(40), new Hours(31), List.of("zoe", "abe")),
                        new AddedDate(DAY.plusDays(39), new Hours(30), List.of("abe", "zoe"))),
                List.of(DAY.plusDays(14), DAY.plusDays(13)),
                new DayRoutine(6, new Hours(5)));
    }

    private static OpenRule openRule(String key, int i) {
        return new OpenRule(
                key,
                List.of(DayOfWeek.values()).reversed(),
                DAY.plusDays(i),
                DAY.plusDays(100 + i),
                new Hours(30 + i),
                List.of("zoe", "abe"));
    }

    private static Person person(String key, int i) {
        return new Person(key, "Person " + i, Mass.ofKilograms(80.123456789 + i), 90 + i);
    }

    private static Subproject subproject(String key, int i) {
        return new Subproject(key, "Subproject " + i, usd("999999999999.9" + i), i, DAY.plusYears(i));
    }

    private static Stage stage(String key, String subproject, int i) {
        return new Stage(
                key,
                "Stage " + i,
                subproject,
                new Hours(50 + i),
                2 + i,
                StageLayout.values()[i],
                new Hours(6 + i),
                new Hours(30 + i),
                Energy.ofWattHours(410.7 + i),
                List.of("vibrator", "mixer"),
                new SeasonWindow(MonthDay.of(10, 1 + i), MonthDay.of(2, 29)),
                DAY.plusDays(i),
                DAY.plusDays(200 + i),
                new Conditions(
                        Temperature.ofCelsius(-2.5 - i),
                        Temperature.ofCelsius(33.1 + i),
                        true,
                        Temperature.ofCelsius(4.4 + i),
                        Speed.ofMetresPerSecond(8.8 + i),
                        true,
                        55 + i),
                List.of(new Need("rebar", 11 + i), new Need("cement", 21 + i)),
                List.of(Hazard.values()).reversed(),
                new Progress(DAY.plusDays(1), new Hours(3 + i), DAY.plusDays(2 + i)),
                "Mind the step.\nAnd the other one, %d.".formatted(i),
                List.of(
                        new ToolTime("vibrator", new BigDecimal("12.5" + i), "rebar"),
                        new ToolTime("mixer", new BigDecimal("3.5" + i), "cement")),
                true,
                Volume.ofCubicMetres(0.44 + i));
    }

    private static List<Wait> waits() {
        return Stream.of(WaitKind.values())
                .map(kind -> new Wait(
                        "wait-" + kind.ordinal(),
                        "Wait " + kind,
                        kind,
                        "footings",
                        "walls",
                        5 + kind.ordinal(),
                        new Cure(
                                61 + kind.ordinal(),
                                CementClass.values()[kind.ordinal() % 3],
                                StrengthMethod.values()[(kind.ordinal() + 1) % 2],
                                Ageing.values()[(kind.ordinal() + 1) % 4]),
                        20 + kind.ordinal()))
                .toList();
    }

    private static Material material(String key, int i) {
        return new Material(
                key,
                "Material " + i,
                "bag " + i,
                Mass.ofKilograms(36.287389600 + i),
                Volume.ofCubicMetres(0.016990108 + i),
                Length.ofMetres(0.6 + i),
                true,
                true,
                90 + i);
    }

    private static Supplier supplier(String key, int i) {
        return new Supplier(
                key,
                "Supplier " + i,
                3 + i,
                List.of(
                        new Price("rebar", usd("12.40"), DAY.minusDays(i)),
                        new Price("cement", usd("-1.0" + i), DAY.minusDays(9))),
                new DeliveryTerms(
                        usd("75.00"),
                        Mass.ofKilograms(4000 + i),
                        11 + i,
                        List.of(DayOfWeek.FRIDAY, DayOfWeek.TUESDAY),
                        usd("450.0" + i),
                        usd("60.25"),
                        Mass.ofKilograms(9525.4 + i),
                        true,
                        new Hours(5 + i)));
    }

    private static Tool tool(String key, int i) {
        return new Tool(
                key,
                "Tool " + i,
                i,
                Power.ofWatts(1100.5 + i),
                true,
                50 + i,
                new BigDecimal("2." + i),
                new ToolCost(usd("620.0" + i), usd("350.00"), usd("4.75"), usd("48.00"), usd("12.60")));
    }

    private static Vehicle vehicle(String key, int i) {
        return new Vehicle(
                key,
                "Vehicle " + i,
                Mass.ofKilograms(3000.1 + i),
                Mass.ofKilograms(2000.2 + i),
                Mass.ofKilograms(100.3 + i),
                Volume.ofCubicMetres(1.7 + i),
                Length.ofMetres(2.4 + i),
                Mass.ofKilograms(2500.4 + i),
                Mass.ofKilograms(5400.5 + i),
                Mass.ofKilograms(220.6 + i),
                new Axles(
                        Length.ofMetres(3.61 + i),
                        Mass.ofKilograms(1700.7 + i),
                        Mass.ofKilograms(1900.8 + i),
                        Mass.ofKilograms(1300.9 + i),
                        Length.ofMetres(2.31 + i),
                        Length.ofMetres(2.02 + i),
                        Length.ofMetres(1.63 + i),
                        Length.ofMetres(2.24 + i),
                        Length.ofMetres(4.85 + i)),
                new Rack(
                        Mass.ofKilograms(75.1 + i),
                        Volume.ofCubicMetres(0.62 + i),
                        Length.ofMetres(3.43 + i),
                        Length.ofMetres(1.74 + i)));
    }

    private static Trailer trailer(String key, int i) {
        return new Trailer(
                key,
                "Trailer " + i,
                Mass.ofKilograms(1500.1 + i),
                Mass.ofKilograms(400.2 + i),
                10 + i,
                Volume.ofCubicMetres(3.1 + i),
                Length.ofMetres(3.6 + i),
                new Deck(
                        Length.ofMetres(3.45 + i),
                        Length.ofMetres(1.26 + i),
                        Length.ofMetres(3.67 + i),
                        Mass.ofKilograms(1588.8 + i)));
    }

    private static PowerKit power() {
        return new PowerKit(
                Energy.ofWattHours(5120.5),
                20,
                Power.ofWatts(800.25),
                71,
                new Generator(Power.ofWatts(2200), new Hours(17), usd("0.62"), new BigDecimal("0.55"), 9),
                BatteryKind.LITHIUM,
                97,
                96,
                Temperature.ofCelsius(0.5),
                new Inverter(Power.ofWatts(2000), Power.ofWatts(4000), 91),
                Power.ofWatts(12.5),
                new BigDecimal("38.5"),
                new BigDecimal("172.5"),
                BetweenTrips.PANELS_LEFT_OUT,
                25,
                usd("410.5"),
                usd("930.25"));
    }

    private static Money usd(String amount) {
        return Cash.of(new BigDecimal(amount), "USD");
    }
}
