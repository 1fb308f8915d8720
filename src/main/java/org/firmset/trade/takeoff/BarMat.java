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
import org.firmset.trade.trace.Whole;
import org.firmset.trade.trace.Worksheet;

@Described("A mat of straight bars both ways in a rectangular slab.")
public record BarMat(
        @Described(value = "One side of the slab.", least = "0.3 m", most = "60 m")
        Length length,

        @Described(value = "The other side.", least = "0.3 m", most = "60 m")
        Length width,

        @Described("Size of the bars.") BarSize bar,

        @Described(value = "Distance of the bars.", least = "75 mm", most = "1 m", usual = "12 in")
        Length spacing,

        @Described(
                value = "Distance of bar ends and outer bars from the edge.",
                least = "20 mm",
                most = "300 mm",
                usual = "3 in")
        Length edge) {

    private static final double USUAL_BAR = 20 * 0.3048;

    public Worksheet work() {
        Sheet sheet = new Sheet();
        if (2 * edge.amount() >= Math.min(length.amount(), width.amount())) {
            throw new Refusal(
                    "edge",
                    edge,
                    "is half the slab or more",
                    Enter.under(Math.min(length.amount(), width.amount()) / 2));
        }
        long along = Bars.barsAcross(width.amount(), edge.amount(), spacing.amount());
        long across = Bars.barsAcross(length.amount(), edge.amount(), spacing.amount());
        double longBar = length.amount() - 2 * edge.amount();
        double shortBar = width.amount() - 2 * edge.amount();
        addWay(sheet, "along", along, length, width);
        addWay(sheet, "across", across, width, length);
        double metres = along * longBar + across * shortBar;
        sheet.add(Line.answer("mass", "Mass of the mat", Amount.mass(metres * bar.kilogramsPerMetre()))
                .by(
                        "M = S g",
                        term("S", "all bars", Amount.length(metres)),
                        term("g", "mass of its length", Amount.massPerLength(bar.kilogramsPerMetre())))
                .from(Sources.BAR_TABLE));
        sheet.add(Line.step("ties", "Crossings", Amount.count(along * across, "crossings"))
                .by("every second one tied is usual")
                .from(Source.PRACTICE));
        addFindings(sheet, Math.max(longBar, shortBar));
        sheet.add(Finding.note("For the bars to buy enter '%d x %s, %d x %s' in the cut list."
                .formatted(along, Length.ofMetres(longBar), across, Length.ofMetres(shortBar))));
        return sheet.done();
    }

    private void addFindings(Sheet sheet, double longest) {
        if (isUneven(length) || isUneven(width)) {
            sheet.add(
                    Finding.note(
                            "The sides are no whole number of distances: spread evenly, the outer bars stand up to half"
                                    + " a distance further from the edge than entered. Where the drawing forbids that, lay one bar more."));
        }
        if (longest > USUAL_BAR + 1e-9) {
            sheet.add(Finding.note(
                    "Some bars are longer than 20 ft (6.1 m): longer than most that are sold, they need laps."));
        }
    }

    private boolean isUneven(Length side) {
        double distances = (side.amount() - 2 * edge.amount()) / spacing.amount();
        return distances - Whole.down(distances) > 0.01;
    }

    private void addWay(Sheet sheet, String key, long bars, Length along, Length side) {
        sheet.add(Line.answer("bars-" + key, "Bars " + key, Amount.count(bars, "bars"))
                .by(
                        "n = (B - 2 e) / s, rounded down, + 1",
                        term("B", "side they lie across", Amount.length(side)),
                        term("e", "edge", Amount.length(edge)),
                        term("s", "distance", Amount.length(spacing))));
        sheet.add(Line.step("length-" + key, "Length of each", Amount.length(along.amount() - 2 * edge.amount()))
                .by(
                        "L - 2 e",
                        term("L", "side they lie along", Amount.length(along)),
                        term("e", "edge", Amount.length(edge))));
    }
}
