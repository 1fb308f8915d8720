package org.firmset.plan.check;

import java.math.BigInteger;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Load;
import org.firmset.plan.Rule;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.Trip;

/** Rule 5, deliveries: a supplier comes when somebody is there and only as the offer says. */
final class DeliveryRules {
    private final Facts facts;
    private final Breaches breaches;

    DeliveryRules(Facts facts, Breaches breaches) {
        this.facts = facts;
        this.breaches = breaches;
    }

    void check() {
        List<Run> deliveries = facts.schedule().runs().stream()
                .filter(run -> run.kind() == RunKind.DELIVERY)
                .toList();
        comeOnceADate(deliveries);
        for (Run delivery : deliveries) {
            comesOnDayOfItsTrip(delivery);
            facts.offer(delivery.offer())
                    .ifPresentOrElse(offer -> keepsOffer(offer, delivery), () -> offerIsNotKnown(delivery));
        }
    }

    private record Visit(String offer, LocalDate date) {}

    private void comeOnceADate(List<Run> deliveries) {
        Set<Visit> seen = new HashSet<>();
        for (Run delivery : deliveries) {
            if (!seen.add(new Visit(delivery.offer(), delivery.date()))) {
                breach("Offer [%s] delivers more than once on %s", nameOf(delivery), delivery.date());
            }
        }
    }

    private String nameOf(Run delivery) {
        return facts.offer(delivery.offer()).map(DeliveryOffer::name).orElse(delivery.offer());
    }

    private void comesOnDayOfItsTrip(Run delivery) {
        if (facts.siteDay(delivery.date()).isEmpty()) {
            breach("The delivery of [%s] comes on %s, which is not a site day", nameOf(delivery), delivery.date());
        } else {
            facts.trip(delivery.trip())
                    .filter(trip -> !lastsOver(trip, delivery.date()))
                    .ifPresent(trip -> isOfAnotherTrip(trip, delivery));
        }
    }

    private static boolean lastsOver(Trip trip, LocalDate date) {
        return !date.isBefore(trip.firstDate()) && !date.isAfter(trip.lastDate());
    }

    private void isOfAnotherTrip(Trip trip, Run delivery) {
        breach(
                "The delivery of [%s] on %s is for trip [%s], which lasts from %s to %s",
                nameOf(delivery), delivery.date(), trip.id(), trip.firstDate(), trip.lastDate());
    }

    private void offerIsNotKnown(Run delivery) {
        breach("The delivery on %s is of offer [%s], which is not known", delivery.date(), delivery.offer());
    }

    private void keepsOffer(DeliveryOffer offer, Run delivery) {
        if (!delivery.broughtOn().equals(delivery.date())) {
            new DropRules(facts, breaches).check(offer, delivery);
        }
        isNotTooEarly(offer, delivery);
        isOnRightWeekday(offer, delivery);
        isInOpenMonth(offer, delivery);
        delivery.loads().forEach(load -> isBroughtByOffer(offer, delivery, load));
        isNotTooHeavy(offer, delivery);
    }

    private void isNotTooEarly(DeliveryOffer offer, Run delivery) {
        if (delivery.broughtOn().isBefore(offer.earliest())) {
            breach(
                    "Offer [%s] delivers on %s but can come from %s at the earliest",
                    offer.name(), delivery.broughtOn(), offer.earliest());
        }
    }

    private void isOnRightWeekday(DeliveryOffer offer, Run delivery) {
        if (!offer.weekdays().contains(delivery.broughtOn().getDayOfWeek())) {
            breach(
                    "Offer [%s] delivers on %s, a %s, but comes only on %s",
                    offer.name(),
                    delivery.broughtOn(),
                    delivery.broughtOn().getDayOfWeek(),
                    offer.weekdays().stream().sorted().toList());
        }
    }

    private void isInOpenMonth(DeliveryOffer offer, Run delivery) {
        if (offer.shutMonths().contains(delivery.broughtOn().getMonth())) {
            breach(
                    "Offer [%s] delivers on %s, but no truck gets to the site in %s",
                    offer.name(),
                    delivery.broughtOn(),
                    offer.shutMonths().stream().sorted().toList());
        }
    }

    private void isBroughtByOffer(DeliveryOffer offer, Run delivery, Load load) {
        if (facts.material(load.material()).isPresent() && !offer.materials().contains(load.material())) {
            breach(
                    "Offer [%s] does not bring material [%s], of which %s packs are to come on %s",
                    offer.name(), load.material(), load.packs(), delivery.date());
        }
    }

    private void isNotTooHeavy(DeliveryOffer offer, Run delivery) {
        BigInteger grams = Cargo.sum(facts.cargo(delivery), Cargo::grams);
        if (grams.compareTo(BigInteger.valueOf(offer.grams())) > 0) {
            breach(
                    "The delivery of [%s] on %s weighs %s g but its truck may carry %s g",
                    offer.name(), delivery.date(), grams, offer.grams());
        }
    }

    private void breach(String sentence, Object... parts) {
        breaches.add(Rule.RUNS, sentence, parts);
    }
}
