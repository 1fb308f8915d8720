package org.firmset.trade.cure;

import java.time.LocalDate;
import java.util.stream.IntStream;
import org.firmset.trade.climate.DailyTemperature;

/** Temperature and age of a pour day by day. Immutable. */
final class DailyAges {
    private final double[] celsius;
    private final double[] ages;

    private DailyAges(double[] celsius, double[] ages) {
        this.celsius = celsius;
        this.ages = ages;
    }

    /** @param days how many days after the pour, over 0 */
    static DailyAges of(Ageing ageing, LocalDate poured, int days, DailyTemperature temperature) {
        double[] celsius = new double[days + 1];
        double[] ages = new double[days + 1];
        for (int day = 1; day <= days; day++) {
            celsius[day] = temperature.celsiusOn(poured.plusDays(day));
            ages[day] = ages[day - 1] + ageing.factor(celsius[day]);
        }
        return new DailyAges(celsius, ages);
    }

    /** Mean temperature of a day after the pour, from 1 on, in degrees Celsius. */
    double celsiusOn(int day) {
        return celsius[day];
    }

    /** Age after so many days, in days at the reference temperature. */
    double after(int days) {
        return ages[days];
    }

    /** The mean of the first so many days in degrees Celsius. */
    double meanCelsius(int days) {
        return IntStream.rangeClosed(1, days)
                .mapToDouble(day -> celsius[day])
                .average()
                .orElse(0);
    }

    /** How many of the first so many days have a mean under a limit in degrees Celsius. */
    long daysUnder(double limit, int days) {
        return IntStream.rangeClosed(1, days)
                .filter(day -> celsius[day] < limit)
                .count();
    }

    /** How many of the first so many days have a mean over a limit in degrees Celsius. */
    long daysOver(double limit, int days) {
        return IntStream.rangeClosed(1, days)
                .filter(day -> celsius[day] > limit)
                .count();
    }

    /** How many days are known. */
    int days() {
        return ages.length - 1;
    }
}
