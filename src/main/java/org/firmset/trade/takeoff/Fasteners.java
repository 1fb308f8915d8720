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

@Described("Screws or nails: so many along the supports of every sheet, and so many in every joint.")
public record Fasteners(
        @Described(value = "Sheets.", least = "0", most = "5000", usual = "0")
        int sheets,

        @Described(value = "Length of a sheet, across its supports.", least = "0.3 m", most = "12 m", usual = "8 ft")
        Length sheetLength,

        @Described(value = "Width of a sheet, along its supports.", least = "0.1 m", most = "3 m", usual = "4 ft")
        Length sheetWidth,

        @Described(value = "Distance of the supports.", least = "0.1 m", most = "2 m", usual = "16 in")
        Length supportSpacing,

        @Described(value = "Distance of fasteners along edges.", least = "20 mm", most = "600 mm", usual = "6 in")
        Length edgeSpacing,

        @Described(value = "Distance on supports between.", least = "20 mm", most = "600 mm", usual = "12 in")
        Length fieldSpacing,

        @Described(value = "Joints.", least = "0", most = "10000", usual = "0")
        int joints,

        @Described(value = "Fasteners in a joint.", least = "1", most = "100", usual = "4")
        int perJoint,

        @Described(value = "Waste in percent.", least = "0", most = "50", usual = "10")
        int wastePercent,

        @Described(value = "Fasteners in a box.", least = "1", most = "20000", usual = "500")
        int perBox) {

    public Worksheet work() {
        if (sheets == 0 && joints == 0) {
            throw new Refusal("sheets", sheets, "and joints are both none", "Enter the number of sheets or of joints");
        }
        Sheet sheet = new Sheet();
        long inSheet = inSheet();
        long net = inSheet * sheets + (long) joints * perJoint;
        double gross = net * (1 + wastePercent / 100.0);
        sheet.add(Line.step("in-sheet", "In one sheet", Amount.count(inSheet, "fasteners"))
                .by(
                        "2 supports at the ends, n between: 2 (B / e + 1) + n (B / f + 1), and the long edges 2 (n + 1) (L / (n + 1) / e - 1), gaps rounded up",
                        term("B", "width", Amount.length(sheetWidth)),
                        term("L", "length", Amount.length(sheetLength)),
                        term("n", "supports between", Amount.count(between(), "")),
                        term("e", "along edges", Amount.length(edgeSpacing)),
                        term("f", "between", Amount.length(fieldSpacing)),
                        term("s", "distance of supports", Amount.length(supportSpacing)))
                .from(Source.practice("6 in along edges, 12 in between; the drawing or the maker decides")));
        sheet.add(Line.answer("fasteners", "Fasteners with waste", Amount.number((double) Whole.up(gross), 0, ""))
                .by(
                        "(N k + J p) (1 + w)",
                        term("N", "sheets", Amount.count(sheets, "")),
                        term("k", "in one", Amount.count(inSheet, "")),
                        term("J", "joints", Amount.count(joints, "")),
                        term("p", "in a joint", Amount.count(perJoint, "")),
                        term("w", "waste", Amount.percent(wastePercent / 100.0))));
        sheet.add(Line.material("boxes", "Boxes", Amount.packs(gross / perBox, "boxes"))
                .by("rounded up", term("b", "in a box", Amount.count(perBox, ""))));
        sheet.add(Finding.note(
                "Walls and roofs that hold wind or earthquake loads are fastened as drawn, with the fastener drawn."));
        return sheet.done();
    }

    private long between() {
        return Math.max(0, Whole.up(sheetLength.amount() / supportSpacing.amount()) - 1);
    }

    private static long gaps(double length, Length spacing) {
        return Math.max(1, Whole.up(length / spacing.amount()));
    }

    /** Along the two end supports, along those between, and along the long edges from support to support. */
    private long inSheet() {
        long ends = 2 * (gaps(sheetWidth.amount(), edgeSpacing) + 1);
        long field = between() * (gaps(sheetWidth.amount(), fieldSpacing) + 1);
        long span = gaps(sheetLength.amount() / (between() + 1), edgeSpacing) - 1;
        return ends + field + 2 * (between() + 1) * span;
    }
}
