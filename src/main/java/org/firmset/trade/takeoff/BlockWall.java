package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import java.math.BigDecimal;
import org.firmset.measure.Area;
import org.firmset.measure.Density;
import org.firmset.measure.Described;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Worksheet;

@Described("Blocks and mortar of a wall, and what it weighs.")
public record BlockWall(
        @Described("The wall.") WallSize wall,

        @Described(value = "Openings to take off, all together.", least = "0 m2", most = "500 m2", usual = "0 m2")
        Area openings,

        @Described(value = "Waste of blocks in percent.", least = "0", most = "30", usual = "5")
        int wastePercent,

        @Described(value = "Blocks laid with one bag of mortar.", least = "3", most = "60", usual = "12")
        BigDecimal blocksPerMortarBag,

        @Described(value = "Blocks laid in an hour of labour.", least = "1", most = "60", usual = "5")
        BigDecimal blocksPerHour,

        @Described(value = "Hours for layout and clearing up.", least = "0", most = "100", usual = "2.4")
        BigDecimal otherHours,

        @Described(
                value = "Share of the cells that will be filled, in percent.",
                least = "0",
                most = "100",
                usual = "100")
        int filledPercent,

        @Described(
                value = "Density of the concrete of the blocks.",
                least = "80 lb/ft3",
                most = "160 lb/ft3",
                usual = "135 lb/ft3")
        Density blockDensity,

        @Described(value = "Density of the grout.", least = "100 lb/ft3", most = "160 lb/ft3", usual = "140 lb/ft3")
        Density fillDensity) {

    private static final double MOST_SLENDER = 18;

    public Worksheet work() {
        Sheet sheet = new Sheet();
        long courses = wall.courses(sheet);
        double inCourse = wall.blocksInCourse(sheet);
        double blocks = blocks(sheet, inCourse, courses);
        if (wall.isRectangle()) {
            double rule = BlockWork.blocksAroundByRule(
                    block(), wall.length().amount(), wall.width().amount());
            sheet.add(Finding.note("The rule that does not take the corners off counts %s blocks in a course."
                    .formatted(trimmed(rule))));
        }
        mortar(sheet, blocks);
        labour(sheet, blocks);
        mass(sheet, inCourse * courses / BlockWork.blocksPerArea(block()) - openings.amount());
        findings(sheet, courses);
        sheet.add(Finding.note(
                "Brace fresh walls against wind and cover their tops every night, about 2 ft down the sides."));
        return sheet.done();
    }

    private static String trimmed(double value) {
        return BigDecimal.valueOf(Math.round(value * 100), 2)
                .stripTrailingZeros()
                .toPlainString();
    }

    private double blocks(Sheet sheet, double inCourse, long courses) {
        double off = openings.amount() * BlockWork.blocksPerArea(block());
        double net = inCourse * courses - off;
        if (!(net > 0)) {
            double wallArea = inCourse * courses / BlockWork.blocksPerArea(block());
            throw new Refusal("openings", openings, "are no smaller than the wall", Enter.underArea(wallArea));
        }
        double blocks = net * (1 + wastePercent / 100.0);
        sheet.add(Line.step("blocks-net", "Blocks without waste", Amount.number(net, 1, "blocks"))
                .by(
                        "N = c n - o p",
                        term("c", "blocks in a course", Amount.number(inCourse, 2, "")),
                        term("n", "courses", Amount.count(courses, "")),
                        term("o", "openings", Amount.area(openings.amount())),
                        term("p", "blocks for an area", Amount.perArea(BlockWork.blocksPerArea(block())))));
        sheet.add(Line.material("blocks", "Blocks", Amount.packs(blocks, "blocks"))
                .by(
                        "N (1 + w), rounded up once",
                        term("N", "blocks without waste", Amount.number(net, 1, "")),
                        term("w", "waste", Amount.percent(wastePercent / 100.0)))
                .from(Source.practice("5 to 10 % waste"))
                .heed("Cut wet and wear a respirator that fits: the dust scars lungs."));
        return blocks;
    }

    private void mortar(Sheet sheet, double blocks) {
        sheet.add(Line.material(
                        "mortar", "Bags of mortar", Amount.packs(blocks / blocksPerMortarBag.doubleValue(), "bags"))
                .by(
                        "M = N / b, rounded up",
                        term("N", "blocks with waste", Amount.number(blocks, 1, "")),
                        term("b", "blocks for a bag", Amount.number(blocksPerMortarBag.doubleValue(), 1, "")))
                .from(Source.practice(
                        "one 80 lb bag of ready-blended mortar for 12 blocks; masonry cement needs sand besides")));
    }

    private void labour(Sheet sheet, double blocks) {
        double net = blocks / (1 + wastePercent / 100.0);
        sheet.add(Line.labour(net / blocksPerHour.doubleValue() + otherHours.doubleValue())
                .by(
                        "T = N / r + f",
                        term("N", "blocks laid", Amount.number(net, 1, "")),
                        term("r", "blocks an hour", Amount.number(blocksPerHour.doubleValue(), 1, "")),
                        term("f", "layout and clearing up", Amount.hours(otherHours.doubleValue())))
                .from(Source.PRACTICE));
    }

    private void findings(Sheet sheet, long courses) {
        if (openings.value().signum() > 0) {
            sheet.add(Finding.note(
                    "Openings need lintels that bear on both sides, and filled cells beside them: they are not"
                            + " counted here."));
        }
        if (courses * block().course() > MOST_SLENDER * block().nominalWidth() + 1e-9) {
            sheet.add(Finding.engineer(
                    "The wall is higher than 18 times its width, beyond the empirical rules of TMS 402 (from"
                            + " memory)."));
        }
    }

    private void mass(Sheet sheet, double area) {
        double hollow = BlockWork.massPerArea(block(), blockDensity.amount(), fillDensity.amount(), 0);
        double filled =
                BlockWork.massPerArea(block(), blockDensity.amount(), fillDensity.amount(), filledPercent / 100.0);
        sheet.add(Line.step("mass-hollow", "Mass of the wall before it is filled", Amount.mass(hollow * area))
                .by(
                        "M = g A",
                        term("g", "its area, without the mortar", Amount.massPerArea(hollow)),
                        term("A", "wall", Amount.area(area)))
                .from(block().source()));
        sheet.add(Line.answer("mass-filled", "Mass of the wall when filled", Amount.mass(filled * area))
                .by(
                        "M = (g + f q) A",
                        term("g", "its area before", Amount.massPerArea(hollow)),
                        term("f", "share of the cells", Amount.percent(filledPercent / 100.0)),
                        term(
                                "q",
                                "grout in its area",
                                Amount.massPerArea(filledPercent == 0 ? 0 : (filled - hollow) * 100 / filledPercent)),
                        term("A", "wall", Amount.area(area)))
                .from(block().source())
                .heed("It rests on the footing: soil and footing must carry it."));
    }

    private Block block() {
        return wall.block();
    }
}
