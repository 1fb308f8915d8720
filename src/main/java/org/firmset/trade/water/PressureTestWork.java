package org.firmset.trade.water;

import static org.firmset.trade.trace.Term.term;

import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Worksheet;

/** How a water line is tested, and what a test made says. */
final class PressureTestWork {
    private static final double WARMEST = 40;

    private final PressureTest test;
    private final TrappedWater trapped;
    private final Sheet sheet = new Sheet();

    private PressureTestWork(PressureTest test) {
        this.test = test;
        this.trapped = new TrappedWater(
                test.material(),
                test.bore().amount(),
                test.wall().amount(),
                test.airPercent().doubleValue() / 100);
    }

    static Worksheet work(PressureTest test) {
        if (test.workingPressure().amount() > test.rating().amount()) {
            throw new Refusal(
                    "workingPressure",
                    test.workingPressure(),
                    "is more than the line is rated for",
                    "Enter the rating of the weakest part, or lower the pressure");
        }
        return new PressureTestWork(test).work();
    }

    private Worksheet work() {
        double wanted = pressures();
        pump(wanted);
        double thermal = thermal(wanted);
        Verdict verdict =
                made() ? new TestReading(test, trapped, volume(), sheet).read(wanted, thermal) : Verdict.NOT_MADE;
        sheet.add(Line.answer("verdict", "Verdict", Amount.word(verdict.words()))
                .from(Source.PRACTICE)
                .heed("The inspector decides, not this sheet."));
        if (test.material().plastic()) {
            sheet.add(Finding.note(
                    "Plastic pipe stretches for a while after pumping up and the pressure falls: pump up again, wait"
                            + " until it stands, then begin to count."));
        }
        return sheet.done();
    }

    private double pressures() {
        double density = Water.density(test.startTemperature().amount());
        double above = Water.pressure(test.highestAbove().amount(), density);
        double below = Water.pressure(test.lowestBelow().amount(), density);
        double factor = test.factor().doubleValue();
        double wanted = PressureTest.testPressure(
                test.workingPressure().amount(), factor, test.codeLeast().amount(), above);
        sheet.add(Line.answer("test-pressure", "Test pressure at the gauge", Amount.pressure(wanted))
                .by(
                        "p = max(n w, c + rho g h)",
                        term("n", "times", Amount.number(factor, 2, "")),
                        term(
                                "w",
                                "working pressure",
                                Amount.pressure(test.workingPressure().amount())),
                        term(
                                "c",
                                "least of the code",
                                Amount.pressure(test.codeLeast().amount())),
                        term(
                                "h",
                                "highest point above the gauge",
                                Amount.head(test.highestAbove().amount())))
                .from(Sources.TEST_PRESSURE)
                .heed("Water only, all air bled out, joints cured, nobody in line with caps and plugs. Compressed air"
                        + " in plastic pipe can maim. The local code and the pipe's maker come first."));
        sheet.add(Line.step("pressure-highest", "Pressure at the highest point", Amount.pressure(wanted - above))
                .by(
                        "p - rho g h",
                        term("p", "at the gauge", Amount.pressure(wanted)),
                        term("rho g h", "head", Amount.pressure(above)))
                .from(Sources.HEAD));
        double lowest = wanted + below;
        sheet.add(Line.step("pressure-lowest", "Pressure at the lowest point", Amount.pressure(lowest))
                .by(
                        "p + rho g h",
                        term("p", "at the gauge", Amount.pressure(wanted)),
                        term("rho g h", "head", Amount.pressure(below)))
                .from(Sources.HEAD));
        if (lowest > test.rating().amount()) {
            sheet.add(Finding.warning(
                    "At the lowest point the test pressure is more than the line is rated for. Test it in parts, or ask"
                            + " the maker what a test may reach."));
        }
        sheet.add(Line.answer("hold", "Time it must hold", Amount.minutes(test.holdMinutes()))
                .from(test.holdMinutes() == 15 ? Sources.TEST_TIME : Source.PRACTICE));
        return wanted;
    }

    private double volume() {
        return TankVolume.upright(test.bore().amount(), test.length().amount());
    }

    private void pump(double wanted) {
        double volume = volume();
        double pumped = volume * trapped.shareToPump(wanted);
        sheet.add(Line.step("pipe-volume", "Water in the pipe", Amount.liquid(volume))
                .by(
                        "V = pi/4 d2 L",
                        term("d", "bore", Amount.thin(test.bore().amount())),
                        term("L", "length", Amount.length(test.length())))
                .from(Sources.GEOMETRY));
        sheet.add(Line.material("water", "Water to fill and pump up", Amount.liquid(volume + pumped))
                .by(
                        "V + v",
                        term("V", "in the pipe", Amount.liquid(volume)),
                        term("v", "pumped in", Amount.liquid(pumped))));
        sheet.add(Line.answer("pump-in", "Water to pump in once the pipe is full", Amount.liquid(pumped))
                .by(
                        "v = V (p (gamma + 5/4 D / (E e)) + a (1 - p0 / (p0 + p)))",
                        term(
                                "gamma",
                                "compressibility of water",
                                Amount.number(Water.COMPRESSIBILITY * 1e9, 3, "1/GPa")),
                        term(
                                "E",
                                "modulus of the pipe",
                                Amount.strength(test.material().modulus())),
                        term("e", "wall", Amount.thin(test.wall().amount())),
                        term("a", "air", Amount.percent(trapped.air())))
                .from(Sources.TRAPPED)
                .heed("Much more than this means air in the pipe: bleed it again."));
    }

    private double thermal(double wanted) {
        double from = test.startTemperature().amount();
        double to = test.endTemperature().amount();
        double pressure = made() ? test.startPressure().amount() : wanted;
        double cooler = Math.min(from, WARMEST - 1);
        double kelvin = trapped.pressureChange(cooler, cooler + 1, pressure);
        sheet.add(Line.step("per-degree", "Change of the reading for 1 °C warmer", Amount.pressure(kelvin))
                .by(
                        "dp = (ln(rho1 / rho2) - 3 alpha dT) / (gamma + 5/4 D / (E e) + air)",
                        term(
                                "alpha",
                                "expansion of the pipe",
                                Amount.number(test.material().expansion() * 1e6, 1, "1e-6/K")),
                        term("p", "pressure", Amount.pressure(pressure)))
                .from(Sources.TRAPPED)
                .heed("An estimate for pipe and water of one temperature; ground, clamps and air make it less."));
        double thermal = trapped.pressureChange(from, to, pressure);
        if (made()) {
            sheet.add(
                    Line.step("thermal", "What the change of temperature does to the reading", Amount.pressure(thermal))
                            .by(
                                    "as for 1 °C",
                                    term("T1", "at the start", Amount.temperature(from)),
                                    term("T2", "at the end", Amount.temperature(to)))
                            .from(Sources.TRAPPED));
        }
        return thermal;
    }

    private boolean made() {
        return test.minutes() > 0;
    }
}
