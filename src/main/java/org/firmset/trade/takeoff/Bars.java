package org.firmset.trade.takeoff;

import org.firmset.trade.trace.Whole;

/** Lengths of bent and lapped bars. Lengths and diameters are in metres; planning aid, the drawing comes first. */
public final class Bars {
    private static final double PASCALS_PER_PSI = 6894.757293168361;
    private static final double METRES_PER_INCH = 0.0254;
    /** Greatest square root of the strength in psi that counts, ACI 318 25.4.1.4, from memory. */
    private static final double MOST_ROOT_PSI = 100;

    private Bars() {}

    /**
     * Least inside diameter of a bend: 6 diameters up to no. 8, 8 above; 4 for ties up to no. 5 (16 mm). ACI 318 Table
     * 25.3.1.
     */
    public static double leastBend(BarSize size, boolean tie) {
        return (tie && size.isThin() ? 4 : size.isThick() ? 8 : 6) * size.diameter();
    }

    /** Straight end behind a 90 degree hook: 12 diameters; 6 for thin ties. ACI 318 Table 25.3.1. */
    public static double hookEnd90(BarSize size, boolean tie) {
        return (tie && size.isThin() ? 6 : 12) * size.diameter();
    }

    /** Straight end behind a 180 degree hook: 4 diameters, 2.5 in at least. ACI 318 Table 25.3.1. */
    public static double hookEnd180(BarSize size) {
        return Math.max(4 * size.diameter(), 2.5 * METRES_PER_INCH);
    }

    /** Leg of a standard 90 degree hook from the outside of the bar to its end: end + half the bend + diameter. */
    public static double hookLeg90(BarSize size, boolean tie) {
        return hookEnd90(size, tie) + leastBend(size, tie) / 2 + size.diameter();
    }

    /**
     * What a 180 degree hook adds to the length between its outside faces: end + half circle of the centre line less the
     * half bend and the diameter that the outside length holds already.
     */
    public static double hookAdds180(BarSize size, boolean tie) {
        double diameter = size.diameter();
        double bend = leastBend(size, tie);
        return hookEnd180(size) + Math.PI * (bend + diameter) / 2 - (bend / 2 + diameter);
    }

    /**
     * What is taken off the sum of two legs measured outside for the 90 degree bend between them: the bar takes the short
     * way round. 2.502 diameters for a bend of 6.
     */
    public static double bendDeduction90(BarSize size, boolean tie) {
        double radius = leastBend(size, tie) / 2;
        double diameter = size.diameter();
        return 2 * (radius + diameter) - Math.PI / 2 * (radius + diameter / 2);
    }

    /**
     * Development length of a bar in tension: normal-weight concrete, uncoated bottom bar, no. 6 and smaller (thicker bars
     * by the same clause with 20 for 25), before the least of 12 in and without what ACI 318-19 adds for steel over 60 ksi.
     * Concrete over 10,000 psi counts as that. ACI 318-14/-19 25.4.2.3.
     *
     * @param yieldPascals yield strength of the steel, over 0
     * @param strengthPascals strength of the concrete, over 0
     * @param favourable cover of a diameter and clear spacing of two, or with ties; otherwise half as much again
     */
    public static double developmentLength(
            BarSize size, double yieldPascals, double strengthPascals, boolean favourable) {
        requirePositive("yieldPascals", yieldPascals);
        requirePositive("strengthPascals", strengthPascals);
        double yieldPsi = yieldPascals / PASCALS_PER_PSI;
        double rootPsi = Math.min(MOST_ROOT_PSI, Math.sqrt(strengthPascals / PASCALS_PER_PSI));
        double diameters = yieldPsi / ((size.isOverNo6() ? 20 : 25) * rootPsi);
        return diameters * (favourable ? 1 : 1.5) * size.diameter();
    }

    /** A class B lap in concrete: 1.3 development lengths, 12 in at least. ACI 318-14/-19 25.5.2. */
    public static double concreteLap(BarSize size, double yieldPascals, double strengthPascals, boolean favourable) {
        double development = developmentLength(size, yieldPascals, strengthPascals, favourable);
        return Math.max(1.3 * development, 12 * METRES_PER_INCH);
    }

    /**
     * A lap in masonry: 0.002 d fs, at least 40 diameters and 12 in; half as much again where the stress is over 80 % of
     * the allowable, then 72 diameters are enough. IBC 2107.2.1 Eq. 21-1.
     *
     * @param stressPascals stress in the steel, over 0
     */
    public static double masonryLap(BarSize size, double stressPascals, boolean highStress) {
        requirePositive("stressPascals", stressPascals);
        double diameters = 0.002 * stressPascals / PASCALS_PER_PSI;
        double raised = highStress ? Math.min(diameters * 1.5, Math.max(72, diameters)) : diameters;
        return Math.max(Math.max(raised, 40) * size.diameter(), 12 * METRES_PER_INCH);
    }

    /**
     * Bars that cover a straight run with laps between: the least n with n stock - (n - 1) lap at least the run.
     *
     * @param run over 0
     * @param stock length of a bar, over the lap
     * @param lap 0 or more
     */
    public static long barsForRun(double run, double stock, double lap) {
        requirePositive("run", run);
        requireUnder("lap", lap, stock);
        return Math.max(1, Whole.up((run - lap) / (stock - lap)));
    }

    /** Bars that close a ring with as many laps as bars. */
    public static long barsForLoop(double loop, double stock, double lap) {
        requirePositive("loop", loop);
        requireUnder("lap", lap, stock);
        return Math.max(1, Whole.up(loop / (stock - lap)));
    }

    /**
     * Bars side by side across a width, as many as keep their distance: the first stands the edge distance away from its
     * side, the last that or up to a spacing more.
     */
    public static long barsAcross(double width, double edge, double spacing) {
        requirePositive("spacing", spacing);
        requireUnder("edge", edge, width / 2);
        return Whole.down((width - 2 * edge) / spacing) + 1;
    }

    private static void requirePositive(String name, double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(name + " [" + value + "] must be over 0");
        }
    }

    private static void requireUnder(String name, double value, double limit) {
        if (!(value >= 0 && value < limit)) {
            throw new IllegalArgumentException(name + " [" + value + "] must be 0 or more and under [" + limit + "]");
        }
    }
}
