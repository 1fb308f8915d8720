package org.firmset.plan;

import java.util.Collections;
import java.util.List;

/**
 * One site day as the battery sees it, hour by hour.
 *
 * @param sunWatts what the panels bring in, in W, as a mean over each of the 24 hours from midnight; 0 or more
 * @param baseWatts what is drawn all day and night besides the work
 * @param floorWattHours what must stay in the battery, with what the cold locks in
 * @param charges false when the battery is too cold to be charged
 * @param workFromHour the full hour from which work may draw, 0 to 23
 */
public record DayPower(List<Long> sunWatts, long baseWatts, long floorWattHours, boolean charges, int workFromHour) {
    public static final int HOURS = 24;

    /** No sun, nothing drawn but by work, all of the battery to be had. */
    public static final DayPower DARK = new DayPower(Collections.nCopies(HOURS, 0L), 0, 0, true, 7);

    public DayPower {
        sunWatts = List.copyOf(sunWatts);
        Require.that(sunWatts.size() == HOURS, "sunWatts [%s] must be 24, one for each hour", sunWatts.size());
        sunWatts.forEach(w -> PowerSupply.requireSane(w, "sunWatts"));
        PowerSupply.requireSane(baseWatts, "baseWatts");
        PowerSupply.requireSane(floorWattHours, "floorWattHours");
        Require.that(workFromHour >= 0 && workFromHour < HOURS, "workFromHour [%d] must be from 0 to 23", workFromHour);
    }

    /** What the panels bring in over the day, in Wh. */
    public long harvestWattHours() {
        return sunWatts.stream().mapToLong(Long::longValue).sum();
    }
}
