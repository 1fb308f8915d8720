package org.firmset.trade.climate;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Twelve monthly values and what they make of the days between: each value stands at the middle of its month, straight
 * lines run from one to the next, December's to January's. The mean over a month may therefore differ a little from the
 * month's value where the curve bends; {@link MonthlyCurve} keeps it.
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

    /** Half-way between highs and lows month by month, (high + low) / 2; both in one unit. */
    public static MonthlyValues meanOf(MonthlyValues high, MonthlyValues low) {
        return new MonthlyValues(IntStream.range(0, MONTHS)
                .mapToObj(m -> (high.values.get(m) + low.values.get(m)) / 2)
                .toList());
    }

    /** The months whose value is under a limit in the same unit, January first. */
    public List<Month> monthsUnder(double limit) {
        return Arrays.stream(Month.values())
                .filter(month -> values.get(month.getValue() - 1) < limit)
                .toList();
    }

    /** The mean of the year, every month counting alike. */
    public double yearMean() {
        return values.stream().mapToDouble(Double::doubleValue).sum() / MONTHS;
    }
}
