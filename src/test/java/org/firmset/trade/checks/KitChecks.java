package org.firmset.trade.checks;

import java.util.Collections;
import java.util.List;
import org.firmset.measure.Dimension;
import org.firmset.measure.Mass;
import org.firmset.measure.Units;
import org.firmset.trade.haul.CargoRoom;
import org.firmset.trade.power.Sun;

/** What vehicles carry and panels give, as far as these rooms go yet. */
final class KitChecks {
    private KitChecks() {}

    static List<Row> rows() {
        return List.of(
                Row.of(
                                "EN-05",
                                "Peak sun hours to energy, 8.1 kW in January",
                                "PVWatts v1 values for Fort Worth TX",
                                "verified: monthly values; energy by arithmetic")
                        .value("nameplate, kWh", 1084.8, 0.5, () -> 31 * Sun.wattHours(8100, 4.32, 100) / 1000)
                        .value("at 77 %, kWh", 835.3, 0.5, () -> 31 * Sun.wattHours(8100, 4.32, 77) / 1000),
                Row.of(
                                "VH-01",
                                "Placard arithmetic",
                                "49 CFR 571.110 required wording",
                                "verified in copies of owner's manuals")
                        .value("cargo, lb", 650, 0, () -> in(placard(), "lb"))
                        .value("cargo, kg", 295, 0.5, () -> in(placard(), "kg")),
                Row.of("VH-07", "Bags for a trip", "arithmetic on the gross rating", "memory")
                        .value("cargo room, lb", 1440, 0, () -> in(pickup(), "lb"))
                        .value("bags of 80 lb", 18, 0, () -> Math.floor(in(pickup(), "lb") / 80)));
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
