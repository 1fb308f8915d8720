package org.firmset.plan.search;

import java.util.Arrays;

/** What a half-made plan has taken of each site day: hours, energy and, in {@link Supply}, room on runs and under roof. */
final class Ledger {
    final Model model;
    final Supply supply;
    private final int[] quartersLeft;
    private final int[] lightLeft;
    private final Battery battery;
    private final int[] blocksOfTrip;
    private final Purse purse;
    private final int[][] toolsInUse;

    Ledger(Model model) {
        this.model = model;
        quartersLeft = new int[model.dayCount()];
        lightLeft = new int[model.dayCount()];
        battery = new Battery(model);
        blocksOfTrip = new int[model.tripCount()];
        purse = new Purse(model);
        toolsInUse = new int[model.problem.tools().size()][model.dayCount()];
        supply = new Supply(model, this);
        clear();
    }

    void clear() {
        for (int d = 0; d < quartersLeft.length; d++) {
            quartersLeft[d] = model.days.get(d).labourQuarters();
            lightLeft[d] = model.days.get(d).lightQuarters();
        }
        battery.clear();
        Arrays.fill(blocksOfTrip, 0);
        purse.clear();
        for (int[] inUse : toolsInUse) {
            Arrays.fill(inUse, 0);
        }
        supply.clear();
    }

    int quartersLeft(int day) {
        return quartersLeft[day];
    }

    /** How much more of a stage the hours of a day hold. */
    int quartersLeft(int s, int day) {
        return model.stage(s).needsLight() ? Math.min(quartersLeft[day], lightLeft[day]) : quartersLeft[day];
    }

    void takeQuarters(int day, int quarters) {
        quartersLeft[day] -= quarters;
    }

    boolean worksOnTrip(int trip) {
        return blocksOfTrip[trip] > 0;
    }

    boolean tripIsMade(int trip) {
        return blocksOfTrip[trip] > 0 || supply.hasRun(trip);
    }

    Purse purse() {
        return purse;
    }

    void addBlock(int s, Block block) {
        book(s, block, 1);
    }

    void removeBlock(int s, Block block) {
        book(s, block, -1);
    }

    private void book(int s, Block block, int sign) {
        int day = block.day();
        int trip = model.tripOfDay[day];
        boolean was = tripIsMade(trip);
        quartersLeft[day] -= sign * block.quarters();
        battery.take(s, day, sign * block.quarters());
        lightLeft[day] -= model.stage(s).needsLight() ? sign * block.quarters() : 0;
        blocksOfTrip[trip] += sign;
        for (int u = 0; u < model.toolOf[s].length; u++) {
            toolsInUse[model.toolOf[s][u]][day] += sign * model.toolCount[s][u];
        }
        if (was != tripIsMade(trip)) {
            payTrip(trip, sign);
        }
    }

    void payTrip(int trip, int sign) {
        purse.spend(model.firstDayOfTrip[trip], sign * model.trip(trip).cents());
    }

    /** The tool a stage cannot have on a day; -1 when it can have them all. */
    int toolTaken(int s, int day) {
        for (int u = 0; u < model.toolOf[s].length; u++) {
            int tool = model.toolOf[s][u];
            if ((long) toolsInUse[tool][day] + model.toolCount[s][u]
                    > model.problem.tools().get(tool).count()) {
                return tool;
            }
        }
        return -1;
    }

    /** Whether no month takes more than it may. */
    boolean isPaid() {
        return !purse.isLimited() || purse.holds(fuelByMonth());
    }

    /** Over all months what is spent above the limit; above 0 only where the limit need not be kept. */
    long overLimit() {
        return purse.isLimited() ? purse.over(fuelByMonth()) : 0;
    }

    private long[] fuelByMonth() {
        long[] fuel = new long[purse.monthCount()];
        long price = model.problem.site().generatorCentsPerKilowattHour();
        if (!battery.hasGenerator() || price == 0) {
            return fuel;
        }
        long[] use = generatorUse();
        for (int d = 0; d < use.length; d++) {
            fuel[purse.monthOf(d)] += use[d];
        }
        for (int m = 0; m < fuel.length; m++) {
            fuel[m] = Math.ceilDiv(fuel[m] * price, 1000);
        }
        return fuel;
    }

    void add(Placement placement) {
        placement.blocks.forEach(b -> addBlock(placement.stage, b));
        placement.reservations.forEach(supply::add);
    }

    void remove(Placement placement) {
        placement.reservations.forEach(supply::remove);
        placement.blocks.forEach(b -> removeBlock(placement.stage, b));
    }

    /** The most quarter-hours of a stage, not over {@code most}, that the battery lasts for on this day. */
    int quartersByPower(int s, int day, int most) {
        return lasts(s, day, most) ? most : Halving.last(0, most, quarters -> lasts(s, day, quarters));
    }

    /** Whether the battery of the day's trip holds its floor when so much more of a stage is done on the day. */
    boolean lasts(int s, int day, int quarters) {
        return battery.lasts(s, day, quarters);
    }

    /** Whether hours and power of a day hold what is booked on it. */
    boolean holds(int day) {
        return quartersLeft[day] >= 0 && lightLeft[day] >= 0 && battery.lasts(day);
    }

    /** Energy the generator gives on each day so that the battery lasts: as late and as little as can be. */
    long[] generatorUse() {
        return battery.generatorUse();
    }
}
