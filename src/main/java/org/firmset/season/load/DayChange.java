package org.firmset.season.load;

import java.math.BigDecimal;
import java.util.Map;
import org.firmset.measure.Mass;

/**
 * What came otherwise on the day a trip sets out.
 *
 * @param trip id of the trip, the date of its first day
 * @param had by material: how many packs could be had for this trip at the most; what is not named, as planned
 * @param trailerStaysHome whether the trailer is not towed
 * @param morePeople mass of people and things that ride along and were not counted
 */
public record DayChange(String trip, Map<String, Integer> had, boolean trailerStaysHome, Mass morePeople) {
    public DayChange {
        had = Map.copyOf(had);
        if (had.values().stream().anyMatch(packs -> packs < 0)
                || morePeople.value().signum() < 0) {
            throw new IllegalArgumentException(
                    "packs had %s and mass of more people [%s] must not be negative".formatted(had, morePeople));
        }
    }

    /** Only less to be had. */
    public static DayChange had(String trip, Map<String, Integer> had) {
        return new DayChange(trip, had, false, new Mass(BigDecimal.ZERO));
    }
}
