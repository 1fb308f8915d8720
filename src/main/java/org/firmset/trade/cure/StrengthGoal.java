package org.firmset.trade.cure;

/**
 * A share of the 28-day strength that is waited for, and how the wait is reckoned.
 *
 * @param share over 0, up to 1
 */
public record StrengthGoal(double share, StrengthCurve curve, Ageing ageing) {
    /** What sums of ten years of days may lose to binary fractions, as a share of the sum. */
    private static final double FORGIVEN = 1e-10;

    public StrengthGoal {
        Demand.share(share);
    }

    /** Days at the reference temperature until the share is there. */
    public double daysNeeded() {
        return curve.daysTo(share);
    }

    /** The sum of days that counts as {@link #daysNeeded}. */
    double enough() {
        return daysNeeded() * (1 - FORGIVEN);
    }
}
