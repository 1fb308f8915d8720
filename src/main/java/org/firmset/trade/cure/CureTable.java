package org.firmset.trade.cure;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import org.firmset.trade.climate.DailyTemperature;

/**
 * The days a cure takes for every date of its pour in a span: the same as {@link Strength#calendarDaysTo(StrengthGoal,
 * LocalDate, DailyTemperature)} date by date, in one pass. A later pour is never ready sooner, so both ends of the wait
 * only move on, and each date's temperature is asked for once. Immutable. Get one from {@link #of}.
 */
public final class CureTable {
    private final LocalDate first;
    private final int[] days;

    private CureTable(LocalDate first, int[] days) {
        this.first = first;
        this.days = days;
    }

    /**
     * @param first date of a pour
     * @param last date of a pour, not before the first
     */
    public static CureTable of(StrengthGoal goal, DailyTemperature temperature, LocalDate first, LocalDate last) {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("last [" + last + "] must not be before first [" + first + "]");
        }
        int pours = Math.toIntExact(ChronoUnit.DAYS.between(first, last)) + 1;
        double enough = goal.enough();
        double[] ages = new double[pours + Strength.LONGEST_DAYS];
        int[] days = new int[pours];
        int ready = 0;
        for (int pour = 0; pour < pours; pour++) {
            while (ages[ready] - ages[pour] < enough && ready < pour + Strength.LONGEST_DAYS) {
                ready++;
                ages[ready] = ages[ready - 1] + goal.ageing().factor(temperature.celsiusOn(first.plusDays(ready)));
            }
            days[pour] = ready - pour;
        }
        return new CureTable(first, days);
    }

    public LocalDate first() {
        return first;
    }

    public LocalDate last() {
        return first.plusDays(days.length - 1);
    }

    /**
     * Whole calendar days after a pour until the goal is there, at most ten years.
     *
     * @param pour a date from {@link #first} to {@link #last}
     */
    public int daysAfter(LocalDate pour) {
        long day = ChronoUnit.DAYS.between(first, pour);
        if (day < 0 || day >= days.length) {
            throw new IllegalArgumentException("pour [" + pour + "] must be from " + first + " to " + last());
        }
        return days[(int) day];
    }

    /** The days of all pours, from the {@link #first} date on. */
    public List<Integer> days() {
        return Arrays.stream(days).boxed().toList();
    }
}
