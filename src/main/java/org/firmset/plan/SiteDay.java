package org.firmset.plan;

import java.time.LocalDate;

/**
 * One day of a trip.
 *
 * @param labourQuarters usable labour of all people together, in quarter-hours, 0 or more
 * @param people how many people are on site
 * @param harvestWattHours energy the panels are expected to give on this day, in Wh
 */
public record SiteDay(LocalDate date, int labourQuarters, int people, long harvestWattHours) {
    public SiteDay {
        Require.notNegative(labourQuarters, "labourQuarters", "site day", date);
        Require.notNegative(people, "people", "site day", date);
        Require.notNegative(harvestWattHours, "harvestWattHours", "site day", date);
    }
}
