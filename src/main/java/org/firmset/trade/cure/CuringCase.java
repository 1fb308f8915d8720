package org.firmset.trade.cure;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.stream.IntStream;
import org.firmset.trade.climate.DailyTemperature;
import org.firmset.trade.climate.MonthlyTemperatures;
import org.firmset.trade.climate.MonthlyValues;
import org.firmset.trade.climate.Readings;
import org.firmset.trade.trace.Refusal;
import org.jspecify.annotations.Nullable;

/**
 * A pour with all that follows from what was given.
 *
 * @param strengthDays whole days until the strength is there
 * @param waitDays the same, and the least days
 * @param ages up to the end of the wait, and to 28 days
 * @param nights the usual lows, in degrees Celsius
 */
record CuringCase(
        CuringConcrete given,
        StrengthGoal goal,
        int leastDays,
        DailyTemperature temperature,
        int strengthDays,
        int waitDays,
        DailyAges ages,
        MonthlyValues nights) {
    static final int STANDARD_DAYS = 28;
    /** A wait of ten years may begin in any of twelve months. */
    private static final int SPAN_DAYS = 366 + Strength.LONGEST_DAYS;

    private static final int FIRST_YEAR = 1990;
    private static final int LAST_YEAR = 2199;
    private static final int MONTHS = 12;

    /** @throws Refusal when inputs contradict each other */
    static CuringCase of(CuringConcrete given) {
        int year = given.poured().getYear();
        if (year < FIRST_YEAR || year > LAST_YEAR) {
            throw new Refusal("poured", given.poured(), "is too far away", "Enter a date from 1990 to 2199");
        }
        MonthlyValues highs = given.meanHigh().celsius();
        MonthlyValues lows = given.meanLow().celsius();
        checkOrder(highs, lows, given.meanLow());
        StrengthGoal goal = goal(given);
        @Nullable Integer least = given.leastDays();
        int leastDays = least == null ? given.milestone().leastDays() : least;
        DailyTemperature temperature = temperature(given, DailyTemperature.meanOf(highs, lows));
        int strengthDays = Strength.calendarDaysTo(goal, given.poured(), temperature);
        int waitDays = Math.max(strengthDays, leastDays);
        DailyAges ages = DailyAges.of(given.ageing(), given.poured(), Math.max(waitDays, STANDARD_DAYS), temperature);
        return new CuringCase(given, goal, leastDays, temperature, strengthDays, waitDays, ages, lows);
    }

    private static void checkOrder(MonthlyValues highs, MonthlyValues lows, MonthlyTemperatures low) {
        if (IntStream.range(0, MONTHS)
                .anyMatch(m -> lows.values().get(m) > highs.values().get(m))) {
            throw new Refusal("meanLow", low, "is in some month over the highs", "Enter lows under the highs");
        }
    }

    private static StrengthGoal goal(CuringConcrete given) {
        StrengthCurve curve = StrengthCurve.of(given.curve(), given.cement())
                .orElseThrow(() -> new Refusal(
                        "curve",
                        given.curve().words(),
                        "has no values for slow cement",
                        "Choose EN 1992-1-1, or normal or rapid cement"));
        return new StrengthGoal(share(given), curve, given.ageing());
    }

    private static double share(CuringConcrete given) {
        @Nullable BigDecimal percent = given.sharePercent();
        if (percent != null) {
            return percent.doubleValue() / 100;
        }
        return given.milestone()
                .share()
                .orElseThrow(() -> new Refusal(
                        "sharePercent",
                        "nothing",
                        "is needed for a milestone of your own",
                        "Enter a percentage from 5 to 100, or choose another milestone"));
    }

    private static DailyTemperature temperature(CuringConcrete given, DailyTemperature usual) {
        @Nullable Readings readings = given.readings();
        DailyTemperature air = readings == null ? usual : readings.over(usual);
        DailyTemperature held =
                given.insulated() ? air.notUnder(given.insulatedLeast().amount()) : air;
        return new RememberedTemperature(held, given.poured().withDayOfMonth(1), SPAN_DAYS);
    }

    /** Whether the share is there at the end of the wait: always but where it is never warm enough. */
    boolean arrives() {
        return ages.after(strengthDays) >= goal.enough();
    }

    LocalDate readyOn() {
        return given.poured().plusDays(waitDays);
    }

    /** Share of the strength after so many days; none on the day of the pour and while nothing was counted. */
    double shareAfter(int days) {
        double age = ages.after(days);
        return age > 0 ? goal.curve().share(age) : 0;
    }

    int protectionDays() {
        return given.exposure().protectionDays(given.cement(), given.accelerated());
    }

    /** The usual low of the coldest night of the protection, in degrees Celsius. */
    double coldestNight() {
        return IntStream.rangeClosed(1, protectionDays())
                .mapToDouble(this::night)
                .min()
                .orElseThrow();
    }

    /** How many nights of the protection are usually under a limit in degrees Celsius. */
    long nightsUnder(double limit) {
        return IntStream.rangeClosed(1, protectionDays())
                .filter(day -> night(day) < limit)
                .count();
    }

    /** Whether a night of the protection of a pour on another date is usually under 0 °C. */
    boolean frostAfter(LocalDate pour) {
        return IntStream.rangeClosed(0, protectionDays()).anyMatch(day -> nights.on(pour.plusDays(day)) < 0);
    }

    private double night(int day) {
        return nights.on(given.poured().plusDays(day));
    }
}
