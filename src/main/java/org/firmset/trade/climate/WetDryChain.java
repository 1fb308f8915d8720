package org.firmset.trade.climate;

/**
 * Whether days are wet or dry, each depending on the day before only: a first-order Markov chain with two states
 * (Gabriel and Neumann 1962; Richardson 1981, both from memory; checks WX-01 to WX-04).
 *
 * @param wetAfterDry odds of a wet day after a dry one, 0 to 1
 * @param wetAfterWet odds of a wet day after a wet one, 0 to 1; not 1 together with a wetAfterDry of 0
 */
public record WetDryChain(double wetAfterDry, double wetAfterWet) {
    /**
     * How much likelier a wet day is after a wet one than after a dry one where nothing is known: between Tel Aviv's 0.412 and
     * Seattle's 0.429 (WX-01, WX-03). Other places differ.
     */
    public static final double USUAL_PERSISTENCE = 0.42;

    public WetDryChain {
        Demand.within("wetAfterDry", wetAfterDry, 0, 1);
        Demand.within("wetAfterWet", wetAfterWet, 0, 1);
        if (wetAfterDry == 0 && wetAfterWet == 1) {
            throw new IllegalArgumentException("wetAfterDry [0] and wetAfterWet [1] leave the share of wet days open");
        }
    }

    /**
     * The chain with a long-run share of wet days and wetAfterWet = wetAfterDry + persistence. From these two follows
     * wetAfterDry = share x (1 - persistence).
     *
     * @param wetShare 0 to 1, such as wet days of a month over its days
     * @param persistence 0 (days know nothing of each other) to under 1
     */
    public static WetDryChain of(double wetShare, double persistence) {
        Demand.within("wetShare", wetShare, 0, 1);
        Demand.within("persistence", persistence, 0, Math.nextDown(1.0));
        double wetAfterDry = wetShare * (1 - persistence);
        return new WetDryChain(wetAfterDry, Math.min(1, wetAfterDry + persistence));
    }

    /** The chain of counted pairs of days, the earlier day first; at least one pair must begin dry and one wet. */
    public static WetDryChain counted(int dryDry, int dryWet, int wetDry, int wetWet) {
        return new WetDryChain((double) dryWet / (dryDry + dryWet), (double) wetWet / (wetDry + wetWet));
    }

    /** The share of wet days in the long run. */
    public double wetShare() {
        return wetAfterDry / (1 - persistence());
    }

    /** wetAfterWet - wetAfterDry, which is also how a day goes with the next (lag-1 correlation). */
    public double persistence() {
        return wetAfterWet - wetAfterDry;
    }

    /** Mean length of a run of wet days; endless when no wet day ends. */
    public double meanWetDays() {
        return 1 / (1 - wetAfterWet);
    }

    /** Mean length of a run of dry days; endless when no dry day ends. */
    public double meanDryDays() {
        return 1 / wetAfterDry;
    }

    /** Odds that the day after so many days is wet. @param days 0 or more */
    public double wetAfter(int days, boolean wetNow) {
        double now = wetNow ? 1 : 0;
        return wetShare() + (now - wetShare()) * Math.pow(persistence(), days);
    }

    /** Odds that this many days in a row are dry when nothing is known of the day before. @param days 1 or more */
    public double dryInARow(int days) {
        return (1 - wetShare()) * Math.pow(1 - wetAfterDry, days - 1.0);
    }
}
