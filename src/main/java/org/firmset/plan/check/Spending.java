package org.firmset.plan.check;

import java.math.BigInteger;
import java.util.Collection;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.GeneratorUse;
import org.firmset.plan.Trip;

/** What one month takes, in cents. Sums are exact, so that none wraps round to be cheap. */
final class Spending {
    private static final BigInteger KILO = BigInteger.valueOf(1000);

    private final BigInteger centsPerKilowattHour;
    private BigInteger trips = BigInteger.ZERO;
    private BigInteger extraRuns = BigInteger.ZERO;
    private BigInteger deliveries = BigInteger.ZERO;
    private BigInteger materials = BigInteger.ZERO;
    private BigInteger wattHours = BigInteger.ZERO;

    Spending(long centsPerKilowattHour) {
        this.centsPerKilowattHour = BigInteger.valueOf(centsPerKilowattHour);
    }

    void onTrip(Trip trip) {
        trips = trips.add(BigInteger.valueOf(trip.cents()));
    }

    void onExtraRun(Trip trip) {
        extraRuns = extraRuns.add(BigInteger.valueOf(trip.extraRunCents()));
    }

    /** The fee, and where the goods are worth less than the least order that for a small one on top. */
    void onDelivery(DeliveryOffer offer, Collection<Cargo> goods) {
        deliveries = deliveries.add(BigInteger.valueOf(offer.cents()));
        BigInteger worth = Cargo.sum(goods, Cargo::cents);
        if (worth.compareTo(BigInteger.valueOf(offer.leastOrderCents())) < 0) {
            deliveries = deliveries.add(BigInteger.valueOf(offer.smallOrderCents()));
        }
    }

    void onPacks(Cargo cargo) {
        materials = materials.add(cargo.cents());
    }

    /** A generator that takes energy earns nothing. */
    void onFuel(GeneratorUse use) {
        wattHours = wattHours.add(BigInteger.valueOf(Math.max(0, use.wattHours())));
    }

    BigInteger cents() {
        return trips.add(extraRuns).add(deliveries).add(materials).add(fuel());
    }

    /** Rounded up once for the whole month. */
    private BigInteger fuel() {
        BigInteger[] whole = wattHours.multiply(centsPerKilowattHour).divideAndRemainder(KILO);
        return whole[1].signum() == 0 ? whole[0] : whole[0].add(BigInteger.ONE);
    }

    String inWords() {
        return "trips %s, extra runs %s, deliveries %s, materials %s, fuel %s"
                .formatted(trips, extraRuns, deliveries, materials, fuel());
    }
}
