package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Worksheet;

@Described("A bond beam: a course of blocks with its webs cut down, filled around bars.")
public record BondBeam(
        @Described(value = "Length along the centre line.", least = "0.2 m", most = "200 m")
        Length length,

        @Described(value = "Nominal size of the block.", usual = "in-8")
        Block block,

        @Described(value = "Beams of this length, one above the other.", least = "1", most = "20", usual = "1")
        int beams,

        @Described(
                value = "Depth of the trough over the cut webs.",
                least = "50 mm",
                most = "200 mm",
                usual = "4 1/2 in")
        Length trough,

        @Described(
                value =
                        "Cells of this course that take grout below the trough, in percent; less where they are stopped off at"
                                + " the cut webs.",
                least = "0",
                most = "100",
                usual = "100")
        int filledBelowPercent,

        @Described(value = "Bars along it.", least = "0", most = "8", usual = "2")
        int bars,

        @Described(value = "Size of the bars.", usual = "no-4")
        BarSize bar,

        @Described("The bags.") BagMix mix) {

    public Worksheet work() {
        Sheet sheet = new Sheet();
        if (trough.amount() >= block.course()) {
            throw new Refusal(
                    "trough",
                    trough,
                    "is as deep as the course",
                    Enter.under(block.course()) + ", the depth that is cut out of the webs");
        }
        double clear = block.width() - 2 * block.shell();
        double channel = clear * trough.amount() * length.amount();
        double units = length.amount() / block.nominalLength();
        double cores = units
                * BlockWork.coreArea(block, block.shell(), block.web())
                * (block.course() - trough.amount())
                * filledBelowPercent
                / 100.0;
        double steel = bars * bar.section() * length.amount();
        double net = (channel + cores - steel) * beams;
        if (!(net > 0)) {
            throw new Refusal("bars", bars, "fill the whole trough", "Enter fewer or thinner bars");
        }
        sheet.add(Line.answer("volume", "Grout in the beam", Amount.volume(net))
                .by(
                        "V = n (c u L + m a (h - u) p - k A L)",
                        term("n", "beams", Amount.count(beams, "")),
                        term("c", "between the shells", Amount.thin(clear)),
                        term("u", "trough", Amount.thin(trough.amount())),
                        term("L", "length", Amount.length(length)),
                        term("m", "blocks", Amount.number(units, 2, "")),
                        term(
                                "a",
                                "cores of a block from above",
                                Amount.section(BlockWork.coreArea(block, block.shell(), block.web()))),
                        term("h", "course", Amount.thin(block.course())),
                        term("p", "cells that take grout below the trough", Amount.percent(filledBelowPercent / 100.0)),
                        term("k", "bars", Amount.count(bars, "")),
                        term("A", "section of " + bar.words(), Amount.section(bar.section())))
                .from(block.source())
                .heed("Lap and hook bars as drawn; leave them clear of the shells all round."));
        steel(sheet);
        mix.addBags(sheet, net);
        return sheet.done();
    }

    private void steel(Sheet sheet) {
        double run = bars * beams * length.amount();
        sheet.add(Line.step("bar-length", "Bars without laps", Amount.length(run))
                .by(
                        "S = n k L",
                        term("n", "beams", Amount.count(beams, "")),
                        term("k", "bars", Amount.count(bars, "")),
                        term("L", "length", Amount.length(length))));
        sheet.add(Line.step("bar-mass", "Mass of the bars without laps", Amount.mass(run * bar.kilogramsPerMetre()))
                .by(
                        "M = S g",
                        term("S", "bars without laps", Amount.length(run)),
                        term("g", "mass of its length", Amount.massPerLength(bar.kilogramsPerMetre())))
                .from(Sources.BAR_TABLE));
    }
}
