package org.firmset.plan.check;

import java.time.LocalDate;
import java.util.Optional;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Material;
import org.firmset.plan.Rule;
import org.firmset.plan.Run;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Trip;

/** Rule 5, what is dropped while nobody is there: between two possible trips, for the first date of the later one. */
final class DropRules {
    private final Facts facts;
    private final Breaches breaches;

    DropRules(Facts facts, Breaches breaches) {
        this.facts = facts;
        this.breaches = breaches;
    }

    /** @param delivery one that comes on another date than its own */
    void check(DeliveryOffer offer, Run delivery) {
        if (offer.attended()) {
            breach(
                    "Offer [%s] delivers on %s for %s, but somebody must be there",
                    offer.name(), delivery.broughtOn(), delivery.date());
        }
        facts.trip(delivery.trip()).ifPresent(trip -> isBeforeItsTrip(offer, delivery, trip));
        if (delivery.broughtOn().isBefore(facts.problem().statusDate())) {
            breach(
                    "Offer [%s] drops goods on %s, before the status date %s",
                    offer.name(), delivery.broughtOn(), facts.problem().statusDate());
        }
        facts.cargo(delivery).stream()
                .filter(cargo -> cargo.material().dry())
                .forEach(cargo -> getsWet(offer, delivery, cargo.material()));
    }

    private void isBeforeItsTrip(DeliveryOffer offer, Run delivery, Trip trip) {
        if (!delivery.date().equals(trip.firstDate())) {
            breach(
                    "Offer [%s] drops goods on %s for %s, but only for the first date %s of the trip",
                    offer.name(), delivery.broughtOn(), delivery.date(), trip.firstDate());
        }
        if (!delivery.broughtOn().isBefore(trip.firstDate())) {
            breach(
                    "Offer [%s] drops goods on %s, after the trip of %s has begun",
                    offer.name(), delivery.broughtOn(), trip.firstDate());
        }
        lastSiteDayBefore(trip.firstDate())
                .filter(last -> !delivery.broughtOn().isAfter(last))
                .ifPresent(last -> breach(
                        "Offer [%s] drops goods on %s for %s, but the possible trip before lasts to %s",
                        offer.name(), delivery.broughtOn(), delivery.date(), last));
    }

    private Optional<LocalDate> lastSiteDayBefore(LocalDate date) {
        return facts.problem().trips().stream()
                .flatMap(trip -> trip.days().stream())
                .map(SiteDay::date)
                .filter(day -> day.isBefore(date))
                .max(LocalDate::compareTo);
    }

    private void getsWet(DeliveryOffer offer, Run delivery, Material material) {
        breach(
                "Offer [%s] drops [%s] on %s, which must be kept dry, with nobody there to stow it",
                offer.name(), material.name(), delivery.broughtOn());
    }

    private void breach(String sentence, Object... parts) {
        breaches.add(Rule.RUNS, sentence, parts);
    }
}
