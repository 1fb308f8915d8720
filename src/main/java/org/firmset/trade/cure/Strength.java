package org.firmset.trade.cure;

import java.time.LocalDate;
import org.firmset.trade.climate.DailyTemperature;

/**
 * Strength of concrete with age, as a planning aid and never as a strength test: EN 1992-1-1 Eq. 3.2 for 20 °C, with
 * the temperature-adjusted age of its Eq. B.10 for other temperatures. Other published methods: {@link
 * StrengthCurve} and
 * {@link Ageing}; a whole season at once: {@link CureTable}.
 */
public final class Strength {
    /** No wait is reckoned beyond it. */
    public static final int LONGEST_DAYS = 3650;

    private Strength() {}

    /**
     * Strength as a share of the 28-day strength at 20 °C: exp(s (1 - sqrt(28 / t))).
     *
     * @param ageDays age in days, over 0
     */
    public static double share(double ageDays, Cement cement) {
        return StrengthCurve.of(cement).share(ageDays);
    }

    /**
     * Days at 20 °C until a share of the 28-day strength is there: the inverse of {@link #share}.
     *
     * @param share over 0, up to 1
     */
    public static double daysTo(double share, Cement cement) {
        return StrengthCurve.of(cement).daysTo(share);
    }

    /**
     * By how many days at 20 °C one day at another temperature ages concrete: exp(13.65 - 4000 / (273 + T)), EN
     * 1992-1-1 Eq. B.10, for 0 to 80 °C. Under 0 °C nothing is counted: water that is ice does not hydrate cement.
     */
    public static double ageFactor(double celsius) {
        return Ageing.EN_1992.factor(celsius);
    }

    /**
     * Whole calendar days after the day of the pour until a share of the 28-day strength is there; the pour's own day
     * does not count.
     *
     * @return at most ten years, also when it is never warm enough
     */
    public static int calendarDaysTo(double share, Cement cement, LocalDate pour, DailyTemperature temperature) {
        return calendarDaysTo(new StrengthGoal(share, StrengthCurve.of(cement), Ageing.EN_1992), pour, temperature);
    }

    /**
     * Whole calendar days after the day of the pour until the goal is there; the pour's own day does not count.
     *
     * @return at most ten years, also when it is never warm enough
     */
    public static int calendarDaysTo(StrengthGoal goal, LocalDate pour, DailyTemperature temperature) {
        double enough = goal.enough();
        double age = 0;
        int days = 0;
        while (age < enough && days < LONGEST_DAYS) {
            days++;
            age += goal.ageing().factor(temperature.celsiusOn(pour.plusDays(days)));
        }
        return days;
    }
}
