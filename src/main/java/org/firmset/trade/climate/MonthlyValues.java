package org.firmset.trade.climate;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;

/**
 * Twelve monthly values and what they make of the days between: each value stands at the middle of its month, straight
 * lines run from one to the next, December's to January's. The mean over a month may therefore differ a little from the
 * month's value where the curve bends.
 *
 * @param values January first, in any one unit
 */
public record MonthlyValues(List<Double> values) {
    private static final int MONTHS = 12;

    public MonthlyValues {
        values = List.copyOf(values);
        if (values.size() != MONTHS) {
            throw new IllegalArgumentException("values " + values + " must be twelve, one for each month");
        }
    }

    public double on(LocalDate date) {
        YearMonth month = YearMonth.from(date);
        double position = (date.getDayOfMonth() - 0.5) / month.lengthOfMonth() - 0.5;
        int here = date.getMonthValue() - 1;
        int there = Math.floorMod(here + (position < 0 ? -1 : 1), MONTHS);
        double share = Math.abs(position);
        return values.get(here) * (1 - share) + values.get(there) * share;
    }

    /** The value of the month itself. */
    public double inMonthOf(LocalDate date) {
        return values.get(date.getMonthValue() - 1);
    }
}
