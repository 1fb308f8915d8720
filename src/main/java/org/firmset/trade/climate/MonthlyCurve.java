package org.firmset.trade.climate;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;

/**
 * A smooth curve through the year whose mean over each month is exactly the month's value: a parabola for each month that
 * meets its neighbours in value and slope (slopes by shares of a month, so that 28 and 31 days differ slightly). Used
 * where a sum over a month must come out right: wet days, sun, rain, odds of frost. {@link MonthlyValues#on} runs straight
 * between the middles of months and is kept for cure times, which are checked against published normals that way.
 *
 * <p>How: with the month's mean M and its values l and r at either end the parabola is l + (6M - 4l - 2r) x + (3l + 3r -
 * 6M) x2, x from 0 to 1; equal slopes ask for l + 4 m + r = 3 (M + N) where months with means M and N meet in m.
 * Arithmetic. Immutable.
 */
public final class MonthlyCurve {
    private static final int MONTHS = 12;
    /** Each sweep leaves at most half of the error: after so many none that a double can hold. */
    private static final int SWEEPS = 80;

    private final List<Double> means;
    /** Where a month begins, January first. */
    private final double[] starts;

    private MonthlyCurve(List<Double> means) {
        this.means = means;
        starts = new double[MONTHS];
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            for (int m = 0; m < MONTHS; m++) {
                double bothMeans = means.get(before(m)) + means.get(m);
                starts[m] = (3 * bothMeans - starts[before(m)] - starts[after(m)]) / 4;
            }
        }
    }

    /** Keeps the means of twelve values in any one unit. */
    public static MonthlyCurve of(MonthlyValues months) {
        return new MonthlyCurve(months.values());
    }

    /** The mean of the curve over a date, in the unit of the months; may go a little beyond the highest and lowest month. */
    public double on(LocalDate date) {
        int month = date.getMonthValue() - 1;
        double days = YearMonth.from(date).lengthOfMonth();
        double from = (date.getDayOfMonth() - 1) / days;
        double to = date.getDayOfMonth() / days;
        return (area(month, to) - area(month, from)) * days;
    }

    private double area(int month, double x) {
        double mean = means.get(month);
        double left = starts[month];
        double right = starts[after(month)];
        double slope = 6 * mean - 4 * left - 2 * right;
        double bend = 3 * left + 3 * right - 6 * mean;
        return x * (left + x * (slope / 2 + x * bend / 3));
    }

    private static int before(int month) {
        return (month + MONTHS - 1) % MONTHS;
    }

    private static int after(int month) {
        return (month + 1) % MONTHS;
    }
}
