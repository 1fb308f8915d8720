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
import org.firmset.trade.trace.Whole;
import org.firmset.trade.trace.Worksheet;
import org.jspecify.annotations.Nullable;

@Described("Grout that fills the cells of a block wall.")
public record WallFill(
        @Described("The wall.") WallSize wall,

        @Described(value = "Which cells are filled.", usual = "all")
        Cells cells,

        @Described(value = "Distance between cells with a bar.", least = "0.2 m", most = "3 m", usual = "32 in")
        Length barSpacing,

        @Described(
                value = "Cells with a bar; 0 to count them by their distance.",
                least = "0",
                most = "1000",
                usual = "0")
        int barredCells,

        @Described(value = "Size of the bars.", usual = "no-4")
        BarSize bar,

        @Described(value = "Bars in such a cell; 0 for none.", least = "0", most = "4", usual = "1")
        int barsPerCell,

        @Described(
                value = "Conduits that run the whole height of a filled cell.",
                least = "0",
                most = "50",
                usual = "0")
        int conduits,

        @Described(value = "Outside diameter of a conduit.", least = "0 mm", most = "80 mm", usual = "1 in")
        Length conduitDiameter,

        @Described(
                value = "Volume of all cores of one block over one course, from its data sheet; left out for the least"
                        + " shell and web of the standard.",
                least = "1 L",
                most = "40 L")
        @Nullable
        Volume coreVolume,

        @Described(
                value = "Measured thickness of a face shell; left out for the least of the standard.",
                least = "10 mm",
                most = "100 mm")
        @Nullable
        Length shell,

        @Described(
                value = "Measured thickness of a web; left out for the least of the standard.",
                least = "10 mm",
                most = "100 mm")
        @Nullable
        Length web,

        @Described(value = "Seconds the vibrator stays in a cell each time.", least = "1", most = "60", usual = "4")
        int vibratorSeconds,

        @Described("The bags.") BagMix mix) {

    /** Which cells of a wall are filled. */
    public enum Cells {
        ALL,
        WITH_BARS
    }

    /** Greatest height of a lift of grout; more under conditions. TMS 602 Art. 3.5 D. */
    public static final double LIFT = (5 * 12 + 4) * 0.0254;
    /** Greatest height of a lift when the wall has cured 4 h, the slump is 10 to 11 in and no bond beam is between. */
    public static final double HIGH_LIFT = (12 * 12 + 8) * 0.0254;
    /** Least width of an opening at the foot of a cell. TMS 602 Art. 3.2 F. */
    public static final double CLEANOUT = 3 * 0.0254;
    /** Greatest distance of cleanouts of a wall that is grouted solid. */
    public static final double CLEANOUT_SPACING = 32 * 0.0254;
    /** Grout is placed within this time of the water. */
    public static final double PLACE_WITHIN_HOURS = 1.5;
    /** Least strength of grout after 28 days in pascals. ASTM C476. */
    public static final double LEAST_STRENGTH = 2000 * 6894.757293168361;

    private static final double TAPER = 0.85;
    private static final int TIMES_VIBRATED = 2;

    public Worksheet work() {
        Sheet sheet = new Sheet();
        long courses = wall.courses(sheet);
        double inCourse = wall.blocksInCourse(sheet);
        long barred = barred(sheet, inCourse);
        double filled = filledCells(sheet, inCourse, barred);
        double core = core(sheet);
        double taken = taken(sheet, barred, courses);
        double net = filled * courses * core / BlockWork.CELLS_IN_BLOCK - taken;
        if (!(net > 0)) {
            throw new Refusal(
                    "conduits",
                    conduits,
                    "and bars leave no room in the cells",
                    "Enter fewer or thinner conduits and bars");
        }
        sheet.add(
                Line.answer("grout", "Grout in the cells", Amount.volume(net))
                        .by(
                                "V = N n v / 2 - b",
                                term("N", "filled cells seen from above", Amount.number(filled, 1, "")),
                                term("n", "courses", Amount.count(courses, "")),
                                term("v", "cores of one block over a course", Amount.volume(core)),
                                term("b", "bars and conduits", Amount.volume(taken)))
                        .heed(
                                "Published tables of grout differ by a fifth: take the core volume from the block's data sheet."));
        mix.addBags(sheet, net);
        lifts(sheet, filled);
        if (coreVolume == null) {
            range(sheet, filled * courses / BlockWork.CELLS_IN_BLOCK, taken);
        }
        return sheet.done();
    }

    private long barred(Sheet sheet, double inCourse) {
        if (barsPerCell == 0 && barredCells > 0) {
            throw new Refusal("barredCells", barredCells, "have no bar in them", "Enter 0, or 1 bar or more in a cell");
        }
        if (barsPerCell == 0) {
            return 0;
        }
        long there = Math.max(1, Whole.down(inCourse * BlockWork.CELLS_IN_BLOCK));
        if (barredCells > there) {
            throw new Refusal(
                    "barredCells",
                    barredCells,
                    "are more cells with a bar than the wall has",
                    "Enter at most " + there);
        }
        long barred = barredCells > 0 ? barredCells : Math.min(there, counted(inCourse));
        sheet.add(Line.step("barred-cells", "Cells with a bar", Amount.count(barred, "cells"))
                .by(
                        barredCells > 0
                                ? "as entered"
                                : wall.isRectangle()
                                        ? "k = c l / s, rounded up"
                                        : "k = (c l - l / 2) / s, rounded up, + 1",
                        term("c", "blocks in a course", Amount.number(inCourse, 2, "")),
                        term("l", "block with its joint", Amount.length(block().nominalLength())),
                        term("s", "distance of the bars, at most", Amount.length(barSpacing)))
                .heed("Corners, ends and both sides of openings usually need a bar; the drawing decides."));
        return barred;
    }

    /** Bars no further apart than asked: round a rectangle, or from the first cell of a straight wall to its last. */
    private long counted(double inCourse) {
        double cell = block().nominalLength() / BlockWork.CELLS_IN_BLOCK;
        double run = inCourse * block().nominalLength();
        if (barSpacing.amount() < cell - 1e-9) {
            throw new Refusal("barSpacing", barSpacing, "is less than a cell", Enter.atLeast(cell));
        }
        return wall.isRectangle()
                ? Whole.up(run / barSpacing.amount())
                : Whole.up(Math.max(0, run - cell) / barSpacing.amount()) + 1;
    }

    private double filledCells(Sheet sheet, double inCourse, long barred) {
        double filled = cells == Cells.ALL ? inCourse * BlockWork.CELLS_IN_BLOCK : barred;
        if (filled == 0) {
            throw new Refusal(
                    "barsPerCell", barsPerCell, "leaves no cell to fill", "Enter from 1 to 4, or fill all cells");
        }
        sheet.add(Line.step("filled-cells", "Cells filled, seen from above", Amount.number(filled, 1, "cells"))
                .by(
                        cells == Cells.ALL ? "N = 2 c" : "N = k",
                        term("c", "blocks in a course", Amount.number(inCourse, 2, "")),
                        term("k", "cells with a bar", Amount.count(barred, ""))));
        return filled;
    }

    private double core(Sheet sheet) {
        if (coreVolume != null) {
            double gross = block().width() * block().length() * block().course();
            if (coreVolume.amount() >= gross) {
                throw new Refusal(
                        "coreVolume",
                        coreVolume,
                        "is more than the whole block of " + block().words(),
                        Enter.underVolume(gross) + ", the cores alone");
            }
            sheet.add(Line.step("core", "Cores of one block over a course", Amount.volume(coreVolume.amount()))
                    .by("as entered")
                    .from(Source.practice("data sheet of the block")));
            return coreVolume.amount();
        }
        double thick = shellThickness();
        double middle = webThickness();
        // webs of at most 100 mm always leave a core
        if (2 * thick >= block().width()) {
            throw new Refusal(
                    "shell",
                    Length.ofMetres(thick),
                    "leaves no core in a block of " + block().words(),
                    Enter.under(block().width() / 2) + " for one shell");
        }
        double core = BlockWork.coreVolume(block(), thick, middle);
        sheet.add(Line.step("core", "Cores of one block over a course", Amount.volume(core))
                .by(
                        "v = (a - 2 s) (l - 3 w) h",
                        term("a", "width of the block", Amount.thin(block().width())),
                        term("s", "face shell", Amount.thin(thick)),
                        term("l", "length of the block", Amount.thin(block().length())),
                        term("w", "web", Amount.thin(middle)),
                        term("h", "course", Amount.thin(block().course())))
                .from(block().source())
                .heed("Blocks taper: real ones hold 10 to 15 % less."));
        return core;
    }

    private double taken(Sheet sheet, long barred, long courses) {
        double rise = courses * block().course();
        double widest = Math.min(
                block().width() - 2 * shellThickness(),
                (block().length() - BlockWork.WEBS * webThickness()) / BlockWork.CELLS_IN_BLOCK);
        if (barsPerCell * bar.diameter() >= widest) {
            throw new Refusal(
                    "bar",
                    bar.words(),
                    "is too thick: %d of them do not go into a cell %s wide".formatted(barsPerCell, shown(widest)),
                    "Enter fewer or thinner bars, or measure shell and web again");
        }
        if (conduits > 0 && conduitDiameter.amount() >= widest) {
            throw new Refusal("conduitDiameter", conduitDiameter, "is thicker than the cell", Enter.under(widest));
        }
        if (barsPerCell * bar.diameter() > widest / 2 + 1e-9) {
            sheet.add(Finding.warning(
                    "The bars take more than half the width of a cell, the most of TMS 402 (from memory): grout"
                            + " may not run round them."));
        }
        double steel = barred * barsPerCell * bar.section() * rise;
        double conduit = Math.PI / 4 * conduitDiameter.amount() * conduitDiameter.amount();
        double pipes = conduits * conduit * rise;
        sheet.add(Line.step("taken", "Bars and conduits in the cells", Amount.volume(steel + pipes))
                .by(
                        "b = (k m A + p C) n h",
                        term("k", "cells with a bar", Amount.count(barred, "")),
                        term("m", "bars in each", Amount.count(barsPerCell, "")),
                        term("A", "section of " + bar.words(), Amount.section(bar.section())),
                        term("p", "conduits", Amount.count(conduits, "")),
                        term("C", "section of a conduit", Amount.section(conduit)),
                        term("n h", "filled height", Amount.length(rise)))
                .from(Sources.BAR_TABLE));
        return steel + pipes;
    }

    private void lifts(Sheet sheet, double filled) {
        long lifts = Math.max(1, Whole.up(wall.height().amount() / LIFT));
        sheet.add(Line.step("lifts", "Lifts", Amount.count(lifts, "lifts"))
                .by("k = H / 5 ft 4 in, rounded up", term("H", "height of the pour", Amount.length(wall.height())))
                .from(Sources.GROUT_RULES)
                .heed("Place within an hour and a half of the water; brace against wind while the wall is green."));
        double minutes = filled * lifts * TIMES_VIBRATED * vibratorSeconds / 60.0;
        sheet.add(Line.step("vibrating", "Vibrating", Amount.minutes(minutes))
                .by(
                        "t = N k 2 s",
                        term("N", "cells filled", Amount.number(filled, 1, "")),
                        term("k", "lifts", Amount.count(lifts, "")),
                        term("s", "seconds each time", Amount.number(vibratorSeconds, 0, "s")))
                .from(Source.practice("once while pouring, again when the water has sunk in, 3 to 10 min later")));
        sheet.add(Finding.note(
                "Grout for cells flows: a slump of 8 to 11 in and 2,000 psi (13.8 MPa) or more after 28 days (ASTM"
                        + " C476). Common concrete from bags is too stiff and too coarse for it."));
        if (wall.height().amount() > LIFT + 1e-9) {
            sheet.add(Finding.warning(
                    "The pour is higher than 5 ft 4 in (1.63 m): leave cleanouts of 3 in at the foot, at most"
                            + " 32 in apart when all cells are filled, or lay and fill in steps no higher than that. One lift up to"
                            + " 12 ft 8 in (3.86 m) only when the wall has cured 4 h, the slump is 10 to 11 in and no bond beam lies"
                            + " between."));
        }
        if (wall.height().amount() > HIGH_LIFT + 1e-9) {
            sheet.add(Finding.engineer(
                    "The pour is higher than 12 ft 8 in (3.86 m), the most TMS 602 allows in one lift."));
        }
    }

    private void range(Sheet sheet, double blockCourses, double taken) {
        double cores = BlockWork.coreVolume(block(), shellThickness(), webThickness());
        double most = cores + BlockWork.endSpace(block(), shellThickness());
        double least = cores * TAPER;
        double lowest = Math.max(0, blockCourses * least - taken)
                * (1 + mix.wastePercent() / 100.0)
                / mix.bagYield().amount();
        double highest = (blockCourses * most - taken)
                * (1 + mix.wastePercent() / 100.0)
                / mix.bagYield().amount();
        sheet.add(Finding.note(
                ("Range to expect: %d bags where the cores taper by 15 %%, %d where grout also fills the space"
                                + " between the block ends.")
                        .formatted(Whole.up(lowest), Whole.up(highest))));
    }

    private Block block() {
        return wall.block();
    }

    private double shellThickness() {
        return shell == null ? block().shell() : shell.amount();
    }

    private double webThickness() {
        return web == null ? block().web() : web.amount();
    }

    private static Length shown(double metres) {
        return Length.ofMetres(Math.round(metres * 1000) / 1000.0);
    }
}
