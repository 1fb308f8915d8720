package org.firmset.plan;

/**
 * What may be spent in a calendar month.
 *
 * @param centsAMonth in cents, 0 or more
 * @param hard true when no plan may spend more; false when the limit is kept as far as any plan that was looked at keeps
 *     it, before all else
 */
public record SpendingLimit(long centsAMonth, boolean hard) {
    public SpendingLimit {
        Require.notNegative(centsAMonth, "centsAMonth", "the", "spending limit");
    }
}
