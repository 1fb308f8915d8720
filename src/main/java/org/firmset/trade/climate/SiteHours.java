package org.firmset.trade.climate;

import java.time.Duration;

/**
 * What a site day loses before any work: hours left = the lesser of light and own limit, less set-up, meals and pack-up;
 * never under nothing. Common practice, no source.
 *
 * @param setUp unloading, pitching camp, finding tools
 * @param packUp tidying, covering, loading
 * @param ownLimit the longest that people want to be on their feet, set-up and meals included; up to 24 h
 */
public record SiteHours(Duration setUp, Duration meals, Duration packUp, Duration ownLimit) {
    private static final Duration LONGEST = Duration.ofDays(1);

    public SiteHours {
        within("setUp", setUp);
        within("meals", meals);
        within("packUp", packUp);
        within("ownLimit", ownLimit);
    }

    /** What is left of the light of a day for work. */
    public Duration usable(Light light) {
        Duration day = light.length().compareTo(ownLimit) < 0 ? light.length() : ownLimit;
        Duration left = day.minus(setUp).minus(meals).minus(packUp);
        return left.isNegative() ? Duration.ZERO : left;
    }

    private static void within(String name, Duration value) {
        if (value.isNegative() || value.compareTo(LONGEST) > 0) {
            throw new IllegalArgumentException(name + " [" + value + "] must be from nothing to a day");
        }
    }
}
