package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import java.math.BigDecimal;
import org.firmset.measure.Described;
import org.firmset.measure.Pressure;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Worksheet;

@Described("One size of bar: mass, bends, hooks and laps.")
public record BarRules(
        @Described("Size of the bar.") BarSize bar,

        @Described(value = "Whether it is a tie or stirrup.", usual = "false")
        boolean tie,

        @Described(value = "The rule for its laps.", usual = "concrete")
        LapRule lapRule,

        @Described(value = "Strength of the concrete.", least = "2000 psi", most = "12000 psi", usual = "3000 psi")
        Pressure concreteStrength,

        @Described(
                value = "Yield strength of the steel.",
                least = "30000 psi",
                most = "100000 psi",
                usual = "60000 psi")
        Pressure steelYield,

        @Described(
                value = "Whether cover is a diameter or more and clear spacing two, or ties go round.",
                usual = "true")
        boolean favourable,

        @Described(
                value = "Stress in the steel, for laps in masonry.",
                least = "4000 psi",
                most = "60000 psi",
                usual = "24000 psi")
        Pressure steelStress,

        @Described(value = "Whether that stress is over 80 % of the allowable.", usual = "false")
        boolean highStress,

        @Described(value = "Diameters, for laps by so many diameters.", least = "20", most = "100", usual = "40")
        BigDecimal lapDiameters) {

    /** Which rule gives the lap. */
    public enum LapRule {
        CONCRETE,
        MASONRY,
        DIAMETERS
    }

    private static final double USUAL_YIELD = 60_000 * 6894.757293168361;
    private static final double LEAST_LAP = 12 * 0.0254;
    private static final double LEAST_TIE_END = 3 * 0.0254;

    public Worksheet work() {
        Sheet sheet = new Sheet();
        double d = bar.diameter();
        sheet.add(Line.answer("mass", "Mass of its length", Amount.massPerLength(bar.kilogramsPerMetre()))
                .by("m = pi / 4 d^2 490 lb/ft3", term("d", "diameter", Amount.thin(d)))
                .from(Sources.BAR_TABLE));
        sheet.add(Line.step("section", "Section", Amount.section(bar.section()))
                .by("A = pi / 4 d^2", term("d", "diameter", Amount.thin(d)))
                .from(Sources.BAR_TABLE));
        addBends(sheet);
        addLap(sheet);
        addFindings(sheet);
        return sheet.done();
    }

    private void addFindings(Sheet sheet) {
        if (lapRule == LapRule.CONCRETE && steelYield.amount() > USUAL_YIELD * 1.001) {
            sheet.add(
                    Finding.warning("Steel over 60,000 psi (414 MPa): ACI 318-19 lengthens its laps by 15 to 30 % (from"
                            + " memory); that is not counted here."));
        }
        if (lap() < LEAST_LAP - 1e-9) {
            sheet.add(
                    Finding.warning("The lap is under 12 in (305 mm), the least that ACI 318 and IBC 2107.2.1 allow."));
        }
        if (tie && Bars.hookEnd90(bar, true) < LEAST_TIE_END - 1e-9) {
            sheet.add(Finding.note(
                    "ACI 318-19 Table 25.3.2 (from memory) wants the straight end of a tie's hook to be 3 in"
                            + " (76 mm) at least; the leg above has less."));
        }
        sheet.add(Finding.note("The drawing and local code decide; bends, hooks and laps here are for planning."));
    }

    private void addBends(Sheet sheet) {
        double bend = Bars.leastBend(bar, tie);
        sheet.add(Line.answer("bend", "Least inside diameter of a bend", Amount.thin(bend))
                .by(
                        "D = " + Math.round(bend / bar.diameter()) + " d",
                        term("d", "diameter", Amount.thin(bar.diameter())))
                .from(Sources.BEND_TABLE)
                .heed("Bend cold and slowly around a pin; a bent bar is never bent back."));
        sheet.add(Line.answer("hook-leg", "Leg of a 90 degree hook, out to end", Amount.thin(Bars.hookLeg90(bar, tie)))
                .by(
                        "l = e + D / 2 + d",
                        term("e", "straight end", Amount.thin(Bars.hookEnd90(bar, tie))),
                        term("D", "bend", Amount.thin(bend)),
                        term("d", "diameter", Amount.thin(bar.diameter())))
                .from(Sources.HOOK_TABLE));
        sheet.add(Line.step("hook-180", "Length that a 180 degree hook adds", Amount.thin(Bars.hookAdds180(bar, tie)))
                .by(
                        "a = e + pi (D + d) / 2 - (D / 2 + d)",
                        term("e", "straight end", Amount.thin(Bars.hookEnd180(bar))),
                        term("D", "bend", Amount.thin(bend)))
                .from(Sources.HOOK_TABLE));
        sheet.add(Line.step("deduction", "Taken off for a 90 degree bend", Amount.thin(Bars.bendDeduction90(bar, tie)))
                .by("b = 2 (D / 2 + d) - pi / 2 (D / 2 + d / 2)", term("D", "bend", Amount.thin(bend)))
                .from(Sources.ARC));
    }

    private void addLap(Sheet sheet) {
        Line line = Line.answer("lap", "Lap", Amount.thin(lap()));
        sheet.add(
                switch (lapRule) {
                    case CONCRETE ->
                        line.by(
                                        "1.3 ld, at least 12 in; ld = " + (favourable ? "" : "1.5 ") + "fy / ("
                                                + (bar.isOverNo6() ? 20 : 25) + " sqrt f'c) d",
                                        term("fy", "yield of the steel", Amount.strength(steelYield.amount())),
                                        term("f'c", "concrete", Amount.strength(concreteStrength.amount())),
                                        term("ld", "development length", Amount.thin(development())))
                                .from(Sources.CONCRETE_LAP);
                    case MASONRY ->
                        line.by(
                                        highStress
                                                ? "1.5 (0.002 d fs), at most 72 d, at least 40 d and 12 in"
                                                : "0.002 d fs, at least 40 d and 12 in",
                                        term("fs", "stress", Amount.strength(steelStress.amount())))
                                .from(Sources.MASONRY_LAP);
                    case DIAMETERS ->
                        line.by("n d", term("n", "diameters", Amount.number(lapDiameters.doubleValue(), 1, "")))
                                .from(Source.PRACTICE);
                });
    }

    private double development() {
        return Bars.developmentLength(bar, steelYield.amount(), concreteStrength.amount(), favourable);
    }

    private double lap() {
        return switch (lapRule) {
            case CONCRETE -> Bars.concreteLap(bar, steelYield.amount(), concreteStrength.amount(), favourable);
            case MASONRY -> Bars.masonryLap(bar, steelStress.amount(), highStress);
            case DIAMETERS -> lapDiameters.doubleValue() * bar.diameter();
        };
    }
}
