package org.firmset.trade.checks;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.firmset.trade.climate.MonthlyValues;
import org.firmset.trade.power.Battery;
import org.firmset.trade.power.BatteryBank;
import org.firmset.trade.power.ChargeCurve;
import org.firmset.trade.power.ColdShare;
import org.firmset.trade.power.FuelChart;
import org.firmset.trade.power.Generator;
import org.firmset.trade.power.Inverter;
import org.firmset.trade.power.Photovoltaics;
import org.firmset.trade.power.PowerBlock;
import org.firmset.trade.power.PowerDay;
import org.firmset.trade.power.PowerSystem;
import org.firmset.trade.power.RestVoltage;
import org.firmset.trade.power.Sun;
import org.firmset.trade.power.SunCurve;
import org.firmset.trade.power.Tool;

/** What panels, batteries and generators give. */
final class PowerChecks {
    private static final double LITRES_A_GALLON = 3.785411784;
    private static final MonthlyValues FORT_WORTH =
            new MonthlyValues(List.of(4.32, 4.77, 5.50, 5.98, 6.02, 6.25, 6.39, 6.31, 5.83, 5.56, 4.43, 4.10));

    private PowerChecks() {}

    static List<Row> rows() {
        List<Row> rows = new ArrayList<>(panels());
        rows.add(restVoltage());
        rows.add(bank());
        rows.add(fuel());
        rows.add(tool());
        return rows;
    }

    private static List<Row> panels() {
        return List.of(
                Row.of("EN-01", "Panel at 900 W/m2, cells at 30 °C, 100 W, -0.3 %/K", "PVWatts v5 DC model", "verified")
                        .value("W", 88.65, 1e-6, () -> Photovoltaics.directWatts(900, 30, 100, -0.3)),
                Row.of("EN-02", "Usual losses of a system", "PVWatts v5 losses", "verified")
                        .value(
                                "multiplied, %",
                                14.0757, 1e-4, () -> Photovoltaics.lossPercent(2, 3, 2, 2, 0.5, 1.5, 1, 0, 3)),
                Row.of("EN-03", "Inverter on a grid, 90 of 100 W, 95 %", "PVWatts v5 inverter curve", "verified")
                        .value("W", 85.5856, 1e-3, () -> Photovoltaics.alternatingWatts(90, 100, 95)),
                Row.of("EN-04", "Cells at 1000 W/m2, air 30 °C, NOCT 50 °C", "Ross's equation", "verified")
                        .value("°C", 67.5, 1e-6, () -> Photovoltaics.cellCelsius(1000, 30, 50)),
                Row.of(
                                "EN-05",
                                "Peak sun hours to energy, 8.1 kW in January",
                                "PVWatts v1 values for Fort Worth TX",
                                "verified: monthly values; energy by arithmetic")
                        .value("mean of the year, kWh/m2 a day", 5.46, 0.005, FORT_WORTH::yearMean)
                        .value("nameplate, kWh", 1084.8, 0.5, () -> 31 * Sun.wattHours(8100, 4.32, 100) / 1000)
                        .value("at 77 %, kWh", 835.3, 0.5, () -> 31 * Sun.wattHours(8100, 4.32, 77) / 1000));
    }

    private static Row restVoltage() {
        return Row.of("EN-06", "Charge of a rested lead-acid battery at 27 °C", "BCI-style table", "verified")
                .value("12.65 V, %", 100, 0.5, () -> RestVoltage.percent(12.65))
                .value("12.45 V, %", 75, 0.5, () -> RestVoltage.percent(12.45))
                .value("12.40 V, %", 69.0, 0.5, () -> RestVoltage.percent(12.40))
                .value("12.24 V, %", 50, 0.5, () -> RestVoltage.percent(12.24))
                .value("12.06 V, %", 25, 0.5, () -> RestVoltage.percent(12.06))
                .value("11.89 V, %", 0, 0.5, () -> RestVoltage.percent(11.89));
    }

    private static Row bank() {
        BatteryBank bank = BatteryBank.of(new BatteryBank.Need(2400, 90, 24, 3, 1.11, 50), 225, 6);
        return Row.of(
                        "EN-07",
                        "Battery bank for 2400 Wh a day, 24 V, 3 days, half depth",
                        "12-step method",
                        "verified: method; numbers constructed")
                .value("Ah a day", 111.1, 0.05, bank::ampereHoursADay)
                .value("Ah", 740, 0.1, bank::ampereHours)
                .value("in parallel", 4, 0, bank::inParallel)
                .value("in series", 4, 0, bank::inSeries)
                .value("batteries", 16, 0, bank::count);
    }

    private static Row fuel() {
        FuelChart twenty = chart(20_000, 0.6, 0.9, 1.3, 1.6);
        FuelChart thirty = chart(30_000, 1.3, 1.8, 2.4, 2.9);
        return Row.of("EN-08", "Diesel generator", "Diesel Fuel Consumption Chart (Approximate)", "verified")
                .value("20 kW at half load for 6 h, gal", 5.4, 0.01, () -> 6 * gallons(twenty, 50))
                .value("the same, L", 20.4, 0.05, () -> 6 * twenty.litresPerHour(50))
                .value("20 kW at 60 %, gal/h", 1.06, 0.005, () -> gallons(twenty, 60))
                .value("30 kW at three quarters, gal/h", 2.4, 0.01, () -> gallons(thirty, 75))
                .value(
                        "20 kW, full load, kWh/gal",
                        12.5,
                        0.05,
                        () -> LITRES_A_GALLON / twenty.litresPerKilowattHour(100));
    }

    private static FuelChart chart(double watts, double... gallons) {
        List<Double> litres = new ArrayList<>();
        for (double gallon : gallons) {
            litres.add(gallon * LITRES_A_GALLON);
        }
        return new FuelChart(watts, litres);
    }

    private static double gallons(FuelChart chart, double percent) {
        return chart.litresPerHour(percent) / LITRES_A_GALLON;
    }

    private static Row tool() {
        Tool saw = new Tool("saw", 15 * 120, 100, 2);
        PowerSystem system = new PowerSystem(
                new Battery(2000, 0, 100, 100, ColdShare.ALWAYS_ALL, 0),
                0,
                new Inverter(2000, 4000, 90),
                Generator.NONE);
        PowerDay day = new PowerDay(
                LocalDate.of(2027, 5, 1),
                SunCurve.dark(15),
                20,
                0,
                List.of(new PowerBlock(saw, LocalTime.of(9, 0), 30)),
                0);
        return Row.of("EN-09", "Saw of 15 A at 120 V for half an hour", "P = V I", "common practice, no source")
                .share("at the saw, kWh", 0.90, 1, () -> saw.averageWatts() * 0.5 / 1000)
                .share("out of the battery, kWh", 1.00, 1, () -> drop(system, day) / 1000)
                .share("out of the battery, Ah at 12 V", 83, 1, () -> drop(system, day) / 12);
    }

    private static double drop(PowerSystem system, PowerDay day) {
        return 2000 - ChargeCurve.of(system, List.of(day), 100).lowest().wattHours();
    }
}
