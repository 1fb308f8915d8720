package org.firmset.plan;

import java.time.LocalDate;

/**
 * One day of a trip.
 *
 * @param labourQuarters usable labour of all people together, in quarter-hours, 0 or more
 * @param lightQuarters how much of it stages may have that need daylight; not over {@code labourQuarters}
 * @param people how many people are on site
 * @param power sun and battery of the day
 */
public record SiteDay(LocalDate date, int labourQuarters, int lightQuarters, int people, DayPower power) {
    public SiteDay {
        Require.notNegative(labourQuarters, "labourQuarters", "site day", date);
        Require.notNegative(lightQuarters, "lightQuarters", "site day", date);
        Require.notNegative(people, "people", "site day", date);
        Require.that(
                lightQuarters <= labourQuarters,
                "lightQuarters [%d] of site day [%s] must not be over its labourQuarters [%d]",
                lightQuarters,
                date,
                labourQuarters);
    }

    /** A day that is light for as long as anybody works. */
    public SiteDay(LocalDate date, int labourQuarters, int people, DayPower power) {
        this(date, labourQuarters, labourQuarters, people, power);
    }

    /** How much of its labour a stage may have at most. */
    public int quartersFor(Stage stage) {
        return stage.needsLight() ? lightQuarters : labourQuarters;
    }

    /** The same with other labour, its light cut to it where need be. */
    public SiteDay withLabour(int quarters, int light) {
        return new SiteDay(date, quarters, Math.min(light, quarters), people, power);
    }

    /** The same with other sun and battery. */
    public SiteDay withPower(DayPower changed) {
        return new SiteDay(date, labourQuarters, lightQuarters, people, changed);
    }
}
