package org.firmset.season.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.firmset.homestead.DeliveryTerms;
import org.firmset.homestead.Homestead;
import org.firmset.measure.Cash;
import org.firmset.measure.Hours;
import org.firmset.measure.Mass;
import org.firmset.measure.Units;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Run;
import org.firmset.season.words.Dates;
import org.jspecify.annotations.Nullable;

/** What to know of a delivery before it comes. Cautions are common practice; the supplier's own terms come first. */
final class DeliveryNotes {
    private final Homestead homestead;

    DeliveryNotes(Homestead homestead) {
        this.homestead = homestead;
    }

    /**
     * @param goodsCents what its packs are worth
     * @param mass of all of them
     */
    List<String> of(Run delivery, DeliveryOffer offer, long goodsCents, Mass mass) {
        DeliveryTerms terms = homestead.suppliers().stream()
                .filter(s -> s.key().equals(offer.id()))
                .map(s -> Objects.requireNonNull(s.delivery()))
                .findFirst()
                .orElseThrow();
        List<String> notes = new ArrayList<>();
        dropped(delivery, notes);
        smallOrder(offer, goodsCents, notes);
        truck(terms, mass, notes);
        readyMix(terms.placeWithin(), notes);
        return notes;
    }

    private static void dropped(Run delivery, List<String> notes) {
        if (delivery.isDropped()) {
            notes.add(
                    ("Order it for %s: it is dropped with nobody there. Mark the spot on hard ground beforehand, clear of"
                                    + " wires, slopes and the way in; count it when you come.")
                            .formatted(Dates.day(delivery.broughtOn())));
        }
    }

    private void smallOrder(DeliveryOffer offer, long goodsCents, List<String> notes) {
        long more = offer.smallOrderCents(goodsCents);
        if (more > 0) {
            notes.add("Its goods are worth %s, under the least order of %s: that takes %s on top of the fee."
                    .formatted(money(goodsCents), money(offer.leastOrderCents()), money(more)));
        }
    }

    private String money(long cents) {
        return Cash.show(cents, homestead.currency());
    }

    private void truck(DeliveryTerms terms, Mass mass, List<String> notes) {
        Mass track = homestead.place().trackLimit();
        Mass empty = terms.truckEmptyMass();
        if (track != null && empty != null) {
            Mass whole = new Mass(empty.value().add(mass.value()));
            notes.add(
                    ("With its truck it weighs %s, and the track is down for %s: tell the driver, and send it back when"
                                    + " the track is soft.")
                            .formatted(show(whole), show(track)));
        }
    }

    private String show(Mass mass) {
        return Units.show(mass, homestead.units());
    }

    /** The usual limit is that of ASTM C94, from memory: discharge within 90 minutes of the first mixing. */
    private static void readyMix(@Nullable Hours within, List<String> notes) {
        if (within != null) {
            notes.add(("Ready-mix: all of it placed within %s of the first mixing, the drive included. Forms, steel,"
                            + " inspection, crew, tools and a place to wash out are ready before it leaves the plant; no"
                            + " water is added beyond what the ticket allows. ASTM C94 is known for 90 minutes to"
                            + " discharge; the plant's terms and local code come first.")
                    .formatted(within));
        }
    }
}
