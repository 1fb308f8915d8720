package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import java.math.BigDecimal;
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
import org.jspecify.annotations.Nullable;

@Described("Fill under a slab or inside walls, laid in layers and compacted.")
public record BaseFill(
        @Described("Shape from above: '12 ft x 10 ft', 'round 8 ft', 'ring 8 ft, 6 ft' or corners.")
        PlanShape plan,

        @Described(value = "Depth when compacted.", least = "25 mm", most = "4 m")
        Length depth,

        @Described(value = "What it is filled with.", usual = "crushed-rock")
        FillMaterial fill,

        @Described(
                value = "Compacted volume for a loose one; left out for the usual of the fill.",
                least = "0.4",
                most = "1")
        @Nullable
        BigDecimal compactedShare,

        @Described(
                value = "Short tons in a compacted cubic yard; left out for the usual of the fill.",
                least = "0.8",
                most = "2.5")
        @Nullable
        BigDecimal tonsPerCubicYard,

        @Described(value = "Clean rubble mixed in, its solid volume.", least = "0 m3", most = "50 m3", usual = "0 m3")
        Volume rubble,

        @Described(value = "Waste in percent: spilt, pressed into the ground.", least = "0", most = "50", usual = "0")
        int wastePercent,

        @Described(
                value = "Height of a layer before compacting; the compactor's maker says how much.",
                least = "50 mm",
                most = "300 mm",
                usual = "8 in")
        Length looseLift,

        @Described(value = "Passes over each layer.", least = "1", most = "12", usual = "4")
        int passes,

        @Described(value = "Width of the compactor's plate.", least = "0.2 m", most = "1 m", usual = "20 in")
        Length plate,

        @Described(value = "How far the compactor walks in a minute.", least = "3 m", most = "40 m", usual = "50 ft")
        Length pacePerMinute,

        @Described(
                value = "Fill moved and spread in an hour of labour.",
                least = "0.1 m3",
                most = "20 m3",
                usual = "0.75 yd3")
        Volume volumePerHour) {

    private static final double CUBIC_YARD = 0.9144 * 0.9144 * 0.9144;
    private static final double SHORT_TON = 2000 * 0.45359237;
    /** Greatest loose height of a layer under a structure in metres; geotechnical report wording, at 95 % of ASTM D1557. */
    public static final double STRUCTURAL_LIFT = 8 * 0.0254;

    private static final double DEEP = 4 * 0.3048;
    private static final double MOST_RUBBLE = 0.3;

    public Worksheet work() {
        Sheet sheet = new Sheet();
        double compacted = plan.area() * depth.amount();
        sheet.add(Line.answer("compacted", "Volume when compacted", Amount.bulk(compacted))
                .by("V = A d", term("A", "area", Amount.area(plan.area())), term("d", "depth", Amount.length(depth))));
        double bought = compacted - rubble.amount();
        if (!(bought > 0)) {
            throw new Refusal(
                    "rubble",
                    rubble,
                    "is more than the whole fill",
                    Enter.underVolume(compacted) + ", its solid volume");
        }
        double share = compactedShare == null ? fill.compactedShare() : compactedShare.doubleValue();
        double loose = bought / share * (1 + wastePercent / 100.0);
        sheet.add(Line.material("loose", "To order, loose", Amount.bulk(loose))
                .by(
                        "L = (V - r) / c (1 + w)",
                        term("V", "compacted", Amount.bulk(compacted)),
                        term("r", "rubble", Amount.bulk(rubble.amount())),
                        term("c", "compacted for loose", Amount.ratio(share)),
                        term("w", "waste", Amount.percent(wastePercent / 100.0)))
                .from(compactedShare == null ? Sources.EARTH : Source.practice("as entered")));
        addMass(sheet, bought);
        addLifts(sheet, share);
        addLabour(sheet, loose);
        addRubble(sheet, compacted);
        addGround(sheet);
        return sheet.done();
    }

    private void addMass(Sheet sheet, double bought) {
        double density = tonsPerCubicYard == null
                ? fill.compactedDensity()
                : tonsPerCubicYard.doubleValue() * SHORT_TON / CUBIC_YARD;
        double mass = bought * density * (1 + wastePercent / 100.0);
        sheet.add(Line.answer("mass", "Mass to order", Amount.tonnes(mass))
                .by(
                        "M = (V - r) g (1 + w)",
                        term("V - r", "compacted, without rubble", Amount.bulk(bought)),
                        term("g", "density when compacted", Amount.density(density)),
                        term("w", "waste", Amount.percent(wastePercent / 100.0)))
                .from(Source.practice(
                        "1.5 short tons in a cubic yard of base rock, 10 % either way; wet it weighs more"))
                .heed("A yard of rock overloads most pickups: have it brought, or go in parts."));
    }

    private void addLifts(Sheet sheet, double share) {
        long lifts = Earthwork.lifts(depth.amount(), looseLift.amount(), share);
        sheet.add(Line.answer("lifts", "Layers", Amount.count(lifts, "layers"))
                .by(
                        "n = d / (l c), rounded up",
                        term("d", "depth", Amount.length(depth)),
                        term("l", "loose layer", Amount.length(looseLift)),
                        term("c", "compacted for loose", Amount.ratio(share)))
                .from(Sources.LIFTS)
                .heed("String line at finished height before the last layer."));
        if (looseLift.amount() > STRUCTURAL_LIFT + 1e-9) {
            sheet.add(Finding.warning(
                    "Layers under a structure are at most 8 in (203 mm) loose, 4 in (102 mm) in narrow places:"
                            + " a plate does not reach deeper."));
        }
        double minutes = lifts * passes * plan.area() / (plate.amount() * pacePerMinute.amount());
        sheet.add(
                Line.step("compacting", "Compactor running", Amount.minutes(minutes))
                        .by(
                                "t = n p A / (b v)",
                                term("n", "layers", Amount.count(lifts, "")),
                                term("p", "passes", Amount.count(passes, "")),
                                term("A", "area", Amount.area(plan.area())),
                                term("b", "plate", Amount.length(plate)),
                                term("v", "way in a minute", Amount.length(pacePerMinute)))
                        .from(Source.PRACTICE)
                        .heed(
                                "Up and down a slope, never across; off pit edges; no engine in a closed space. Keep off fresh walls."));
    }

    private void addLabour(Sheet sheet, double loose) {
        long lifts = Earthwork.lifts(
                depth.amount(),
                looseLift.amount(),
                compactedShare == null ? fill.compactedShare() : compactedShare.doubleValue());
        double compacting = lifts * passes * plan.area() / (plate.amount() * pacePerMinute.amount()) / 60;
        sheet.add(Line.labour(loose / volumePerHour.amount() + compacting)
                .by(
                        "T = L / r + t",
                        term("L", "loose", Amount.bulk(loose)),
                        term("r", "moved in an hour", Amount.bulk(volumePerHour.amount())),
                        term("t", "compacting", Amount.hours(compacting)))
                .from(Source.practice("0.75 cubic yards an hour by barrow and shovel")));
    }

    private void addGround(Sheet sheet) {
        if (fill == FillMaterial.CLAY) {
            sheet.add(Finding.warning(
                    "Clay under a floor swells when wet, heaves in frost and is hard to compact: crushed rock"
                            + " carries better."));
        }
        if (depth.amount() > DEEP + 1e-9) {
            sheet.add(
                    Finding.engineer("Fill deeper than 4 ft (1.2 m) settles, and pushes hard on the walls around it."));
        }
    }

    private void addRubble(Sheet sheet, double compacted) {
        if (rubble.amount() > MOST_RUBBLE * compacted + 1e-9) {
            sheet.add(Finding.engineer("More than 30 % of this fill is rubble: it leaves hollows that settle later."));
        } else if (rubble.amount() > 0) {
            sheet.add(Finding.note(
                    "Rubble no larger than half a layer, spread so that fines fill every gap; none within the last"
                            + " layer under a slab, no wood, no plaster."));
        }
        sheet.add(Finding.note(
                "Compacted loose volume spreads by ten points: order for the usual, keep a way to get a little"
                        + " more."));
    }
}
