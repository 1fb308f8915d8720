package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Worksheet;

@Described("Pads or piers that are all alike: blocks of any outline, one height.")
public record Pads(
        @Described("One of them seen from above, such as 'round 12 in' for a pier.")
        PlanShape plan,

        @Described(value = "Height of one.", least = "50 mm", most = "5 m")
        Length height,

        @Described(value = "How many.", least = "1", most = "200", usual = "1")
        int count,

        @Described("What lies in all of them together.") Embedded embedded,
        @Described("The bags.") BagMix mix) {

    public Worksheet work() {
        Sheet sheet = new Sheet();
        double one = plan.area() * height.amount();
        sheet.add(Line.step("one", "Volume of one", Amount.volume(one))
                .by(
                        "g = A h",
                        term("A", "area", Amount.area(plan.area())),
                        term("h", "height", Amount.length(height))));
        sheet.add(Line.step("between-forms", "Volume of all", Amount.volume(one * count))
                .by("G = n g", term("n", "how many", Amount.count(count, "")), term("g", "one", Amount.volume(one)))
                .heed("Never leave one half full: each is filled without a break."));
        mix.addBags(sheet, embedded.addNet(sheet, one * count));
        return sheet.done();
    }
}
