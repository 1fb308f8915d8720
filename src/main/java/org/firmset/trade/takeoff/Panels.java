package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import org.firmset.measure.Area;
import org.firmset.measure.Density;
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

@Described("Sheets or panels for an area: count, mass and volume.")
public record Panels(
        @Described(value = "Area to cover.", least = "0.1 m2", most = "5000 m2")
        Area area,

        @Described(
                value = "Large openings to take off; small ones count as waste.",
                least = "0 m2",
                most = "2000 m2",
                usual = "0 m2")
        Area openings,

        @Described(value = "Length of a sheet.", least = "0.3 m", most = "12 m", usual = "8 ft")
        Length length,

        @Described(value = "Width that a sheet covers, laps taken off.", least = "0.1 m", most = "3 m", usual = "4 ft")
        Length cover,

        @Described(value = "Thickness.", least = "0.3 mm", most = "200 mm", usual = "5/8 in")
        Length thickness,

        @Described(value = "Waste in percent.", least = "0", most = "50", usual = "8")
        int wastePercent,

        @Described(value = "Density.", least = "10 kg/m3", most = "8000 kg/m3", usual = "36 lb/ft3")
        Density density) {

    public Worksheet work() {
        double net = area.amount() - openings.amount();
        if (!(net > 0)) {
            throw new Refusal("openings", openings, "are no smaller than the area", Enter.underArea(area.amount()));
        }
        double one = length.amount() * cover.amount();
        double sheets = net / one * (1 + wastePercent / 100.0);
        double mass = Whole.up(sheets) * one * thickness.amount() * density.amount();
        return new Sheet()
                .add(Line.step("net", "Area without openings", Amount.area(net))
                        .by(
                                "A = a - o",
                                term("a", "area", Amount.area(area.amount())),
                                term("o", "openings", Amount.area(openings.amount()))))
                .add(Line.material("sheets", "Sheets", Amount.packs(sheets, "sheets"))
                        .by(
                                "N = A / (l b) (1 + w), rounded up",
                                term("A", "area", Amount.area(net)),
                                term("l", "length", Amount.length(length)),
                                term("b", "width covered", Amount.length(cover)),
                                term("w", "waste", Amount.percent(wastePercent / 100.0)))
                        .from(Source.practice("8 to 10 % for sheets")))
                .add(Line.answer("mass", "Mass", Amount.mass(mass))
                        .by(
                                "M = N l b t g",
                                term("N", "sheets", Amount.count(Whole.up(sheets), "")),
                                term("t", "thickness", Amount.thin(thickness.amount())),
                                term("g", "density", Amount.density(density.amount())))
                        .heed("Sheets sail in wind: two people, or wait."))
                .add(Finding.note("Sheets are counted by area: draw them once where their seams must meet supports."))
                .done();
    }
}
