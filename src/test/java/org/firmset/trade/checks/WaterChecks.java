package org.firmset.trade.checks;

import java.util.List;
import java.util.Objects;
import java.util.function.DoubleSupplier;
import org.firmset.trade.trace.Results;
import org.firmset.trade.trace.Worksheet;
import org.firmset.trade.water.Bearing;
import org.firmset.trade.water.Chlorine;
import org.firmset.trade.water.DisinfectionMethod;
import org.firmset.trade.water.Fixture;
import org.firmset.trade.water.FixtureGroup;
import org.firmset.trade.water.FixtureUnits;
import org.firmset.trade.water.Friction;
import org.firmset.trade.water.Given;
import org.firmset.trade.water.PipeMaterial;
import org.firmset.trade.water.Soil;
import org.firmset.trade.water.TankLife;
import org.firmset.trade.water.Water;
import org.firmset.trade.water.WaterKinds;

/** Tanks, soil bearing and water. */
final class WaterChecks {
    private static final double FOOT = 0.3048;
    private static final double INCH = 0.0254;
    private static final double PSI = 6894.757293168361;
    private static final double GALLON = 3.785411784;
    private static final double POUND = 0.45359237;
    /** Feet of water are those of 60 °F in US tables. */
    private static final double DENSITY_60F = Water.density((60 - 32) / 1.8);

    private WaterChecks() {}

    static List<Row> rows() {
        return List.of(
                soils(),
                unknownSoil(),
                waterMass(),
                fullTank(),
                padFooting(),
                head(),
                steel(),
                plastic(),
                colebrook(),
                darcy(),
                testPressure(),
                residual(),
                fixtureUnits(),
                fixtures(),
                drawdown(),
                dose(),
                methods());
    }

    private static Row soils() {
        return Row.of(
                        "TB-01",
                        "Presumptive vertical bearing",
                        "IBC 2012 Table 1806.2",
                        "verified: values in a copy of the table; kPa by conversion")
                .value("bedrock, lb/ft2", 12_000, 0, Soil.BEDROCK::poundsPerSquareFoot)
                .value("sedimentary rock, lb/ft2", 4_000, 0, Soil.SEDIMENTARY_ROCK::poundsPerSquareFoot)
                .value("sandy gravel and gravel, lb/ft2", 3_000, 0, Soil.GRAVEL::poundsPerSquareFoot)
                .value("sand, silty or clayey, lb/ft2", 2_000, 0, Soil.SAND::poundsPerSquareFoot)
                .value("clay and silt, lb/ft2", 1_500, 0, Soil.CLAY::poundsPerSquareFoot)
                .value("bedrock, kPa", 575, 0.5, () -> Soil.BEDROCK.presumptive() / 1000)
                .value("sedimentary rock, kPa", 192, 0.5, () -> Soil.SEDIMENTARY_ROCK.presumptive() / 1000)
                .value("sandy gravel and gravel, kPa", 144, 0.5, () -> Soil.GRAVEL.presumptive() / 1000)
                .value("sand, kPa", 95.8, 0.05, () -> Soil.SAND.presumptive() / 1000)
                .value("clay and silt, kPa", 71.8, 0.05, () -> Soil.CLAY.presumptive() / 1000);
    }

    private static Row unknownSoil() {
        return Row.of(
                        "TB-02",
                        "Bearing when nothing is known",
                        "24 CFR 3285.202(e), (f)",
                        "verified: text of the section")
                .value("lb/ft2", 1_500, 0, Soil.UNKNOWN::poundsPerSquareFoot)
                .value("peat: none presumed", 0, 0, Soil.PEAT::poundsPerSquareFoot)
                .value("organic clay: none presumed", 0, 0, Soil.ORGANIC_CLAY::poundsPerSquareFoot)
                .value("uncompacted fill: none presumed", 0, 0, Soil.UNCOMPACTED_FILL::poundsPerSquareFoot);
    }

    private static DoubleSupplier ofTank(String key, String unit) {
        return () -> Results.amount(tank(), key, unit);
    }

    private static Worksheet tank() {
        return Given.of(WaterKinds.TANK)
                .with("shape", "nominal")
                .with("nominalVolume", "1650 gal")
                .with("diameter", "8 ft")
                .with("emptyMass", "400 lb")
                .with("baseThickness", "0 m")
                .work();
    }

    private static Row waterMass() {
        return Row.of("TB-03", "Mass of 1,650 gal of water", "unit weights, 8.34 lb/gal", "memory")
                .share("lb", 13_761, 0.1, ofTank("water-mass", "lb"))
                .share("kg", 6_242, 0.1, ofTank("water-mass", "kg"))
                .share("ft3", 220.6, 0.1, ofTank("volume", "ft3"))
                .share("m3", 6.25, 0.1, ofTank("volume", "m3"));
    }

    private static Row fullTank() {
        return Row.of("TB-04", "1,650 gal tank of 8 ft and 400 lb, full", "arithmetic on TB-03", "memory")
                .value("lb/ft2", 281.7, 0.5, ofTank("pressure-on-ground", "lb/ft2"))
                .value("kPa", 13.5, 0.05, ofTank("pressure-on-ground", "kPa"))
                .value("percent of 1,500 lb/ft2", 19, 0.5, ofTank("share", "%"));
    }

    private static Row padFooting() {
        double load = 12_000 * POUND;
        return Row.of(
                        "TB-05",
                        "Pad for 12,000 lb on 2,000 lb/ft2",
                        "IBC 1806 by division",
                        "memory: arithmetic on TB-01")
                .value("area, ft2", 6, 0, () -> Bearing.padArea(load, Soil.SAND.presumptive()) / (FOOT * FOOT))
                .value("side, ft", 2.449, 0.0005, () -> Bearing.padSide(load, Soil.SAND.presumptive()) / FOOT)
                .value(
                        "side to order, ft",
                        2.5,
                        0,
                        () -> Bearing.padSide(load, Soil.SAND.presumptive(), 6 * INCH) / FOOT);
    }

    private static Row head() {
        return Row.of(
                        "WA-01",
                        "Head and pressure",
                        "definition",
                        "verified: 0.433 and 2.31 in a friction chart, 10 m in an example")
                .value("1 ft of water at 60 °F, psi", 0.433, 0.002, () -> Water.pressure(FOOT, DENSITY_60F) / PSI)
                .value("1 psi of water at 60 °F, ft", 2.31, 0.002, () -> Water.head(PSI, DENSITY_60F) / FOOT)
                .value("98,066.5 Pa at 1,000 kg/m3, m", 10, 1e-6, () -> Water.head(98_066.5, 1000))
                .value("40 ft of head, psi", 17.3, 0.05, () -> Water.pressure(40 * FOOT, DENSITY_60F) / PSI)
                .value("40 ft of head, kPa", 119.5, 0.35, () -> Water.pressure(40 * FOOT, DENSITY_60F) / 1000);
    }

    private static double cubic(double gallonsPerMinute) {
        return gallonsPerMinute * GALLON / 60_000;
    }

    private static double hazen(double gallonsPerMinute, double inches, double c) {
        return Friction.hazenWilliams(cubic(gallonsPerMinute), 100, inches * INCH, c);
    }

    private static Row steel() {
        return Row.of(
                        "WA-02",
                        "Hazen-Williams, 1 in Sch 40 steel (1.049 in), C 100",
                        "friction loss table for steel pipe",
                        "verified: table values")
                .share("4 gpm, ft for 100 ft", 2.13, 0.5, () -> hazen(4, 1.049, PipeMaterial.OLD_STEEL.hazenWilliams()))
                .share(
                        "10 gpm, ft for 100 ft",
                        11.63,
                        0.5,
                        () -> hazen(10, 1.049, PipeMaterial.OLD_STEEL.hazenWilliams()))
                .share(
                        "4 gpm, psi for 100 ft",
                        0.92,
                        0.5,
                        () -> Water.pressure(hazen(4, 1.049, 100) * FOOT, DENSITY_60F) / PSI)
                .share(
                        "10 gpm, psi for 100 ft",
                        5.04,
                        0.5,
                        () -> Water.pressure(hazen(10, 1.049, 100) * FOOT, DENSITY_60F) / PSI)
                .share("4 gpm, ft/s", 1.48, 0.5, () -> Friction.velocity(cubic(4), 1.049 * INCH) / FOOT)
                .share("10 gpm, ft/s", 3.71, 0.5, () -> Friction.velocity(cubic(10), 1.049 * INCH) / FOOT);
    }

    private static Row plastic() {
        double c = PipeMaterial.PVC.hazenWilliams();
        return Row.of(
                        "WA-03",
                        "Hazen-Williams, Sch 40 plastic, C 150",
                        "77 Ill. Adm. Code 906 App. A Exh. I",
                        "verified: exhibit, which is rounded")
                .share("1 in, 5 gpm, ft for 100 ft", 1.52, 3, () -> hazen(5, 1.049, c))
                .share("1 in, 10 gpm, ft for 100 ft", 5.50, 3, () -> hazen(10, 1.049, c))
                .share("1 1/4 in, 10 gpm, ft for 100 ft", 1.46, 3, () -> hazen(10, 1.380, c))
                .share("1 1/2 in, 10 gpm, ft for 100 ft", 0.70, 3, () -> hazen(10, 1.610, c))
                .share("2 in, 50 gpm, ft for 100 ft", 3.98, 3, () -> hazen(50, 2.067, c));
    }

    private static Row colebrook() {
        return Row.of(
                        "WA-04",
                        "Darcy friction factor",
                        "Colebrook 1939",
                        "verified: example of an open library of fluids")
                .value("Re 100,000, roughness 0.0001", 0.018513866, 1e-7, () -> Friction.colebrook(1e5, 1e-4));
    }

    private static Row darcy() {
        double flow = cubic(10);
        double bore = 0.026645;
        double viscosity = 1.004e-6;
        double rough = PipeMaterial.PVC.roughness();
        return Row.of(
                        "WA-05",
                        "10 gpm in 26.645 mm of smooth pipe, 20 °C",
                        "Darcy-Weisbach",
                        "memory: formulas; arithmetic")
                .share("speed, m/s", 1.131, 0.5, () -> Friction.velocity(flow, bore))
                .share("Re", 30_030, 0.5, () -> Friction.reynolds(flow, bore, viscosity))
                .share("f", 0.02363, 0.5, () -> Friction.factor(Friction.reynolds(flow, bore, viscosity), rough / bore))
                .share("m for 100 m", 5.79, 0.5, () -> Friction.darcy(flow, 100, bore, rough, viscosity))
                .share(
                        "Hazen-Williams C 150, m for 100 m",
                        5.49,
                        0.5,
                        () -> Friction.hazenWilliams(flow, 100, bore, 150));
    }

    private static Row testPressure() {
        return Row.of(
                        "WA-06",
                        "Pressure test of water pipe",
                        "Chicago plumbing code; IPC 312.5",
                        "verified: working pressure, and 50 psi of the air test, taken here as least for water too; 15"
                                + " min memory: IPC 312.5")
                .value("working at 72 psi, psi", 72, 0.001, () -> test("72 psi", "test-pressure", "psi"))
                .value("working at 20 psi, psi", 50, 0.001, () -> test("20 psi", "test-pressure", "psi"))
                .value("working at 20 psi, kPa", 345, 0.5, () -> test("20 psi", "test-pressure", "kPa"))
                .value("hold, min", 15, 0, () -> test("20 psi", "hold", "min"));
    }

    private static double test(String working, String key, String unit) {
        return Results.amount(
                Given.of(WaterKinds.PRESSURE_TEST)
                        .with("workingPressure", working)
                        .with("factor", "1")
                        .work(),
                key,
                unit);
    }

    private static Row residual() {
        return Row.of(
                        "WA-07",
                        "Residual pressure at the highest fixture",
                        "IPC Appendix E, E103.1",
                        "verified: text of the appendix")
                .value("flush tanks, psi", 8, 0, () -> FixtureGroup.FLUSH_TANK.leastPressure() / PSI)
                .value("flush valves, psi", 15, 0, () -> FixtureGroup.FLUSH_VALVE.leastPressure() / PSI)
                .value("flush tanks, kPa", 55, 0.5, () -> FixtureGroup.FLUSH_TANK.leastPressure() / 1000)
                .value("flush valves, kPa", 103, 0.5, () -> FixtureGroup.FLUSH_VALVE.leastPressure() / 1000);
    }

    private static Row fixtureUnits() {
        Row row = Row.of(
                "WA-08",
                "Fixture units to demand, flush tanks",
                "NSPC Table B.5.4",
                "verified: table; tables of other codes differ");
        double[][] points = {{3, 3}, {5, 4.5}, {8, 7}, {10, 8}, {13, 10}};
        for (double[] point : points) {
            row.value(
                    Math.round(point[0]) + " units, gpm",
                    point[1],
                    0,
                    () -> FixtureUnits.litresPerMinute(point[0]) / GALLON);
        }
        return row;
    }

    private static double flow(Fixture fixture, double psi) {
        return Objects.requireNonNull(fixture.rating()).litresPerMinuteAt(psi * PSI);
    }

    private static Row fixtures() {
        return Row.of("WA-09", "Most that fixtures let through", "EPAct 1992; 10 CFR 430.32", "verified: agency pages")
                .value("shower at 80 psi, gpm", 2.5, 0, () -> flow(Fixture.SHOWER, 80) / GALLON)
                .value("sink at 60 psi, gpm", 2.2, 0, () -> flow(Fixture.SINK, 60) / GALLON)
                .value("shower at 80 psi, L/min", 9.5, 0.05, () -> flow(Fixture.SHOWER, 80))
                .value("sink at 60 psi, L/min", 8.3, 0.05, () -> flow(Fixture.SINK, 60))
                .value("flush, gal", 1.6, 0, () -> 1000 / TankLife.flushes(1) / GALLON)
                .value("flush, L", 6.1, 0.05, () -> 1000 / TankLife.flushes(1));
    }

    private static Row drawdown() {
        double volume = 1650 * GALLON / 1000;
        return Row.of("WA-10", "1,650 gal at 5 gpm", "arithmetic", "memory: arithmetic")
                .value("min", 330, 0, () -> TankLife.minutes(volume, 5 * GALLON))
                .value("h", 5.5, 0, () -> TankLife.minutes(volume, 5 * GALLON) / 60);
    }

    private static Row dose() {
        double volume = 5000 * GALLON / 1000;
        return Row.of(
                        "WA-11",
                        "Chlorine for 5,000 gal at 100 ppm",
                        "state disinfection equations, V x ppm / (1,000,000 x strength)",
                        "verified: equations and example")
                .value("6 % liquid, gal", 8.33, 0.01, () -> Chlorine.liquid(volume, 100, 0.06) * 1000 / GALLON)
                .value("6 % liquid, L", 31.5, 0.05, () -> Chlorine.liquid(volume, 100, 0.06) * 1000)
                .value("12 % liquid, gal", 4.17, 0.01, () -> Chlorine.liquid(volume, 100, 0.12) * 1000 / GALLON)
                .value("12 % liquid, L", 15.8, 0.05, () -> Chlorine.liquid(volume, 100, 0.12) * 1000)
                .value("65 % dry, lb", 6.4, 0.05, () -> Chlorine.dry(volume, 100, 0.65) / POUND)
                .value("65 % dry, kg", 2.91, 0.02, () -> Chlorine.dry(volume, 100, 0.65));
    }

    private static double disinfect(String method, String key, String unit) {
        return Results.amount(
                Given.of(WaterKinds.DISINFECTION).with("method", method).work(), key, unit);
    }

    private static Row methods() {
        return Row.of(
                        "WA-12",
                        "Storage tank disinfection methods",
                        "ANSI/AWWA C652-11, 4.3",
                        "verified: pages of the standard with the methods")
                .value("full tank, mg/L left", 10, 0, () -> disinfect("full-tank", "left", "mg/L"))
                .value("wetted walls, mg/L", 200, 0, () -> disinfect("wetted-walls", "dose", "mg/L"))
                .value("bottom, mg/L", 50, 0, DisinfectionMethod.BOTTOM_THEN_FILL::dose)
                .value("then filled, mg/L left", 2, 0, () -> disinfect("bottom-then-fill", "left", "mg/L"))
                .value("then filled, h", 24, 0, () -> disinfect("bottom-then-fill", "contact-full", "h"));
    }
}
