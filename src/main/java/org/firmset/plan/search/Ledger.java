package org.firmset.plan.search;

import java.util.Arrays;
import org.firmset.plan.Stage;

/** What a half-made plan has taken of each site day: hours, energy and, in {@link Supply}, room on runs and under roof. */
final class Ledger {
    final Model model;
    final Supply supply;
    private final int[] quartersLeft;
    private final long[] energyUse;
    private final int[] blocksOfTrip;
    private final boolean powered;

    Ledger(Model model) {
        this.model = model;
        quartersLeft = new int[model.dayCount()];
        energyUse = new long[model.dayCount()];
        blocksOfTrip = new int[model.tripCount()];
        powered = model.problem.stages().stream().anyMatch(s -> s.wattHoursPerHour() > 0);
        supply = new Supply(model, this);
        clear();
    }

    void clear() {
        for (int d = 0; d < quartersLeft.length; d++) {
            quartersLeft[d] = model.days.get(d).labourQuarters();
        }
        Arrays.fill(energyUse, 0);
        Arrays.fill(blocksOfTrip, 0);
        supply.clear();
    }

    int quartersLeft(int day) {
        return quartersLeft[day];
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

    void addBlock(int s, Block block) {
        quartersLeft[block.day()] -= block.quarters();
        energyUse[block.day()] += model.stage(s).wattHours(block.quarters());
        blocksOfTrip[model.tripOfDay[block.day()]]++;
    }

    void removeBlock(int s, Block block) {
        quartersLeft[block.day()] += block.quarters();
        energyUse[block.day()] -= model.stage(s).wattHours(block.quarters());
        blocksOfTrip[model.tripOfDay[block.day()]]--;
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
        Stage stage = model.stage(s);
        if (stage.wattHoursPerHour() == 0 || lasts(day, stage.wattHours(most))) {
            return most;
        }
        int low = 0;
        int high = most;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (lasts(day, stage.wattHours(middle))) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Whether the trip's battery stays above its floor when {@code more} Wh are taken on a day. */
    boolean lasts(int day, long more) {
        return !powered || lowestAfter(model.tripOfDay[day], day, more) >= 0;
    }

    /** Below zero when the battery would go under its floor on some day of the trip, however the generator helps. */
    private long lowestAfter(int trip, int day, long more) {
        long usable = model.problem.site().usableWattHours();
        long generator = model.problem.site().generatorWattHoursPerDay();
        long charge = usable;
        for (int d = model.firstDayOfTrip[trip]; d <= model.lastDayOfTrip[trip]; d++) {
            charge += model.days.get(d).harvestWattHours() - energyUse[d] - (d == day ? more : 0);
            if (charge < 0) {
                charge += Math.min(generator, -charge);
                if (charge < 0) {
                    return charge;
                }
            }
            charge = Math.min(charge, usable);
        }
        return 0;
    }

    /** Energy the generator gives on each day so that the battery lasts. */
    long[] generatorUse() {
        long usable = model.problem.site().usableWattHours();
        long[] result = new long[model.dayCount()];
        for (int t = 0; t < model.tripCount(); t++) {
            long charge = usable;
            for (int d = model.firstDayOfTrip[t]; d <= model.lastDayOfTrip[t]; d++) {
                charge += model.days.get(d).harvestWattHours() - energyUse[d];
                if (charge < 0) {
                    result[d] = -charge;
                    charge = 0;
                }
                charge = Math.min(charge, usable);
            }
        }
        return result;
    }
}
