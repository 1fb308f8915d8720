package org.firmset.trade.takeoff;

/** Geometry and mass of block walls. Lengths in metres, volumes in cubic metres, masses in kilograms. */
public final class BlockWork {
    static final int WEBS = 3;
    static final int CELLS_IN_BLOCK = 2;

    private BlockWork() {}

    /**
     * Plan area of the cores of one block: (width - 2 shells) x (length - 3 webs).
     *
     * @param shell thickness of a face shell, under half the width
     * @param web thickness of a web, three of them under the length
     */
    public static double coreArea(Block block, double shell, double web) {
        boolean fits = shell > 0 && web > 0 && 2 * shell < block.width() && WEBS * web < block.length();
        if (!fits) {
            throw new IllegalArgumentException("shell [" + shell + "] and web [" + web
                    + "] must leave a core in a block of " + block.width() + " x " + block.length());
        }
        return (block.width() - 2 * shell) * (block.length() - WEBS * web);
    }

    /** Volume of the cores of one block over the height of a course. */
    public static double coreVolume(Block block, double shell, double web) {
        return coreArea(block, shell, web) * block.course();
    }

    /** What the space between two ends holds besides, over the height of a course, where grout gets into it. */
    public static double endSpace(Block block, double shell) {
        if (!(shell > 0 && 2 * shell < block.width())) {
            throw new IllegalArgumentException(
                    "shell [" + shell + "] must leave a core in a block of width [" + block.width() + "]");
        }
        return (block.width() - 2 * shell) * block.joint() * block.course();
    }

    /** Plan area of a metre of wall that is grouted solid. */
    public static double solidAreaPerMetre(Block block) {
        return block.width();
    }

    /** Blocks for a square metre of wall, waste not included. */
    public static double blocksPerArea(Block block) {
        return 1 / (block.nominalLength() * block.course());
    }

    /** Blocks in a course of a straight wall. */
    public static double blocksInCourse(Block block, double length) {
        requirePositive("length", length);
        return length / block.nominalLength();
    }

    /**
     * Blocks in a course around a rectangle measured outside. A corner block belongs to both walls, so each corner takes
     * one width off.
     */
    public static double blocksAround(Block block, double length, double width) {
        requirePositive("length", length);
        requirePositive("width", width);
        return (2 * (length + width) - 4 * block.nominalWidth()) / block.nominalLength();
    }

    /** The same by the rule of thumb that does not take the corners off; it counts a little more. */
    public static double blocksAroundByRule(Block block, double length, double width) {
        requirePositive("length", length);
        requirePositive("width", width);
        return 2 * (length + width) / block.nominalLength();
    }

    /**
     * Share of the cells that is filled when only every so many inches a cell has a bar, and bond beams are solid: f + (1 -
     * f) g with f one cell in the spacing and g one course in the beams' spacing.
     *
     * @param cellSpacing distance of filled cells, at least the length of a cell
     * @param beamSpacing distance of bond beams; infinite for none
     */
    public static double filledShare(Block block, double cellSpacing, double beamSpacing) {
        double cell = block.nominalLength() / CELLS_IN_BLOCK;
        if (!(cellSpacing >= cell - 1e-9) || !(beamSpacing >= block.course() - 1e-9)) {
            throw new IllegalArgumentException("cellSpacing [" + cellSpacing + "] must be at least [" + cell
                    + "] and beamSpacing [" + beamSpacing + "] at least [" + block.course() + "]");
        }
        double cells = Math.min(1, cell / cellSpacing);
        double beams = Math.min(1, block.course() / beamSpacing);
        return cells + (1 - cells) * beams;
    }

    /**
     * Mass of a square metre of wall, without the mortar of its joints.
     *
     * @param blockDensity of the concrete of the blocks; normal-weight 125 lb/ft3 and more
     * @param fillDensity of the grout
     * @param filled share of the cells that is filled, 0 to 1
     */
    public static double massPerArea(Block block, double blockDensity, double fillDensity, double filled) {
        requirePositive("blockDensity", blockDensity);
        requirePositive("fillDensity", fillDensity);
        if (!(filled >= 0 && filled <= 1)) {
            throw new IllegalArgumentException("filled [" + filled + "] must be from 0 to 1");
        }
        double gross = block.width() * block.length();
        double core = coreArea(block, block.shell(), block.web());
        double height = block.course() - block.joint();
        double units = blocksPerArea(block);
        double hollow = (gross - core) * height * units * blockDensity;
        double grout =
                (coreVolume(block, block.shell(), block.web()) + endSpace(block, block.shell())) * units * fillDensity;
        return hollow + filled * grout;
    }

    /** Mass of a square metre with more solid courses: each brings the difference of solid to base over its height. */
    public static double massWithBeams(double base, double solid, double courseHeight, double beamSpacing) {
        if (!(courseHeight > 0 && beamSpacing >= courseHeight && base >= 0 && solid >= base)) {
            throw new IllegalArgumentException("courseHeight [" + courseHeight + "], beamSpacing [" + beamSpacing
                    + "], base [" + base + "] and solid [" + solid + "] do not go together");
        }
        return base + (solid - base) * courseHeight / beamSpacing;
    }

    private static void requirePositive(String name, double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(name + " [" + value + "] must be over 0");
        }
    }
}
