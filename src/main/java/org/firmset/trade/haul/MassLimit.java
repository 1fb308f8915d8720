package org.firmset.trade.haul;

import java.util.Map;

/**
 * One limit on the mass in the bays of a rig. The sum over the bays of mass x share / 1000 may not be over
 * {@code grams}. Payload, trailer rating and axle are all of this form: a trailer's tongue, say, puts 120 of each 1000
 * grams on the vehicle.
 *
 * @param sharePermille for each bay id how many of 1000 grams count; a bay that is not named does not count
 */
public record MassLimit(String name, long grams, Map<String, Integer> sharePermille) {
    public MassLimit {
        sharePermille = Map.copyOf(sharePermille);
        if (grams < 0) {
            throw new IllegalArgumentException("grams [%d] of limit [%s] must not be negative".formatted(grams, name));
        }
    }

    public int shareOf(String bay) {
        return sharePermille.getOrDefault(bay, 0);
    }
}
