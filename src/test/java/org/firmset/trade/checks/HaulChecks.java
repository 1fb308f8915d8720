package org.firmset.trade.checks;

import java.util.Collections;
import java.util.List;
import org.firmset.measure.Dimension;
import org.firmset.measure.Mass;
import org.firmset.measure.Units;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.CargoRoom;
import org.firmset.trade.haul.HaulTrailer;
import org.firmset.trade.haul.HaulVehicle;
import org.firmset.trade.haul.Lever;
import org.firmset.trade.haul.LimitKind;
import org.firmset.trade.haul.LoadSheet;
import org.firmset.trade.haul.Outfit;
import org.firmset.trade.haul.Placed;
import org.firmset.trade.haul.Tongue;
import org.firmset.trade.haul.VehicleAxles;

/** What vehicles and trailers carry and where it presses. */
final class HaulChecks {
    private static final double GRAMS = 453.59237;
    private static final double MILLIMETRES = 25.4;

    private HaulChecks() {}

    static List<Row> rows() {
        Tongue tongue = new Tongue(0, lb(3500), true);
        return List.of(
                Row.of(
                                "VH-01",
                                "Placard arithmetic",
                                "49 CFR 571.110 required wording",
                                "verified in copies of owner's manuals")
                        .value("cargo, lb", 650, 0, () -> in(placard(), "lb"))
                        .value("cargo, kg", 295, 0.5, () -> in(placard(), "kg")),
                Row.of(
                                "VH-02",
                                "Trailer tongue share, loaded trailer 3,500 lb",
                                "maker and NHTSA guidance, 10 to 15 %",
                                "verified: owner's manual of a 2005 truck; arithmetic")
                        .value("least, lb", 350, 0.01, () -> tongue.leastGrams() / GRAMS)
                        .value("most, lb", 525, 0.01, () -> tongue.mostGrams() / GRAMS)
                        .value("least, kg", 159, 0.5, () -> tongue.leastGrams() / 1000)
                        .value("most, kg", 238, 0.5, () -> tongue.mostGrams() / 1000),
                Row.of(
                                "VH-03",
                                "Lever rule, load between axles",
                                "moment / wheelbase",
                                "verified: method seen; numbers constructed")
                        .value("rear, lb", 714.3, 0.1, () -> 1000 * Lever.rearShare(100, 140))
                        .value("front, lb", 285.7, 0.1, () -> 1000 * Lever.frontShare(100, 140)),
                Row.of("VH-04", "Lever rule, tongue behind the rear axle", "moment / wheelbase", "memory: statics")
                        .value("rear, lb", 671.4, 0.1, () -> 500 * Lever.rearShare(188, 140))
                        .value("front, lb", -171.4, 0.1, () -> 500 * Lever.frontShare(188, 140)),
                Row.of("VH-05", "Whole axle sheet", "moment / wheelbase", "memory: statics")
                        .value("front, lb", 3489.3, 0.1, () -> axle(LimitKind.FRONT_AXLE))
                        .value("rear, lb", 3960.7, 0.1, () -> axle(LimitKind.REAR_AXLE))
                        .value("sum, lb", 7450, 0.1, () -> axle(LimitKind.FRONT_AXLE) + axle(LimitKind.REAR_AXLE)),
                Row.of(
                                "VH-06",
                                "Moving a trailer axle to get 10 % tongue",
                                "(tongue - 0.1 total)/total x D",
                                "verified: example 1 of a page on placing trailer axles")
                        .value("tongue now, %", 12.5, 0.05, () -> 100 * new Tongue(1025, 8225, true).share())
                        .value("towards the coupler, in", 6.5, 0.05, () -> Lever.axleShift(1025, 8225, 264, 0.1)),
                Row.of("VH-07", "Bags for a trip", "arithmetic on the gross rating", "memory")
                        .value("cargo room, lb", 1440, 0, () -> in(pickup(), "lb"))
                        .value("bags of 80 lb", 18, 0, HaulChecks::bags)
                        .value("trips for 180 bags", 10, 0, () -> Math.ceil(180 / bags())));
    }

    /** People of 600 lb at 60 in, 1,000 lb in the bed at 130 in, a tongue of 350 lb at 190 in. */
    private static double axle(LimitKind kind) {
        VehicleAxles axles =
                new VehicleAxles(mm(140), lb(5000), lb(5000), lb(3200), mm(100), mm(60), mm(60), mm(100), mm(190));
        Outfit outfit = new Outfit(
                new HaulVehicle(
                        "vehicle", lb(9000), lb(5500), new Bay("bed", "bed", 1, 1), axles, null, null, null, null),
                new HaulTrailer("trailer", lb(3500), lb(3500), 10, new Bay("deck", "deck", 1, 1), null),
                lb(600),
                0);
        LoadSheet sheet = LoadSheet.of(outfit, List.of(new Placed("bed", lb(1000), 30 * MILLIMETRES)));
        return sheet.limit(kind).orElseThrow().onItGrams() / GRAMS;
    }

    private static double bags() {
        return Math.floor(in(pickup(), "lb") / 80);
    }

    private static long lb(double pounds) {
        return Math.round(pounds * GRAMS);
    }

    private static long mm(double inches) {
        return Math.round(inches * MILLIMETRES);
    }

    private static Mass pounds(int pounds) {
        return (Mass) Units.parse(Dimension.MASS, pounds + " lb");
    }

    private static Mass placard() {
        return CargoRoom.of(pounds(1400), pounds(0), Collections.nCopies(5, pounds(150)));
    }

    private static Mass pickup() {
        return CargoRoom.of(pounds(7000), pounds(5100), List.of(pounds(180), pounds(180), pounds(100)));
    }

    private static double in(Mass mass, String symbol) {
        return Units.in(mass, symbol, 6).doubleValue();
    }
}
