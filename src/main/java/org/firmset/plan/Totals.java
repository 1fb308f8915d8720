package org.firmset.plan;

/**
 * Sums of a plan. All money in cents.
 *
 * @param trips trips that are made
 * @param runs journeys with materials, deliveries included
 */
public record Totals(
        int trips,
        int runs,
        long tripCents,
        long extraRunCents,
        long deliveryCents,
        long generatorCents,
        long materialCents) {

    public long cents() {
        return tripCents + extraRunCents + deliveryCents + generatorCents + materialCents;
    }
}
