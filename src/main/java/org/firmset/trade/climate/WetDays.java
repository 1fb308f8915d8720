package org.firmset.trade.climate;

import java.time.LocalDate;
import java.time.Month;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Wet and dry days through the year: the chain of each date has the date's share of wet days, kept by {@link MonthlyCurve},
 * and one persistence. Immutable.
 */
public final class WetDays {
    private static final double FEBRUARY_DAYS = 28.25;

    private final MonthlyCurve wetShare;
    private final double persistence;

    private WetDays(MonthlyCurve wetShare, double persistence) {
        this.wetShare = wetShare;
        this.persistence = persistence;
    }

    /**
     * @param wetDays of the twelve months, January first, each 0 to the days of the month
     * @param persistence see {@link WetDryChain#of}
     */
    public static WetDays of(MonthlyValues wetDays, double persistence) {
        Demand.within("persistence", persistence, 0, Math.nextDown(1.0));
        List<Double> shares = Arrays.stream(Month.values())
                .map(m -> Demand.within("wetDays of " + m, wetDays.values().get(m.getValue() - 1), 0, daysIn(m))
                        / daysIn(m))
                .toList();
        return new WetDays(MonthlyCurve.of(new MonthlyValues(shares)), persistence);
    }

    /** The days of a month, February with its share of leap days. */
    public static double daysIn(Month month) {
        return month == Month.FEBRUARY ? FEBRUARY_DAYS : month.maxLength();
    }

    /** The chain that leads to a date. */
    public WetDryChain chain(LocalDate date) {
        return WetDryChain.of(wetOdds(date), persistence);
    }

    /** Odds of a wet day when nothing is known of the day before. */
    public double wetOdds(LocalDate date) {
        return Math.clamp(wetShare.on(date), 0, 1);
    }

    /** Odds that this many days in a row are dry, the first included. @param days 1 or more */
    public double dryInARow(LocalDate first, int days) {
        double odds = 1 - wetOdds(first);
        for (int day = 1; day < days; day++) {
            odds *= 1 - chain(first.plusDays(day)).wetAfterDry();
        }
        return odds;
    }

    /** Draws days, the wet ones set; the same seed draws the same days. */
    public BitSet draw(LocalDate first, int days, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        BitSet wet = new BitSet(days);
        for (int day = 0; day < days; day++) {
            WetDryChain chain = chain(first.plusDays(day));
            double odds = day == 0 ? chain.wetShare() : wet.get(day - 1) ? chain.wetAfterWet() : chain.wetAfterDry();
            wet.set(day, random.nextDouble() < odds);
        }
        return wet;
    }
}
