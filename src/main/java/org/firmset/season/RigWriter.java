package org.firmset.season;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Person;
import org.firmset.homestead.Trailer;
import org.firmset.homestead.Vehicle;
import org.firmset.measure.Mass;
import org.firmset.measure.Measured;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.CargoRoom;
import org.firmset.trade.haul.MassLimit;
import org.firmset.trade.haul.Rig;

/** What the people of a trip drive, as far as cargo goes. */
final class RigWriter {
    static final String BED = "bed";
    static final String DECK = "deck";
    private static final int WHOLE = 1000;

    private final Vehicle vehicle;
    private final List<Trailer> trailer;

    RigWriter(Homestead homestead) {
        vehicle = homestead.vehicles().stream()
                .filter(v -> v.key().equals(homestead.travel().vehicle()))
                .findFirst()
                .orElseThrow();
        trailer = homestead.trailers().stream()
                .filter(t -> t.key().equals(homestead.travel().trailer()))
                .toList();
    }

    /** On the day most mass of people rides along. */
    Rig rigFor(List<OpenDay> days) {
        return rigFor(days, new Mass(BigDecimal.ZERO), true);
    }

    /** @param more mass that rides along besides the people of the days */
    Rig rigFor(List<OpenDay> days, Mass more, boolean withTrailer) {
        Mass planned = days.stream()
                .map(OpenDay::people)
                .map(RigWriter::massOf)
                .max(Comparator.comparing(Measured::value))
                .orElse(new Mass(BigDecimal.ZERO));
        Mass people = new Mass(planned.value().add(more.value()));
        List<Bay> bays = new ArrayList<>();
        List<MassLimit> limits = new ArrayList<>();
        bays.add(new Bay(
                BED,
                vehicle.name(),
                floor(vehicle.bayVolume().value(), 6),
                floor(vehicle.longestPiece().value(), 3)));
        if (trailer.isEmpty() || !withTrailer) {
            Mass room =
                    CargoRoom.of(vehicle.grossRating(), vehicle.emptyMass(), List.of(vehicle.standingKit(), people));
            limits.add(new MassLimit("payload of " + vehicle.name(), floor(room.value(), 3), Map.of(BED, WHOLE)));
            return new Rig(vehicle.key(), vehicle.name(), bays, limits);
        }
        Trailer towed = trailer.getFirst();
        bays.add(new Bay(
                DECK,
                towed.name(),
                floor(towed.deckVolume().value(), 6),
                floor(towed.longestPiece().value(), 3)));
        addLimits(limits, towed, people);
        return new Rig(vehicle.key() + "+" + towed.key(), vehicle.name() + " with " + towed.name(), bays, limits);
    }

    private void addLimits(List<MassLimit> limits, Trailer towed, Mass people) {
        BigDecimal tongueShare = BigDecimal.valueOf(towed.tonguePercent(), 2);
        Mass emptyTongue = new Mass(towed.emptyMass().value().multiply(tongueShare));
        Mass payload = CargoRoom.of(
                vehicle.grossRating(), vehicle.emptyMass(), List.of(vehicle.standingKit(), people, emptyTongue));
        Mass deck = CargoRoom.of(towed.grossRating(), towed.emptyMass(), List.of());
        Mass tow = CargoRoom.of(Objects.requireNonNull(vehicle.towRating()), towed.emptyMass(), List.of());
        limits.add(new MassLimit(
                "payload of " + vehicle.name(),
                floor(payload.value(), 3),
                Map.of(BED, WHOLE, DECK, towed.tonguePercent() * 10)));
        limits.add(new MassLimit("rating of " + towed.name(), floor(deck.value(), 3), Map.of(DECK, WHOLE)));
        limits.add(new MassLimit("tow rating of " + vehicle.name(), floor(tow.value(), 3), Map.of(DECK, WHOLE)));
    }

    private static Mass massOf(List<Person> people) {
        return new Mass(people.stream().map(p -> p.mass().value()).reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    private static long floor(BigDecimal value, int decimals) {
        return value.movePointRight(decimals).setScale(0, RoundingMode.FLOOR).longValueExact();
    }
}
