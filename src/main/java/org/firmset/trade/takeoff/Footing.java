package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Worksheet;

@Described("A strip footing, straight or around a rectangle of walls.")
public record Footing(
        @Described(
                value = "Length along the centre line when straight; else the outside length of the walls on it.",
                least = "0.2 m",
                most = "100 m")
        Length length,

        @Described(
                value = "Outside width of the walls on it; 0 for a straight footing.",
                least = "0 m",
                most = "100 m",
                usual = "0 m")
        Length width,

        @Described(
                value = "Thickness of the walls on it; their middle is the middle of the footing.",
                least = "0 m",
                most = "1 m",
                usual = "8 in")
        Length wall,

        @Described(value = "Width of the footing.", least = "0.1 m", most = "3 m")
        Length footingWidth,

        @Described(value = "Depth of the footing.", least = "75 mm", most = "2 m")
        Length depth,

        @Described("What lies in it.") Embedded embedded,
        @Described("The bags.") BagMix mix) {

    private static final double LEAST_DEPTH = 6 * 0.0254;

    public Worksheet work() {
        Sheet sheet = new Sheet();
        double run = run(sheet);
        double gross = run * footingWidth.amount() * depth.amount();
        sheet.add(
                Line.step("between-forms", "Volume between the forms", Amount.volume(gross))
                        .by(
                                "G = L b d",
                                term("L", "centre line", Amount.length(run)),
                                term("b", "width", Amount.length(footingWidth)),
                                term("d", "depth", Amount.length(depth)))
                        .heed(
                                "A trench dug by hand takes more than the drawing; its bottom must be undisturbed ground, below frost."));
        addFindings(sheet);
        mix.addBags(sheet, embedded.addNet(sheet, gross));
        return sheet.done();
    }

    private void addFindings(Sheet sheet) {
        if (footingWidth.value().compareTo(wall.value()) < 0) {
            sheet.add(Finding.warning("The footing is narrower than the wall on it."));
        }
        if ((footingWidth.amount() - wall.amount()) / 2 > depth.amount() + 1e-9
                && wall.value().signum() > 0) {
            sheet.add(Finding.engineer(
                    "The footing sticks out beside the wall further than it is deep, so it needs bars that are"
                            + " reckoned (IRC R403.1.1, from memory)."));
        }
        if (depth.amount() < LEAST_DEPTH - 1e-9) {
            sheet.add(Finding.warning("Less deep than 6 in (152 mm), the least of IRC R403.1.1 (from memory)."));
        }
    }

    private double run(Sheet sheet) {
        if (width.value().signum() == 0) {
            sheet.add(Line.step("centre-line", "Centre line", Amount.length(length))
                    .by("as entered"));
            return length.amount();
        }
        double run = 2 * (length.amount() + width.amount()) - 4 * wall.amount();
        double between = Math.min(length.amount(), width.amount()) - wall.amount();
        if (between <= footingWidth.amount()) {
            throw new Refusal(
                    "footingWidth",
                    footingWidth,
                    "leaves nothing between the footings",
                    (between > 0 ? Enter.under(between) : "Enter the outside measures of the walls")
                            + ", or reckon a slab");
        }
        sheet.add(Line.step("centre-line", "Centre line", Amount.length(run))
                .by(
                        "L = 2 (a + b) - 4 t",
                        term("a", "length outside", Amount.length(length)),
                        term("b", "width outside", Amount.length(width)),
                        term("t", "walls", Amount.length(wall))));
        return run;
    }
}
