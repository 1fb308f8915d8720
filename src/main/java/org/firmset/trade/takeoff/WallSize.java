package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Whole;

@Described("A wall of blocks, or a rectangle of four.")
public record WallSize(
        @Described(value = "Length of the wall, measured outside.", least = "0.2 m", most = "60 m")
        Length length,

        @Described(
                value = "The other side of a rectangle of four walls, measured outside; 0 for one straight wall.",
                least = "0 m",
                most = "60 m",
                usual = "0 m")
        Length width,

        @Described(value = "Height of the blockwork.", least = "0.15 m", most = "6 m")
        Length height,

        @Described(value = "Nominal size of the block.", usual = "in-8")
        Block block) {

    /** What nobody measures at a wall, in metres. */
    private static final double SLIP = 0.002;

    /** Whole courses, with the line that says so. */
    long courses(Sheet sheet) {
        double exact = height.amount() / block.course();
        long courses = Whole.up(exact);
        sheet.add(Line.step("courses", "Courses", Amount.count(courses, "courses"))
                .by(
                        "n = H / h, rounded up",
                        term("H", "height", Amount.length(height)),
                        term("h", "course with its joint", Amount.length(block.course())))
                .from(Sources.BLOCK_RULE));
        // a wall measured without its last joint has whole courses all the same
        if ((courses - exact) * block.course() > block.joint() + SLIP) {
            sheet.add(Finding.note("The height is no whole number of courses; %d are counted.".formatted(courses)));
        }
        return courses;
    }

    boolean isRectangle() {
        return width.value().signum() > 0;
    }

    /** Blocks in a course, corners counted once, with the line that says so. */
    double blocksInCourse(Sheet sheet) {
        if (isRectangle()) {
            double around = BlockWork.blocksAround(block, length.amount(), width.amount());
            boolean shortLength = length.value().compareTo(width.value()) < 0;
            Length shorter = shortLength ? length : width;
            if (!(shorter.amount() > 2 * block.nominalWidth())) {
                throw new Refusal(
                        shortLength ? "length" : "width",
                        shorter,
                        "leaves no room inside walls of " + block.words(),
                        "Enter more than " + Length.ofMetres(2 * block.nominalWidth()) + ", measured outside");
            }
            sheet.add(Line.step("blocks-in-course", "Blocks in a course", Amount.number(around, 2, "blocks"))
                    .by(
                            "c = (2 (L + B) - 4 t) / l",
                            term("L", "length outside", Amount.length(length)),
                            term("B", "width outside", Amount.length(width)),
                            term("t", "width of the wall", Amount.length(block.nominalWidth())),
                            term("l", "block with its joint", Amount.length(block.nominalLength())))
                    .from(Source.ARITHMETIC));
            addCuts(sheet);
            return around;
        }
        double straight = BlockWork.blocksInCourse(block, length.amount());
        sheet.add(Line.step("blocks-in-course", "Blocks in a course", Amount.number(straight, 2, "blocks"))
                .by(
                        "c = L / l",
                        term("L", "length", Amount.length(length)),
                        term("l", "block with its joint", Amount.length(block.nominalLength())))
                .from(Sources.BLOCK_RULE));
        addCuts(sheet);
        return straight;
    }

    /** Says so when a side is no whole number of half blocks, measured with or without its last joint. */
    private void addCuts(Sheet sheet) {
        if (needsCuts(length) || isRectangle() && needsCuts(width)) {
            sheet.add(
                    Finding.note("A side is no whole number of half blocks (%s): each course needs a block cut to fit."
                            .formatted(Length.ofMetres(block.nominalLength() / 2))));
        }
    }

    private boolean needsCuts(Length side) {
        double half = block.nominalLength() / 2;
        double rest = side.amount() - Whole.down(side.amount() / half) * half;
        return rest > SLIP && half - rest > block.joint() + SLIP;
    }
}
