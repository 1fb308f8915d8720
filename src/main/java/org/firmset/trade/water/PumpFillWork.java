package org.firmset.trade.water;

import static org.firmset.trade.trace.Term.term;

import java.util.ArrayList;
import java.util.List;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Curve;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Table;
import org.firmset.trade.trace.Worksheet;

/** What a pump has to give to fill a tank. */
final class PumpFillWork {
    /** Suction over which most pumps lose their water, 20 ft; common practice, at low places. */
    static final double HIGH_SUCTION = 20 * UsUnits.FOOT;

    private static final double LITRES_PER_MINUTE = 60_000;
    private static final int STEPS = 6;

    private PumpFillWork() {}

    static Worksheet work(PumpFill fill) {
        if (fill.suctionLift().amount() > fill.lift().amount()) {
            throw new Refusal(
                    "suctionLift",
                    fill.suctionLift(),
                    "is more than the whole lift",
                    "Enter at most the lift, which begins at the water that is drawn");
        }
        Sheet sheet = new Sheet();
        double flow = fill.flow().amount() / LITRES_PER_MINUTE;
        double head = head(sheet, fill, flow);
        power(sheet, fill, flow, head);
        system(sheet, fill, flow, head);
        findings(sheet, fill, flow);
        return sheet.done();
    }

    private static PipeRun run(PumpFill fill) {
        double k = Fitting.ENTRANCE.k()
                + Fitting.EXIT.k()
                + fill.elbows() * Fitting.ELBOW.k()
                + fill.valves() * Fitting.FULL_BORE_VALVE.k()
                + fill.checkValves() * Fitting.CHECK_VALVE.k();
        return new PipeRun(fill.pipeLength().amount(), fill.bore().amount(), fill.material(), k);
    }

    private static double viscosity(PumpFill fill) {
        return Water.kinematicViscosity(fill.waterTemperature().amount());
    }

    private static double total(PumpFill fill, double flow) {
        return fill.lift().amount() + run(fill).head(flow, fill.law(), viscosity(fill));
    }

    private static double head(Sheet sheet, PumpFill fill, double flow) {
        PipeRun run = run(fill);
        double speed = Friction.velocity(flow, run.bore());
        double friction = run.frictionHead(flow, fill.law(), viscosity(fill));
        sheet.add(Line.step("speed", "Speed of the water in the pipe", Amount.velocity(speed))
                .by(
                        "v = Q / (pi d2 / 4)",
                        term("Q", "flow", Amount.flow(fill.flow().amount())),
                        term("d", "bore", Amount.thin(run.bore()))));
        sheet.add(Line.step("friction", "Head that friction takes", Amount.head(friction))
                .by(
                        fill.law().formula(),
                        term("L", "length", Amount.length(run.length())),
                        term("d", "bore", Amount.thin(run.bore())),
                        term("e", "roughness", Amount.number(run.material().roughness() * 1000, 4, "mm")),
                        term("C", "coefficient", Amount.number(run.material().hazenWilliams(), 0, "")))
                .from(fill.law().source()));
        sheet.add(Line.step("fittings", "Head that fittings take", Amount.head(run.fittingHead(flow)))
                .by(
                        "h = k v2 / 2g",
                        term("k", "sum for entrance, exit, elbows and valves", Amount.number(run.k(), 2, "")),
                        term("v", "speed", Amount.velocity(speed)))
                .from(Sources.FITTINGS));
        double head = total(fill, flow);
        sheet.add(Line.answer("head", "Head the pump must give", Amount.head(head))
                .by(
                        "H = z + h + h fittings",
                        term("z", "lift", Amount.head(fill.lift().amount())),
                        term("h", "friction", Amount.head(friction)),
                        term("h fittings", "fittings", Amount.head(run.fittingHead(flow)))));
        double density = Water.density(fill.waterTemperature().amount());
        sheet.add(Line.step("pressure", "The same as pressure", Amount.pressure(Water.pressure(head, density)))
                .by(
                        "p = rho g H",
                        term("rho", "density", Amount.density(density)),
                        term("H", "head", Amount.head(head)))
                .from(Sources.HEAD)
                .heed("The pipe must be rated for the pressure the pump makes against a shut valve, which is more."));
        return head;
    }

    private static void power(Sheet sheet, PumpFill fill, double flow, double head) {
        double density = Water.density(fill.waterTemperature().amount());
        double hydraulic = Pumping.hydraulicPower(flow, head, density);
        double efficiency = fill.efficiencyPercent().doubleValue() / 100;
        double electrical = Pumping.electricalPower(hydraulic, efficiency);
        double hours = Pumping.hours(fill.volume().amount(), flow);
        sheet.add(Line.step("hydraulic-power", "Power the water takes up", Amount.power(hydraulic))
                .by(
                        "P = rho g Q H",
                        term("Q", "flow", Amount.flow(fill.flow().amount())),
                        term("H", "head", Amount.head(head)))
                .from(Sources.PUMP));
        sheet.add(Line.answer("electrical-power", "Electrical power while it runs", Amount.power(electrical))
                .by(
                        "Pe = P / eta",
                        term("P", "power the water takes up", Amount.power(hydraulic)),
                        term("eta", "efficiency", Amount.percent(efficiency)))
                .from(Sources.PUMP)
                .heed("Starting takes several times as much for a moment. Water and electricity: a ground-fault"
                        + " breaker."));
        sheet.add(Line.answer("hours", "Hours to fill", Amount.hours(hours))
                .by(
                        "t = V / Q",
                        term("V", "water", Amount.liquid(fill.volume().amount())),
                        term("Q", "flow", Amount.flow(fill.flow().amount()))));
        sheet.add(Line.answer("energy", "Energy to fill", Amount.energy(electrical * hours))
                .by(
                        "W = Pe t",
                        term("Pe", "electrical power", Amount.power(electrical)),
                        term("t", "hours", Amount.hours(hours))));
        sheet.add(Line.material("pipe", "Pipe", Amount.length(fill.pipeLength())));
    }

    private static void system(Sheet sheet, PumpFill fill, double flow, double head) {
        List<List<Amount>> rows = new ArrayList<>();
        List<Curve.Point> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double part = flow * i / (STEPS - 2);
            double needed = total(fill, part);
            rows.add(List.of(Amount.flow(part * LITRES_PER_MINUTE), Amount.head(needed)));
            points.add(new Curve.Point(part * LITRES_PER_MINUTE, needed));
        }
        sheet.add(new Table("Head the line needs", List.of("Flow", "Head"), rows));
        Curve.Mark duty = new Curve.Mark(fill.flow().amount(), head, "wanted");
        sheet.add(new Curve("Head the line needs", "flow, L/min", "head, m", points, List.of(duty)));
    }

    private static void findings(Sheet sheet, PumpFill fill, double flow) {
        if (Friction.velocity(flow, fill.bore().amount()) > WaterLineFindings.FAST) {
            sheet.add(Finding.warning(
                    "The water runs faster than 8 ft/s (2.4 m/s); 5 to 8 ft/s (1.5 to 2.4 m/s) is common practice"
                            + " against noise, wear and water hammer. A wider pipe is slower and saves energy."));
        }
        if (fill.suctionLift().amount() > HIGH_SUCTION) {
            sheet.add(
                    Finding.warning("The pump stands more than 20 ft (6.1 m) above the water: many pumps cannot draw so"
                            + " high, the less the higher the place and the warmer the water. Ask its maker."));
        }
        double re = Friction.reynolds(flow, fill.bore().amount(), viscosity(fill));
        if (re < Friction.TURBULENT && (fill.law() == FrictionLaw.HAZEN_WILLIAMS || Friction.uncertain(re))) {
            sheet.add(
                    Finding.note("The Reynolds number is under 4,000, where the friction worked out is uncertain; it is"
                            + " small there."));
        }
        sheet.add(Finding.note(
                "Look up in the pump's own curve whether it gives this flow at this head; it says more than its"
                        + " power."));
    }
}
