package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Worksheet;

@Described("Bars that are all bent alike: cut length, mass and hours at the bench.")
public record BentBar(
        @Described("Size of the bar.") BarSize bar,

        @Described(value = "Whether it is a tie or stirrup.", usual = "false")
        boolean tie,

        @Described("Legs from end to end, measured outside, 90 degrees between them: '106 in, 8 in'.")
        Pieces legs,

        @Described(
                value = "Ends with a standard 180 degree hook; their legs are measured to the outside of the hook.",
                least = "0",
                most = "2",
                usual = "0")
        int hooks180,

        @Described(value = "How many bars.", least = "1", most = "2000", usual = "1")
        int count,

        @Described(value = "Cuts and bends in an hour of labour.", least = "1", most = "120", usual = "12")
        BigDecimal bendsPerHour,

        @Described(value = "Hours to set up the bench.", least = "0", most = "40", usual = "1")
        BigDecimal setUpHours) {

    private static final double LONGEST_BAR = 18;
    /** What tables round off. */
    private static final double STANDARD_NEARLY = 0.002;

    public Worksheet work() {
        if (legs.all().isEmpty()) {
            throw new Refusal("legs", legs, "has no leg", "Enter at least one, such as '106 in, 8 in'");
        }
        refuse();
        Sheet sheet = new Sheet();
        int bends = legs.count() - 1;
        double length = cutLength(sheet, bends);
        sheet.add(Line.answer("mass", "Mass of all", Amount.mass(length * count * bar.kilogramsPerMetre()))
                .by(
                        "M = n c g",
                        term("n", "bars", Amount.count(count, "")),
                        term("c", "cut length", Amount.length(length)),
                        term("g", "mass of its length", Amount.massPerLength(bar.kilogramsPerMetre())))
                .from(Sources.BAR_TABLE));
        long strokes = (long) count * (1 + bends + hooks180);
        sheet.add(Line.labour(strokes / bendsPerHour.doubleValue() + setUpHours.doubleValue())
                .by(
                        "T = n (1 + b) / r + s",
                        term("n", "bars", Amount.count(count, "")),
                        term("b", "bends and hooks of each", Amount.count((long) bends + hooks180, "")),
                        term("r", "cuts and bends an hour", Amount.number(bendsPerHour.doubleValue(), 1, "")),
                        term("s", "bench", Amount.hours(setUpHours.doubleValue())))
                .from(Source.PRACTICE)
                .heed("Guard every bar end someone could fall on with caps made to stop it."));
        addShortEnds(sheet, bends);
        sheet.add(Finding.note("For the bars to buy enter '%d x %s' in the cut list."
                .formatted(count, Length.ofMetres(Math.round(length * 1e4) / 1e4))));
        return sheet.done();
    }

    /** A leg has at least half a bend at every turn; a bar is no longer than what can be carried. */
    private void refuse() {
        double half = Bars.leastBend(bar, tie) / 2 + bar.diameter();
        List<Length> each = eachLeg();
        for (int i = 0; i < each.size(); i++) {
            int turns = (i > 0 ? 1 : 0) + (i < each.size() - 1 ? 1 : 0);
            if (each.get(i).amount() < turns * half - 1e-9) {
                throw new Refusal(
                        "legs",
                        each.get(i),
                        "is shorter than the bend itself",
                        Enter.atLeast(turns * half) + " for this leg");
            }
        }
        if (legs.total() > LONGEST_BAR) {
            throw new Refusal(
                    "legs",
                    legs,
                    "are together longer than any bar",
                    Enter.atMost(LONGEST_BAR) + " for all legs of one bar, and lap the rest");
        }
    }

    private List<Length> eachLeg() {
        return legs.all().stream()
                .flatMap(leg -> Collections.nCopies(leg.count(), leg.length()).stream())
                .toList();
    }

    private void addShortEnds(Sheet sheet, int bends) {
        List<Length> each = eachLeg();
        double standard = Bars.hookLeg90(bar, tie);
        double shorter = Math.min(each.getFirst().amount(), each.getLast().amount());
        if (bends > 0 && hooks180 == 0 && shorter < standard - STANDARD_NEARLY) {
            sheet.add(Finding.note("The shorter end leg is under the %s of a standard 90 degree hook, measured outside."
                    .formatted(Length.ofMetres(Math.round(standard * 1000) / 1000.0))));
        }
    }

    private double cutLength(Sheet sheet, int bends) {
        double deduction = Bars.bendDeduction90(bar, tie);
        double adds = Bars.hookAdds180(bar, tie);
        double length = legs.total() - bends * deduction + hooks180 * adds;
        sheet.add(Line.answer("cut-length", "Cut each at", Amount.length(length))
                .by(
                        "c = sum - n b + k a",
                        term("sum", "legs", Amount.length(legs.total())),
                        term("n", "bends", Amount.count(bends, "")),
                        term("b", "taken off for a bend", Amount.thin(deduction)),
                        term("k", "hooks of 180 degrees", Amount.count(hooks180, "")),
                        term("a", "added for a hook", Amount.thin(adds)))
                .from(Sources.ARC)
                .heed("Bend one and measure it before cutting the rest: benches differ."));
        return length;
    }
}
