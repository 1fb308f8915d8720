package org.firmset.trade.climate;

/**
 * How the sun of single days spreads about its mean: dry days are brighter than wet ones (Richardson 1981, from memory), and
 * days of either kind fall about their own mean by a normal distribution.
 *
 * @param wetShare sun of a wet day as a share of a dry day's, over 0 to 1
 * @param deviationShare standard deviation within a kind of day, as a share of its mean, over 0 to 1
 */
public record SunSpread(double wetShare, double deviationShare) {
    /** Common practice, no source: half the sun on wet days, single days 30 % off. */
    public static final SunSpread USUAL = new SunSpread(0.5, 0.3);

    private static final double SMALLEST = 1e-6;
    private static final int HALVINGS = 60;

    public SunSpread {
        Demand.within("wetShare", wetShare, SMALLEST, 1);
        Demand.within("deviationShare", deviationShare, SMALLEST, 1);
    }

    /**
     * The mean sun of days whose odds of rain are not the usual ones, such as forecast days: dry days keep their sun.
     *
     * @param usualHours mean at the usual odds, 0 to 24
     * @param usualWetOdds 0 to 1
     * @param wetOdds 0 to 1
     */
    public double meanHours(double usualHours, double usualWetOdds, double wetOdds) {
        return dryHours(usualHours, usualWetOdds) * (1 - wetOdds + wetOdds * wetShare);
    }

    private double dryHours(double meanHours, double wetOdds) {
        Demand.within("meanHours", meanHours, 0, 24);
        Demand.within("wetOdds", wetOdds, 0, 1);
        return meanHours / (1 - wetOdds + wetOdds * wetShare);
    }

    /**
     * Hours of full sun that a day stays under with the odds of a percentile: of the 20th, one day in five has less.
     *
     * @param meanHours of all days, 0 to 24
     * @param wetOdds odds of a wet day, 0 to 1
     * @param percent 1 to 99
     */
    public double hours(double meanHours, double wetOdds, int percent) {
        Demand.within("percent", percent, 1, 99);
        double dry = dryHours(meanHours, wetOdds);
        if (meanHours == 0) {
            return 0;
        }
        Bell dryDays = new Bell(dry, dry * deviationShare);
        Bell wetDays = new Bell(dry * wetShare, dry * wetShare * deviationShare);
        double low = 0;
        double high = 24 / wetShare;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            double odds = wetOdds * wetDays.under(middle) + (1 - wetOdds) * dryDays.under(middle);
            if (odds < percent / 100.0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
