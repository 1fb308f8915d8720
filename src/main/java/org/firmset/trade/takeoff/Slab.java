package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.measure.Volume;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Worksheet;

@Described("A slab or cap, with a thickened edge where there is one.")
public record Slab(
        @Described("Shape from above: '12 ft x 10 ft', 'round 8 ft', 'ring 8 ft, 6 ft' or corners.")
        PlanShape plan,

        @Described(value = "Thickness.", least = "40 mm", most = "1 m")
        Length thickness,

        @Described(
                value = "How much deeper the edge goes; 0 for an even slab.",
                least = "0 m",
                most = "1.5 m",
                usual = "0 m")
        Length edgeDepth,

        @Described(value = "How wide the deeper edge is.", least = "0 m", most = "1.5 m", usual = "0 m")
        Length edgeWidth,

        @Described("What lies in it.") Embedded embedded,
        @Described("The bags.") BagMix mix,

        @Described(value = "Days it is kept wet.", least = "0", most = "28", usual = "7")
        int wetDays,

        @Described(value = "Water to keep a square metre wet for a day.", least = "0 L", most = "10 L", usual = "2 L")
        Volume wetWater) {

    private static final double LEAST_ON_GROUND = 3.5 * 0.0254;

    public Worksheet work() {
        refuse();
        Sheet sheet = new Sheet();
        double flat = plan.area() * thickness.amount();
        double edge = plan.edge() * edgeWidth.amount() * edgeDepth.amount();
        sheet.add(Line.step("area", "Area", Amount.area(plan.area())));
        sheet.add(Line.step("between-forms", "Volume between the forms", Amount.volume(flat + edge))
                .by(
                        "G = A t + P w e",
                        term("A", "area", Amount.area(plan.area())),
                        term("t", "thickness", Amount.length(thickness)),
                        term("P", "edge all round", Amount.length(plan.edge())),
                        term("w", "width of the deeper edge", Amount.length(edgeWidth)),
                        term("e", "how much deeper", Amount.length(edgeDepth)))
                .heed("Measure the thickness from a string line in several places: uneven ground takes more."));
        mix.addBags(sheet, embedded.addNet(sheet, flat + edge));
        addFormsAndCure(sheet);
        if (thickness.amount() < LEAST_ON_GROUND - 1e-9) {
            sheet.add(Finding.warning(
                    "Thinner than 3 1/2 in (89 mm), the least that is usual for a slab on the ground (IRC R506.1,"
                            + " from memory)."));
        }
        if (edge > 0) {
            sheet.add(Finding.note(
                    "The deeper edge is reckoned along the outside, so its corners count a little too much."));
        }
        return sheet.done();
    }

    private void refuse() {
        boolean deeper = edgeDepth.value().signum() > 0;
        boolean wide = edgeWidth.value().signum() > 0;
        if (deeper && !wide) {
            throw new Refusal(
                    "edgeWidth",
                    edgeWidth,
                    "is none although the edge goes deeper",
                    "Enter how wide the deeper edge is");
        }
        if (wide && !deeper) {
            throw new Refusal(
                    "edgeDepth",
                    edgeDepth,
                    "is none although a deeper edge has a width",
                    "Enter how much deeper the edge goes");
        }
        if (plan.edge() * edgeWidth.amount() > plan.area()) {
            throw new Refusal(
                    "edgeWidth",
                    edgeWidth,
                    "all round is more than the slab",
                    Enter.atMost(plan.area() / plan.edge()) + ", or a thicker slab");
        }
    }

    private void addFormsAndCure(Sheet sheet) {
        sheet.add(Line.step("form-edge", "Edge to form", Amount.length(plan.edge()))
                .by("all round, inner edges too"));
        double water = plan.area() * wetWater.amount() * wetDays;
        sheet.add(Line.material("wet-cure-water", "Water to keep it wet", Amount.liquid(water))
                .by(
                        "C = A q d",
                        term("A", "area", Amount.area(plan.area())),
                        term("q", "for a square metre and day", Amount.liquid(wetWater.amount())),
                        term("d", "days", Amount.count(wetDays, "")))
                .from(Source.PRACTICE)
                .heed("Wet cloth under sheet, edges weighed down, stays damp with much less while nobody is there."));
    }
}
