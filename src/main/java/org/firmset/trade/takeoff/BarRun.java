package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Worksheet;

@Described("Long bars lapped one behind the other: along a footing, or round in a loop with corner bars.")
public record BarRun(
        @Described(value = "Length of the run, or once round the loop.", least = "0.3 m", most = "500 m")
        Length run,

        @Described(value = "Whether it closes in a loop.", usual = "false")
        boolean loop,

        @Described(value = "Runs side by side.", least = "1", most = "40", usual = "1")
        int runs,

        @Described("Size of the bars.") BarSize bar,

        @Described(value = "Length of a bar as it is sold.", least = "1 m", most = "18 m", usual = "20 ft")
        Length stock,

        @Described(value = "Lap of two bars.", least = "0 mm", most = "2 m", usual = "24 in")
        Length lap,

        @Described(
                value = "Corner bars in each loop, with a lap as long on both legs; 0 when bars are bent round.",
                least = "0",
                most = "40",
                usual = "0")
        int corners) {

    private static final double LEAST_DIAMETERS = 40;

    public Worksheet work() {
        Sheet sheet = new Sheet();
        if (lap.amount() >= stock.amount()) {
            throw new Refusal("lap", lap, "is as long as the bar", Enter.under(stock.amount()) + " or longer bars");
        }
        double deduction = Bars.bendDeduction90(bar, false);
        double corner = 2 * lap.amount() - deduction;
        double leastLeg = Bars.leastBend(bar, false) / 2 + bar.diameter();
        if (corners > 0 && lap.amount() < leastLeg) {
            throw new Refusal("lap", lap, "is shorter than the bend of a corner bar", Enter.atLeast(leastLeg));
        }
        long each = loop
                ? Bars.barsForLoop(run.amount(), stock.amount(), lap.amount())
                : Bars.barsForRun(run.amount(), stock.amount(), lap.amount());
        double place = run.amount() + (loop ? each : each - 1) * lap.amount();
        sheet.add(Line.step("bars-each", "Bars in one run", Amount.count(each, "bars"))
                .by(
                        loop ? "n = R / (l - o), rounded up" : "n = (R - o) / (l - o), rounded up",
                        term("R", loop ? "once round" : "run", Amount.length(run)),
                        term("l", "bar", Amount.length(stock)),
                        term("o", "lap", Amount.length(lap))));
        sheet.add(Line.material("bars", "Bars", Amount.packs(each * runs, "bars"))
                .by(
                        "N = n k",
                        term("n", "bars in one", Amount.count(each, "")),
                        term("k", "runs", Amount.count(runs, "")))
                .heed("Laps in neighbouring runs lie away from each other."));
        if (corners > 0) {
            sheet.add(Line.step("corner-bars", "Corner bars", Amount.count((long) corners * runs, "bars"))
                    .by(
                            "c k",
                            term("c", "corners", Amount.count(corners, "")),
                            term("k", "runs", Amount.count(runs, "")))
                    .from(Source.PRACTICE));
            sheet.add(Line.step("corner-cut", "Cut each corner bar at", Amount.length(corner))
                    .by(
                            "2 o - b",
                            term("o", "lap", Amount.length(lap)),
                            term("b", "taken off for the bend", Amount.thin(deduction)))
                    .from(Sources.ARC));
            sheet.add(Finding.note("Corner bars are not among the bars to buy: enter '%d x %s' in the cut list."
                    .formatted((long) corners * runs, Length.ofMetres(Math.round(corner * 1e4) / 1e4))));
        }
        if ((each > 1 || loop || corners > 0) && lap.amount() < LEAST_DIAMETERS * bar.diameter() - 1e-9) {
            sheet.add(Finding.warning(
                    "The lap is shorter than 40 diameters of the bar, the least that is usual: see the bar"
                            + " rules, the drawing decides."));
        }
        double metres = (place + corner * corners) * runs;
        sheet.add(Line.answer("in-place", "Steel in place", Amount.length(metres))
                .by("runs with their laps, and corner bars"));
        sheet.add(Line.step("mass", "Mass in place", Amount.mass(metres * bar.kilogramsPerMetre()))
                .by(
                        "M = S g",
                        term("S", "in place", Amount.length(metres)),
                        term("g", "mass of its length", Amount.massPerLength(bar.kilogramsPerMetre())))
                .from(Sources.BAR_TABLE));
        return sheet.done();
    }
}
