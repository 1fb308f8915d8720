package org.firmset.plan;

import java.time.LocalDate;
import java.util.Map;

/**
 * What no plan can beat.
 *
 * @param earliestFinish for each subproject with work left: no plan finishes it sooner
 * @param fewestTrips no plan makes do with fewer trips
 * @param leastCents no plan costs less
 */
public record Bound(Map<String, LocalDate> earliestFinish, int fewestTrips, long leastCents) {
    public Bound {
        earliestFinish = Map.copyOf(earliestFinish);
    }
}
