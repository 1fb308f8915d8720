package org.firmset.trade.checks;

import static org.firmset.trade.takeoff.Inputs.work;
import static org.firmset.trade.trace.Results.amount;
import static org.firmset.trade.trace.Results.packs;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.firmset.trade.takeoff.BagYield;
import org.firmset.trade.takeoff.BarMat;
import org.firmset.trade.takeoff.BarRun;
import org.firmset.trade.takeoff.BarSize;
import org.firmset.trade.takeoff.Bars;
import org.firmset.trade.takeoff.BaseFill;
import org.firmset.trade.takeoff.BentBar;
import org.firmset.trade.takeoff.Block;
import org.firmset.trade.takeoff.BlockWall;
import org.firmset.trade.takeoff.BlockWork;
import org.firmset.trade.takeoff.CutList;
import org.firmset.trade.takeoff.Dig;
import org.firmset.trade.takeoff.Earthwork;
import org.firmset.trade.takeoff.Earthwork.Ground;
import org.firmset.trade.takeoff.FillMaterial;
import org.firmset.trade.takeoff.Pads;
import org.firmset.trade.takeoff.Slab;
import org.firmset.trade.takeoff.WallFill;
import org.firmset.trade.takeoff.cutting.BinPacking;
import org.firmset.trade.takeoff.cutting.CutPlan;
import org.firmset.trade.takeoff.cutting.CuttingStock;
import org.firmset.trade.takeoff.cutting.Demand;
import org.firmset.trade.takeoff.cutting.Stock;
import org.firmset.trade.trace.Worksheet;

/** Published values of the estimating core: blocks, bags, grout, bars, cut lists, fill. */
final class TakeoffChecks {
    private static final double INCH = 0.0254;
    private static final double FOOT = 0.3048;
    private static final double SQUARE_INCH = INCH * INCH;
    private static final double SQUARE_FOOT = FOOT * FOOT;
    private static final double CUBIC_FOOT = FOOT * FOOT * FOOT;
    private static final double CUBIC_YARD = 27 * CUBIC_FOOT;
    private static final double POUND = 0.45359237;
    private static final double SHORT_TON = 2000 * POUND;
    private static final double PSI = 6894.757293168361;
    private static final double POUND_FORCE = POUND * 9.80665;

    private static final List<BarSize> SIZES =
            List.of(BarSize.NO_3, BarSize.NO_4, BarSize.NO_5, BarSize.NO_6, BarSize.NO_7, BarSize.NO_8);
    private static final String BOXES_SOURCE = "OR-Library binpack1, Beasley; Falkenauer 1996";
    private static final String MIA = "Masonry Institute of America grout table";

    private TakeoffChecks() {}

    static List<Row> rows() {
        return List.of(
                blocksForArea(),
                straightWall(),
                building(),
                solidArea(),
                core(),
                grout(),
                filledShare(),
                wallMass(),
                moreBeams(),
                bagYield(),
                slabBags(),
                piers(),
                dowelledCells(),
                groutRules(),
                barTable(),
                bends(),
                hookEnds(),
                hookLegs(),
                hooks180(),
                deduction(),
                concreteLaps(),
                masonryLaps(),
                lappedRun(),
                cutList(),
                mat(),
                swell(),
                excavation(),
                haulOff(),
                conversion(),
                pad(),
                compaction(),
                lifts(),
                boxes(),
                textbookRolls());
    }

    private static Row blocksForArea() {
        return Row.of(
                        "CM-01",
                        "blocks for an area of wall, 8 x 8 x 16 in",
                        "Masonry Magazine Sept 1969 p. 22",
                        "verified: 112.5 units for 100 ft2, waste not included")
                .value("blocks a ft2", 1.125, 1e-9, () -> BlockWork.blocksPerArea(Block.IN_8) * SQUARE_FOOT)
                .value("blocks for 100 ft2", 112.5, 1e-6, () -> BlockWork.blocksPerArea(Block.IN_8) * 100 * SQUARE_FOOT)
                .value("blocks a m2", 12.1, 0.05, () -> BlockWork.blocksPerArea(Block.IN_8))
                .value(
                        "blocks of a wall of 100 ft2, in whole courses",
                        112.5,
                        1e-6,
                        () -> amount(work(BlockWall.class, "length", "10 ft", "height", "10 ft"), "blocks-net"));
    }

    private static Row straightWall() {
        Worksheet wall = work(BlockWall.class, "length", "100 ft", "height", "10 ft");
        return Row.of(
                        "CM-02",
                        "blocks in a straight wall of 100 x 10 ft",
                        "US Navy Builder training manual, Table 4-3 page",
                        "verified")
                .value("blocks in a course", 75, 1e-9, () -> amount(wall, "blocks-in-course"))
                .value("courses", 15, 0, () -> amount(wall, "courses"))
                .value("blocks", 1125, 1e-6, () -> amount(wall, "blocks-net"));
    }

    private static Row building() {
        Worksheet wall = work(BlockWall.class, "length", "20 ft", "width", "8 ft", "height", "8 ft");
        return Row.of(
                        "CM-03",
                        "blocks in a building of 20 x 8 ft outside, 8 ft high, corners not taken off",
                        "US Navy Builder training manual, Table 4-3 page",
                        "verified")
                .value("blocks in a course by the rule", 42, 1e-9, TakeoffChecks::aroundByRule)
                .value("courses", 12, 0, () -> amount(wall, "courses"))
                .value("blocks by the rule", 504, 1e-6, () -> aroundByRule() * amount(wall, "courses"));
    }

    private static double aroundByRule() {
        return BlockWork.blocksAroundByRule(Block.IN_8, 20 * FOOT, 8 * FOOT);
    }

    private static Row solidArea() {
        return Row.of(
                        "CM-04",
                        "net area of a solid 8 in wall",
                        "NCMA TEK 14-1B, units per ASTM C90-06",
                        "verified: 7 5/8 in; area by arithmetic")
                .value("in2 a ft", 91.5, 0.1, () -> BlockWork.solidAreaPerMetre(Block.IN_8) * FOOT / SQUARE_INCH)
                .value("m2 a m", 0.1937, 0.00005, () -> BlockWork.solidAreaPerMetre(Block.IN_8));
    }

    private static double coreVolume(Block block) {
        return BlockWork.coreVolume(block, block.shell(), block.web());
    }

    private static Row core() {
        Worksheet wall = work(WallFill.class, "length", "10 ft", "height", "10 ft", "barsPerCell", "0");
        return Row.of(
                        "CM-05",
                        "cores of an 8 x 8 x 16 in block",
                        "ASTM C90-06 least dimensions as in NCMA TEK 14-1B",
                        "verified: dimensions; volume by arithmetic")
                .share(
                        "in2 from above",
                        64.70,
                        0.5,
                        () -> BlockWork.coreArea(Block.IN_8, Block.IN_8.shell(), Block.IN_8.web()) / SQUARE_INCH)
                .share("ft3 a block", 0.2996, 0.5, () -> coreVolume(Block.IN_8) / CUBIC_FOOT)
                .share("L a block", 8.48, 0.5, () -> coreVolume(Block.IN_8) * 1000)
                .share("yd3 for all cells of 100 ft2", 1.25, 0.5, () -> amount(wall, "grout", "yd3"))
                .share("m3 for all cells of 100 ft2", 0.95, 0.5, () -> amount(wall, "grout", "m3"))
                .share(
                        "yd3 with the space between the ends",
                        1.29,
                        0.5,
                        () -> (coreVolume(Block.IN_8) + BlockWork.endSpace(Block.IN_8, Block.IN_8.shell()))
                                * amount(wall, "filled-cells")
                                / 2
                                * amount(wall, "courses")
                                / CUBIC_YARD);
    }

    private static Row grout() {
        Row row = Row.of(
                "CM-06",
                "grout for 100 ft2, every cell filled, 3 % waste",
                "CMHA TEK 04-02A Table 3",
                "memory: quoted second-hand, table itself not seen");
        groutFor(row, "6 in", "in-6", 25.6);
        groutFor(row, "8 in", "in-8", 36.1);
        groutFor(row, "10 in", "in-10", 47.0);
        groutFor(row, "12 in", "in-12", 58.9);
        return row;
    }

    private static void groutFor(Row row, String width, String block, double cubicFeet) {
        Worksheet wall = work(
                WallFill.class,
                "length",
                "10 ft",
                "height",
                "10 ft",
                "block",
                block,
                "barsPerCell",
                "0",
                "wastePercent",
                "3");
        row.share("ft3, " + width, cubicFeet, 5, () -> amount(wall, "volume-with-waste", "ft3"));
    }

    private static Row filledShare() {
        Row row = Row.of(
                "CM-07", "share of an 8 in wall that is grouted, bond beams at 48 in", MIA, "memory: by fraction");
        shareAt(row, 8, 1);
        shareAt(row, 16, 0.583);
        shareAt(row, 24, 0.444);
        shareAt(row, 32, 0.375);
        shareAt(row, 40, 0.333);
        shareAt(row, 48, 0.306);
        return row;
    }

    private static void shareAt(Row row, int inches, double share) {
        row.value(
                "cells at " + inches + " in",
                share,
                0.001,
                () -> BlockWork.filledShare(Block.IN_8, inches * INCH, 48 * INCH));
    }

    private static double poundsPerSquareFoot(double filled) {
        double density = POUND / CUBIC_FOOT;
        return BlockWork.massPerArea(Block.IN_8, 135 * density, 140 * density, filled) * SQUARE_FOOT / POUND;
    }

    private static Row wallMass() {
        return Row.of(
                        "CM-08",
                        "mass of an 8 in wall of normal-weight blocks",
                        "wall weight table for masonry",
                        "verified: 36 and 84 lb/ft2; grout at 140 lb/ft3 from memory")
                .share("lb/ft2, hollow", 36, 3, () -> poundsPerSquareFoot(0))
                .share("lb/ft2, solid", 84, 3, () -> poundsPerSquareFoot(1))
                .share("lb/ft2, grout alone", 48, 3, () -> poundsPerSquareFoot(1) - poundsPerSquareFoot(0))
                .share(
                        "ft3 of grout for a ft2",
                        0.343,
                        3,
                        () -> (coreVolume(Block.IN_8) + BlockWork.endSpace(Block.IN_8, Block.IN_8.shell()))
                                * BlockWork.blocksPerArea(Block.IN_8)
                                / FOOT)
                .share("kPa, solid", 4.02, 3, () -> poundsPerSquareFoot(1) * POUND_FORCE / SQUARE_FOOT / 1000);
    }

    private static Row moreBeams() {
        return Row.of(
                        "CM-09",
                        "mass of a wall with bond beams every 24 in",
                        "worked example for masonry",
                        "verified: 56 + 28 x 8 / 24")
                .value("lb/ft2", 65.33, 0.01, () -> BlockWork.massWithBeams(56, 84, 8 * INCH, 24 * INCH));
    }

    private static Row bagYield() {
        Row row = Row.of(
                "CM-10",
                "yield of bagged concrete",
                "bag labels, 0.0075 ft3 a pound",
                "verified: labels of several makers");
        yieldOf(row, 80, 0.60, 45, 59);
        yieldOf(row, 60, 0.45, 60, 78);
        yieldOf(row, 50, 0.375, 72, 94);
        yieldOf(row, 40, 0.30, 90, 118);
        return row;
    }

    private static void yieldOf(Row row, int pounds, double cubicFeet, int inYard, int inCubicMetre) {
        row.value("ft3, " + pounds + " lb", cubicFeet, 1e-9, () -> BagYield.ofMass(pounds * POUND) / CUBIC_FOOT);
        row.value(
                "bags for a yd3, " + pounds + " lb",
                inYard,
                0,
                () -> packs(bags("3 ft x 3 ft", "3 ft", pounds, cubicFeet), "bags"));
        row.value(
                "bags for a m3 before rounding, " + pounds + " lb",
                inCubicMetre,
                0.5,
                () -> amount(bags("1 m x 1 m", "1 m", pounds, cubicFeet), "bags"));
    }

    private static Worksheet bags(String plan, String thickness, int pounds, double cubicFeet) {
        return work(
                Slab.class,
                "plan",
                plan,
                "thickness",
                thickness,
                "wastePercent",
                "0",
                "bagMass",
                pounds + " lb",
                "bagYield",
                cubicFeet + " ft3");
    }

    private static Row slabBags() {
        Worksheet bare = slab("0");
        Worksheet more = slab("10");
        return Row.of("CM-11", "slab of 10 x 12 ft, 4 in, 80 lb bags", "arithmetic on bag labels", "memory: arithmetic")
                .value("ft3", 40, 1e-6, () -> amount(bare, "volume", "ft3"))
                .value("yd3", 1.481, 0.0005, () -> amount(bare, "volume", "yd3"))
                .value("m3", 1.133, 0.0005, () -> amount(bare, "volume", "m3"))
                .value("bags, no waste", 67, 0, () -> packs(bare, "bags"))
                .value("bags, 10 % waste", 74, 0, () -> packs(more, "bags"));
    }

    private static Worksheet slab(String waste) {
        return work(Slab.class, "plan", "10 ft x 12 ft", "thickness", "4 in", "wastePercent", waste);
    }

    private static Row piers() {
        Worksheet ten = work(Pads.class, "plan", "round 12 in", "height", "4 ft", "count", "10", "wastePercent", "0");
        return Row.of(
                        "CM-12",
                        "ten round piers, 12 in by 4 ft, 80 lb bags",
                        "arithmetic on bag labels",
                        "memory: arithmetic")
                .value("ft3 each", 3.142, 0.0005, () -> amount(ten, "one", "ft3"))
                .value("ft3 in all", 31.42, 0.005, () -> amount(ten, "volume", "ft3"))
                .value("bags, rounded once", 53, 0, () -> packs(ten, "bags"));
    }

    private static Row dowelledCells() {
        Worksheet wall = work(
                WallFill.class,
                "length",
                "20 ft",
                "height",
                "6 ft",
                "cells",
                "with-bars",
                "barredCells",
                "14",
                "wastePercent",
                "0");
        return Row.of("CM-13", "14 cells of 9 courses", "arithmetic on CM-05", "memory: arithmetic")
                .value(
                        "ft3 with the bars",
                        18.87,
                        0.005,
                        () -> amount(wall, "grout", "ft3") + amount(wall, "taken", "ft3"))
                .value(
                        "m3 with the bars",
                        0.534,
                        0.0005,
                        () -> amount(wall, "grout", "m3") + amount(wall, "taken", "m3"))
                .value("bags", 32, 0, () -> packs(wall, "bags"));
    }

    private static Row groutRules() {
        return Row.of(
                        "CM-14",
                        "lifts, cleanouts, time and strength of grout",
                        "TMS 602 Art. 3.2 F, 3.5 A, 3.5 D; ASTM C476",
                        "verified")
                .value("in, lift", 64, 1e-9, () -> WallFill.LIFT / INCH)
                .value("m, lift", 1.63, 0.005, () -> WallFill.LIFT)
                .value("in, lift of a cured wall", 152, 1e-9, () -> WallFill.HIGH_LIFT / INCH)
                .value("m, lift of a cured wall", 3.86, 0.005, () -> WallFill.HIGH_LIFT)
                .value("in, cleanout", 3, 1e-9, () -> WallFill.CLEANOUT / INCH)
                .value("in between cleanouts", 32, 1e-9, () -> WallFill.CLEANOUT_SPACING / INCH)
                .value("h from water to place", 1.5, 0, () -> WallFill.PLACE_WITHIN_HOURS)
                .value("psi after 28 d", 2000, 1e-6, () -> WallFill.LEAST_STRENGTH / PSI)
                .value("MPa after 28 d", 13.8, 0.05, () -> WallFill.LEAST_STRENGTH / 1e6);
    }

    private static Row barTable() {
        Row row = Row.of(
                "RB-01", "mass and section of bars", "ASTM A615 Table 1", "verified: lb/ft, in2; SI by conversion");
        bar(row, BarSize.NO_3, 0.376, 0.560, 0.11);
        bar(row, BarSize.NO_4, 0.668, 0.994, 0.20);
        bar(row, BarSize.NO_5, 1.043, 1.552, 0.31);
        bar(row, BarSize.NO_6, 1.502, 2.235, 0.44);
        bar(row, BarSize.NO_7, 2.044, 3.042, 0.60);
        bar(row, BarSize.NO_8, 2.670, 3.973, 0.79);
        return row;
    }

    private static void bar(
            Row row, BarSize size, double poundsPerFoot, double kilogramsPerMetre, double squareInches) {
        row.share("lb/ft, " + size.words(), poundsPerFoot, 0.15, () -> size.kilogramsPerMetre() * FOOT / POUND);
        row.share("kg/m, " + size.words(), kilogramsPerMetre, 0.15, size::kilogramsPerMetre);
        row.value("in2, " + size.words(), squareInches, 0.005, () -> size.section() / SQUARE_INCH);
    }

    private static Row inches(
            Row row, BarSize size, double inches, double tolerance, ToDoubleFunction<BarSize> length) {
        return row.value("in, " + size.words(), inches, tolerance, () -> length.applyAsDouble(size) / INCH);
    }

    private static double diameters(BarSize size, double length) {
        return length / size.diameter();
    }

    private static Row bends() {
        Row row = Row.of(
                "RB-02",
                "least inside diameter of a bend",
                "ACI 318-19 Table 25.3.1; ACI 318-11 7.1.3, 7.2.2",
                "verified: copy of the table and clauses");
        inches(row, BarSize.NO_4, 3, 1e-9, s -> Bars.leastBend(s, false));
        inches(row, BarSize.NO_5, 3.75, 1e-9, s -> Bars.leastBend(s, false));
        inches(row, BarSize.NO_6, 4.5, 1e-9, s -> Bars.leastBend(s, false));
        return row.value("diameters, #3", 6, 1e-9, () -> diameters(BarSize.NO_3, Bars.leastBend(BarSize.NO_3, false)))
                .value("diameters, #8", 6, 1e-9, () -> diameters(BarSize.NO_8, Bars.leastBend(BarSize.NO_8, false)))
                .value("diameters, #9", 8, 1e-9, () -> diameters(BarSize.NO_9, Bars.leastBend(BarSize.NO_9, false)))
                .value("diameters, #11", 8, 1e-9, () -> diameters(BarSize.NO_11, Bars.leastBend(BarSize.NO_11, false)))
                .value("diameters, ties #3", 4, 1e-9, () -> diameters(BarSize.NO_3, Bars.leastBend(BarSize.NO_3, true)))
                .value("diameters, ties #5", 4, 1e-9, () -> diameters(BarSize.NO_5, Bars.leastBend(BarSize.NO_5, true)))
                .value(
                        "diameters behind a tie's bend",
                        6,
                        1e-9,
                        () -> diameters(BarSize.NO_4, Bars.hookEnd90(BarSize.NO_4, true)));
    }

    private static Row hookEnds() {
        return Row.of("RB-03", "straight end of a hook", "ACI 318-19 Table 25.3.1", "verified: copy of the table")
                .value(
                        "diameters, 90 degrees",
                        12,
                        1e-9,
                        () -> diameters(BarSize.NO_4, Bars.hookEnd90(BarSize.NO_4, false)))
                .value(
                        "diameters, 180 degrees, #8",
                        4,
                        1e-9,
                        () -> diameters(BarSize.NO_8, Bars.hookEnd180(BarSize.NO_8)))
                .value("in, 180 degrees, #4", 2.5, 1e-9, () -> Bars.hookEnd180(BarSize.NO_4) / INCH);
    }

    private static Row hookLegs() {
        Row row = Row.of(
                "RB-04", "leg of a 90 degree hook, out to end", "CRSI hook table", "memory: 12 d + 3 d + d by formula");
        double[] inches = {6, 8, 10, 12, 14, 16};
        for (int i = 0; i < inches.length; i++) {
            inches(row, SIZES.get(i), inches[i], 0.25, s -> Bars.hookLeg90(s, false));
        }
        return row;
    }

    private static Row hooks180() {
        Row row = Row.of("RB-05", "length that a 180 degree hook adds", "CRSI hook table", "memory: by formula");
        double[] inches = {5, 6, 7, 8, 10, 11};
        for (int i = 0; i < inches.length; i++) {
            inches(row, SIZES.get(i), inches[i], 0.4, s -> Bars.hookAdds180(s, false));
        }
        return row;
    }

    private static Row deduction() {
        Worksheet bent = work(BentBar.class, "bar", "no-4", "legs", "24 in, 8 in");
        return Row.of("RB-06", "bend deduction, 90 degrees", "geometry of the centre-line arc", "memory: geometry")
                .value(
                        "diameters",
                        2.502,
                        0.001,
                        () -> diameters(BarSize.NO_4, Bars.bendDeduction90(BarSize.NO_4, false)))
                .value("in, #4 with legs of 24 and 8 in", 30.75, 0.05, () -> amount(bent, "cut-length", "in"))
                .value("mm, #4 with legs of 24 and 8 in", 781, 1.3, () -> amount(bent, "cut-length", "mm"));
    }

    private static double development(BarSize size, boolean favourable) {
        return Bars.developmentLength(size, 60_000 * PSI, 3000 * PSI, favourable);
    }

    private static double classB(BarSize size) {
        return Bars.concreteLap(size, 60_000 * PSI, 3000 * PSI, true);
    }

    private static Row concreteLaps() {
        return Row.of(
                        "RB-07",
                        "development length and lap in concrete of 3,000 psi, steel of 60,000 psi",
                        "ACI 318-14/-19 25.4.2.3, 25.5.2",
                        "verified: formula; numbers by arithmetic")
                .value("diameters", 43.8, 0.05, () -> diameters(BarSize.NO_4, development(BarSize.NO_4, true)))
                .value("in, #4", 21.9, 0.1, () -> development(BarSize.NO_4, true) / INCH)
                .value("in, #5", 27.4, 0.1, () -> development(BarSize.NO_5, true) / INCH)
                .value("in, lap of #4", 28.5, 0.1, () -> classB(BarSize.NO_4) / INCH)
                .value("in, lap of #5", 35.6, 0.1, () -> classB(BarSize.NO_5) / INCH)
                .value("in, #4 less favourable", 32.9, 0.1, () -> development(BarSize.NO_4, false) / INCH);
    }

    private static Row masonryLaps() {
        Row row = Row.of("RB-08", "lap in masonry", "IBC 2107.2.1 Eq. 21-1", "verified: IBC 2018 and NYC 2107.2.1");
        inches(row, BarSize.NO_4, 24, 1e-6, s -> Bars.masonryLap(s, 24_000 * PSI, false));
        inches(row, BarSize.NO_5, 30, 1e-6, s -> Bars.masonryLap(s, 24_000 * PSI, false));
        inches(row, BarSize.NO_6, 36, 1e-6, s -> Bars.masonryLap(s, 24_000 * PSI, false));
        return row.value(
                        "in, #4 at 32,000 psi",
                        32,
                        1e-6,
                        () -> Bars.masonryLap(BarSize.NO_4, 32_000 * PSI, false) / INCH)
                .value(
                        "in, #5 at 32,000 psi",
                        40,
                        1e-6,
                        () -> Bars.masonryLap(BarSize.NO_5, 32_000 * PSI, false) / INCH)
                .value(
                        "in, #6 at 32,000 psi",
                        48,
                        1e-6,
                        () -> Bars.masonryLap(BarSize.NO_6, 32_000 * PSI, false) / INCH)
                .value(
                        "in, #4 over 80 % of the allowable",
                        36, 1e-6, () -> Bars.masonryLap(BarSize.NO_4, 24_000 * PSI, true) / INCH)
                .value(
                        "in, #4 at 32,000 psi over 80 %",
                        36, 1e-6, () -> Bars.masonryLap(BarSize.NO_4, 32_000 * PSI, true) / INCH);
    }

    private static Row lappedRun() {
        Worksheet run = work(BarRun.class, "run", "40 ft", "bar", "no-4", "lap", "20 in");
        return Row.of(
                        "RB-09",
                        "bars of 20 ft for a run of 40 ft, lap 20 in",
                        "arithmetic",
                        "memory: lap count arithmetic")
                .value("bars", 3, 0, () -> packs(run, "bars"))
                .value("ft in place", 43.33, 0.005, () -> amount(run, "in-place", "ft"))
                .value("m in place", 13.21, 0.005, () -> amount(run, "in-place", "m"));
    }

    private static Row cutList() {
        Worksheet list = work(CutList.class, "pieces", "8 x 112 in, 10 x 88 in, 12 x 56 in, 6 x 40 in", "kerf", "0 mm");
        return Row.of(
                        "RB-10",
                        "bars of 20 ft for 8 x 112, 10 x 88, 12 x 56 and 6 x 40 in",
                        "constructed, exact whole-number solution",
                        "memory: proved by exact computation")
                .value("bars", 12, 0, () -> packs(list, "bars"))
                .value("least possible, proven", 12, 0, () -> amount(list, "bound"))
                .value("bars of length in all", 11.2, 0.05, () -> amount(list, "net", "ft") / 20);
    }

    private static Row mat() {
        Worksheet mat = work(BarMat.class, "length", "10 ft", "width", "12 ft", "bar", "no-4");
        return Row.of(
                        "RB-11",
                        "bars of a mat in a slab of 10 x 12 ft, 12 in apart, 3 in from the edge",
                        "arithmetic",
                        "memory: floor((side - 2 x cover) / spacing) + 1")
                .value("bars 10 ft long", 12, 0, () -> amount(mat, "bars-along"))
                .value("bars 12 ft long", 10, 0, () -> amount(mat, "bars-across"));
    }

    private static Row swell() {
        Row row = Row.of(
                "FL-01", "swell from ground to loose", "swell table for soils", "verified: load factors by arithmetic");
        ground(row, "earth", Ground.EARTH, 25, 0.80);
        ground(row, "clay", Ground.CLAY, 40, 0.714);
        ground(row, "sand or gravel", Ground.SAND_OR_GRAVEL, 12, 0.893);
        ground(row, "blasted rock", Ground.BLASTED_ROCK, 65, 0.606);
        return row;
    }

    private static void ground(Row row, String name, Ground ground, double percent, double loadFactor) {
        row.value("%, " + name, percent, 1e-9, () -> ground.swell() * 100);
        row.value("load factor, " + name, loadFactor, 0.0005, ground::loadFactor);
    }

    private static Row excavation() {
        Worksheet dig = work(Dig.class, "plan", "200 m x 20 m", "depth", "2 m", "ground", "clay");
        return Row.of(
                        "FL-02",
                        "excavation of 200 x 20 x 2 m, swell 40 %",
                        "worked example, swell factors of excavated materials",
                        "verified")
                .value("m3 in the ground", 8000, 1e-6, () -> amount(dig, "in-ground", "m3"))
                .value("m3 loose", 11200, 1e-6, () -> amount(dig, "loose", "m3"));
    }

    private static Row haulOff() {
        Worksheet dig =
                work(Dig.class, "plan", "60 ft x 10 ft", "depth", "9 ft", "ground", "clay", "backfill", "90 yd3");
        return Row.of(
                        "FL-03",
                        "200 yd3 dug, swell 40 %, 90 yd3 put back at a shrink of 10 %",
                        "worked example, swell and shrinkage of excavated materials",
                        "verified")
                .value("yd3 in the ground", 200, 1e-6, () -> amount(dig, "in-ground", "yd3"))
                .value("yd3 loose", 280, 1e-6, () -> amount(dig, "loose", "yd3"))
                .value("yd3 kept", 100, 1e-6, () -> amount(dig, "kept", "yd3"))
                .value("yd3 loose to haul off", 140, 1e-6, () -> amount(dig, "haul-off", "yd3"));
    }

    private static Row conversion() {
        return Row.of(
                        "FL-04",
                        "compacted volume for a loose one",
                        "FM 5-434 (2000) Table 1-1",
                        "memory: conversion table")
                .value("sand", 0.86, 0.01, FillMaterial.SAND::compactedShare)
                .value("crushed rock, as sand", 0.86, 0.01, FillMaterial.CRUSHED_ROCK::compactedShare)
                .value("common earth", 0.72, 0.01, FillMaterial.EARTH::compactedShare)
                .value("clay", 0.63, 0.01, FillMaterial.CLAY::compactedShare);
    }

    private static Row pad() {
        Worksheet pad = work(BaseFill.class, "plan", "12 ft x 12 ft", "depth", "6 in");
        return Row.of(
                        "FL-05",
                        "pad of base rock, 12 x 12 ft, 6 in, 1.5 short tons a yd3",
                        "rule of thumb",
                        "common practice, no source")
                .value("ft3", 72, 1e-6, () -> amount(pad, "compacted", "ft3"))
                .value("yd3", 2.667, 0.0005, () -> amount(pad, "compacted", "yd3"))
                .value("m3", 2.039, 0.0005, () -> amount(pad, "compacted", "m3"))
                .value("short tons", 4.0, 1e-6, () -> amount(pad, "mass", "ton"))
                .value("t", 3.63, 0.005, () -> amount(pad, "mass", "t"));
    }

    private static Row compaction() {
        double greatest = 135 * POUND / CUBIC_FOOT;
        return Row.of(
                        "FL-06",
                        "mass at 95 % of 135 lb/ft3, 72 ft3, water 6 %",
                        "ASTM D698/D1557 definition",
                        "memory: definition and arithmetic")
                .share("lb of a ft3", 128.25, 0.1, () -> Earthwork.dryMass(CUBIC_FOOT, greatest, 0.95) / POUND)
                .share(
                        "short tons, dry",
                        4.617,
                        0.1,
                        () -> Earthwork.dryMass(72 * CUBIC_FOOT, greatest, 0.95) / SHORT_TON)
                .share(
                        "short tons, moist",
                        4.894,
                        0.1,
                        () -> Earthwork.moistMass(Earthwork.dryMass(72 * CUBIC_FOOT, greatest, 0.95), 0.06)
                                / SHORT_TON);
    }

    private static Row lifts() {
        Worksheet fill = work(BaseFill.class, "plan", "10 ft x 10 ft", "depth", "18 in", "compactedShare", "0.80");
        return Row.of(
                        "FL-07",
                        "height and number of layers",
                        "geotechnical report wording; arithmetic",
                        "verified: 8 in loose at 95 % of ASTM D1557")
                .value("in, loose, at most", 8, 1e-9, () -> BaseFill.STRUCTURAL_LIFT / INCH)
                .value("mm, loose, at most", 203, 0.5, () -> BaseFill.STRUCTURAL_LIFT * 1000)
                .value("layers for 18 in from 8 in loose", 3, 0, () -> amount(fill, "lifts"))
                .value("layers by the method alone", 3, 0, () -> Earthwork.lifts(18 * INCH, 8 * INCH, 0.80));
    }

    private static CutPlan plan(long stock, List<Demand> demands) {
        return CuttingStock.plan(List.of(new Stock(stock, 1, Stock.UNLIMITED)), demands, 0)
                .orElseThrow();
    }

    private static Row boxes() {
        return Row.of("PM-11", "bins of 150 for the 120 items of u120_00", BOXES_SOURCE, "verified: copy of binpack1")
                .value(
                        "items",
                        120,
                        0,
                        () -> BinPacking.demands().stream()
                                .mapToInt(Demand::count)
                                .sum())
                .value(
                        "sum of the items",
                        7078,
                        0,
                        () -> BinPacking.demands().stream()
                                .mapToLong(d -> d.count() * d.length())
                                .sum())
                .value(
                        "bins",
                        48,
                        0,
                        () -> plan(BinPacking.BIN, BinPacking.demands()).cost())
                .value(
                        "bins, no plan needs fewer",
                        48,
                        0,
                        () -> plan(BinPacking.BIN, BinPacking.demands()).bound());
    }

    private static Row textbookRolls() {
        List<Demand> demands =
                List.of(new Demand(45, 97), new Demand(36, 610), new Demand(31, 395), new Demand(14, 211));
        return Row.of(
                        "PM-12",
                        "stock of 100 for 97 x 45, 610 x 36, 395 x 31, 211 x 14",
                        "Chvatal, Linear Programming ch. 13",
                        "verified: widths and demands; optimum proved again")
                .value("stock pieces", 453, 0, () -> plan(100, demands).cost())
                .value(
                        "stock pieces, no plan needs fewer",
                        453,
                        0,
                        () -> plan(100, demands).bound());
    }
}
