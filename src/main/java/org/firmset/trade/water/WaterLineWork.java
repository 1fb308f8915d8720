package org.firmset.trade.water;

import static org.firmset.trade.trace.Term.term;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Table;
import org.firmset.trade.trace.Whole;
import org.firmset.trade.trace.Worksheet;
import org.firmset.trade.water.LineFlow.AtLevel;
import org.firmset.trade.water.LineFlow.Drawn;
import org.firmset.trade.water.LineFlow.Level;
import org.jspecify.annotations.Nullable;

/** What comes out of the outlets of a water line. */
final class WaterLineWork {
    /** Static pressure over which codes ask for a reducing valve, 80 psi: IPC 604.8. */
    static final double HIGH_PRESSURE = 80 * UsUnits.PSI;

    private static final double LITRES_PER_MINUTE = 60_000;
    private static final double MINUTES = 60;

    private final WaterLine line;
    private final LineFlow flow;
    private final Sheet sheet = new Sheet();

    private WaterLineWork(WaterLine line) {
        this.line = line;
        this.flow = new LineFlow(line);
    }

    static Worksheet work(WaterLine line) {
        return new WaterLineWork(line).work();
    }

    private Worksheet work() {
        List<AtLevel> levels = flow.levels();
        AtLevel full = levels.getFirst();
        double total = LineFlow.total(full.together());
        double low = LineFlow.total(levels.getLast().together());
        water();
        closed();
        flows(full, low);
        main(total);
        lasts(total, low);
        pipes();
        sheet.add(table("One outlet open at a time", levels, AtLevel::alone));
        sheet.add(table("All outlets open together", levels, AtLevel::together));
        sheet.add(closedTable());
        new WaterLineFindings(line.law(), flow, levels).all().forEach(sheet::add);
        return sheet.done();
    }

    private void water() {
        Amount temperature = Amount.temperature(line.waterTemperature().amount());
        sheet.add(Line.step("density", "Density of the water", Amount.density(flow.density()))
                .by("rho of T", term("T", "temperature", temperature))
                .from(Sources.DENSITY));
        sheet.add(Line.step(
                        "viscosity",
                        "Kinematic viscosity of the water",
                        Amount.number(flow.viscosity() * 1e6, 4, "mm2/s"))
                .by("nu = mu / rho", term("T", "temperature", temperature))
                .from(Sources.VISCOSITY));
    }

    private void closed() {
        Outlet lowest = line.outlets().all().stream()
                .max(Comparator.comparingDouble(o -> o.drop().amount()))
                .orElseThrow();
        double pressure = Math.max(0, flow.staticPressure(lowest, Level.FULL));
        sheet.add(Line.answer("static-pressure", "Greatest pressure when shut, tank full", Amount.pressure(pressure))
                .by(
                        "p = rho g (d + z), at least 0",
                        term("rho", "density", Amount.density(flow.density())),
                        term("d", "depth of water over the tank's outlet", Amount.head(flow.depth(Level.FULL))),
                        term(
                                "z",
                                "drop to the lowest outlet",
                                Amount.head(lowest.drop().amount())))
                .from(Sources.HEAD));
        if (pressure > HIGH_PRESSURE) {
            sheet.add(
                    Finding.warning("The pressure when shut is over 80 psi (552 kPa): plumbing codes ask for a pressure"
                            + " reducing valve there (IPC 604.8, from memory), and the pipe must be rated for it."));
        }
    }

    private void flows(AtLevel full, double low) {
        double least =
                full.alone().stream().mapToDouble(Drawn::litresPerMinute).min().orElseThrow();
        sheet.add(Line.answer("least-flow", "Least flow of an outlet that is open alone, tank full", Amount.flow(least))
                .by(
                        "d + z = h main + h branch + p / (rho g), p = (Q / k)2",
                        term("d", "depth of water over the tank's outlet", Amount.head(flow.depth(Level.FULL))),
                        term("k", "what the outlet lets through, as its flow at a pressure", Amount.word(fixtures())))
                .from(line.law().source())
                .heed("No point of the pipe may lie above the line of pressure: air gathers there and stops the"
                        + " flow."));
        double all = LineFlow.total(full.together()) * LITRES_PER_MINUTE;
        sheet.add(Line.answer("flow-all", "Flow of all outlets open together, tank full", Amount.flow(all))
                .by(
                        "Q = sum of the outlets",
                        term("n", "outlets", Amount.count(full.together().size(), "")))
                .from(line.law().source()));
        double last = low * LITRES_PER_MINUTE;
        sheet.add(Line.answer("flow-all-low", "Flow of all outlets open together, tank nearly empty", Amount.flow(last))
                .by("Q = sum of the outlets", term("d", "depth of water", Amount.head(flow.depth(Level.LOW))))
                .from(line.law().source()));
    }

    private String fixtures() {
        @Nullable Rating rating = line.fixture().rating();
        return rating == null ? "bare end" : rating.toString();
    }

    private void main(double total) {
        PipeRun main = flow.main();
        double speed = Friction.velocity(total, main.bore());
        sheet.add(Line.step("main-speed", "Speed of the water in the main", Amount.velocity(speed))
                .by(
                        "v = Q / (pi d2 / 4)",
                        term("Q", "flow of all outlets", Amount.flow(total * LITRES_PER_MINUTE)),
                        term("d", "bore of the main", Amount.thin(main.bore()))));
        friction("main-friction", "Head that friction in the main takes", line.law(), total);
        friction("main-friction-other", "The same by the other law", line.law().other(), total);
        sheet.add(Line.step(
                        "main-fittings", "Head that fittings of the main take", Amount.head(main.fittingHead(total)))
                .by(
                        "h = k v2 / 2g",
                        term("k", "sum for entrance, elbows, tees and valves", Amount.number(main.k(), 2, "")),
                        term("v", "speed", Amount.velocity(speed)))
                .from(Sources.FITTINGS));
        if (total > 0) {
            double re = Friction.reynolds(total, main.bore(), flow.viscosity());
            double factor = Friction.factor(re, main.material().roughness() / main.bore());
            sheet.add(Line.step(
                            "main-equivalent",
                            "Straight pipe that takes as much as the fittings",
                            Amount.length(Friction.equivalentLength(main.k(), main.bore(), factor)))
                    .by(
                            "L = k d / f",
                            term("f", "Darcy friction factor", Amount.number(factor, 5, "")),
                            term("Re", "Reynolds number", Amount.number(re, 0, "")))
                    .from(Sources.DARCY));
        }
    }

    private void friction(String key, String name, FrictionLaw law, double total) {
        PipeRun main = flow.main();
        sheet.add(Line.step(key, name, Amount.head(main.frictionHead(total, law, flow.viscosity())))
                .by(
                        law.formula(),
                        term("L", "length", Amount.length(main.length())),
                        term("d", "bore", Amount.thin(main.bore())),
                        term("e", "roughness", Amount.number(main.material().roughness() * 1000, 4, "mm")),
                        term("C", "coefficient", Amount.number(main.material().hazenWilliams(), 0, "")))
                .from(law.source()));
    }

    private void lasts(double full, double low) {
        double volume = line.tankVolume().amount();
        lasts("lasts", "Time until the tank is empty, all outlets open, at the flow of the full tank", volume, full);
        lasts("lasts-low", "The same at the flow of the nearly empty tank", volume, low);
        sheet.add(Line.step(
                        "flushes",
                        "Flushes of a toilet in a full tank",
                        Amount.count(Whole.down(TankLife.flushes(volume)), ""))
                .by(
                        "n = V / q",
                        term("V", "water in the full tank", Amount.liquid(volume)),
                        term("q", "most of one flush", Amount.liquid(Fixture.LITRES_PER_FLUSH / 1000)))
                .from(Sources.FIXTURES));
    }

    private void lasts(String key, String name, double volume, double total) {
        if (total > 0) {
            double rate = total * LITRES_PER_MINUTE;
            sheet.add(Line.answer(key, name, Amount.hours(TankLife.minutes(volume, rate) / MINUTES))
                    .by(
                            "t = V / Q",
                            term("V", "water in the full tank", Amount.liquid(volume)),
                            term("Q", "flow", Amount.flow(rate))));
        }
    }

    private void pipes() {
        sheet.add(Line.material("main-pipe", "Pipe of the main", Amount.length(line.mainLength())));
        double branches = line.outlets().all().stream()
                .mapToDouble(o -> o.branch().amount())
                .sum();
        sheet.add(Line.material("branch-pipe", "Pipe of the branches", Amount.length(branches))
                .by(
                        "L = sum of the branches",
                        term("n", "branches", Amount.count(line.outlets().all().size(), ""))));
    }

    private static Table table(String title, List<AtLevel> levels, Function<AtLevel, List<Drawn>> open) {
        List<List<Amount>> rows = new ArrayList<>();
        for (AtLevel at : levels) {
            for (Drawn drawn : open.apply(at)) {
                rows.add(List.of(
                        Amount.word(drawn.outlet().name()),
                        Amount.word(at.level().words()),
                        Amount.flow(drawn.litresPerMinute()),
                        Amount.pressure(drawn.pressure()),
                        Amount.velocity(drawn.speed()),
                        Amount.word(drawn.enough() ? "yes" : "no")));
            }
        }
        return new Table(
                title, List.of("Outlet", "Tank", "Flow", "Pressure while open", "Speed in the branch", "Enough"), rows);
    }

    private Table closedTable() {
        List<List<Amount>> rows = new ArrayList<>();
        for (Outlet outlet : line.outlets().all()) {
            rows.add(List.of(
                    Amount.word(outlet.name()),
                    Amount.head(outlet.drop().amount()),
                    Amount.pressure(Math.max(0, flow.staticPressure(outlet, Level.FULL))),
                    Amount.pressure(Math.max(0, flow.staticPressure(outlet, Level.LOW)))));
        }
        return new Table(
                "Pressure with all outlets shut",
                List.of("Outlet", "Drop below the tank's outlet", "Tank full", "Tank nearly empty"),
                rows);
    }
}
