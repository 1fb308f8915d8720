package org.firmset.season.problem;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Person;
import org.firmset.homestead.Trailer;
import org.firmset.homestead.Vehicle;
import org.firmset.measure.Mass;
import org.firmset.measure.Measured;
import org.firmset.season.day.OpenDay;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.CargoRoom;
import org.firmset.trade.haul.EvenLoad;
import org.firmset.trade.haul.LimitKind;
import org.firmset.trade.haul.MassLimit;
import org.firmset.trade.haul.Outfit;
import org.firmset.trade.haul.Rig;

/** What the people of a trip drive, as far as cargo goes. */
public final class RigWriter {
    private static final int WHOLE = 1000;

    private final Homestead homestead;
    private final Vehicle vehicle;
    private final List<Trailer> usual;

    public RigWriter(Homestead homestead) {
        this.homestead = homestead;
        vehicle = homestead.driven().orElseThrow();
        usual = homestead.towed().stream().toList();
    }

    /** On the day most mass of people rides along. */
    public Rig rigFor(List<OpenDay> days) {
        return rigFor(days, new Mass(BigDecimal.ZERO), true);
    }

    /** @param more mass that rides along besides the people of the days */
    public Rig rigFor(List<OpenDay> days, Mass more, boolean withTrailer) {
        return rig(new Mass(mostPeople(days).value().add(more.value())), withTrailer);
    }

    /** Of the day on which most mass of people is there. */
    public static Mass mostPeople(List<OpenDay> days) {
        return days.stream()
                .map(OpenDay::people)
                .map(RigWriter::massOf)
                .max(Comparator.comparing(Measured::value))
                .orElse(new Mass(BigDecimal.ZERO));
    }

    Rig rig(Mass people) {
        return rig(people, true);
    }

    private Rig rig(Mass people, boolean withTrailer) {
        Outfit whole = OutfitWriter.of(homestead, people);
        Outfit outfit = withTrailer ? whole : whole.withoutTrailer();
        List<Trailer> trailer = withTrailer ? usual : List.of();
        List<MassLimit> limits = new ArrayList<>();
        addPayload(limits, outfit, people, trailer);
        trailer.forEach(t -> addRatings(limits, t));
        addMeasured(limits, outfit, trailer);
        String id = vehicle.key();
        String name = vehicle.name();
        if (!trailer.isEmpty()) {
            id += "+" + trailer.getFirst().key();
            name += " with " + trailer.getFirst().name();
        }
        return new Rig(id, name, outfit.bays(), limits);
    }

    private void addPayload(List<MassLimit> limits, Outfit outfit, Mass people, List<Trailer> trailer) {
        List<Mass> onBoard = new ArrayList<>(List.of(vehicle.standingKit(), people));
        Map<String, Integer> shares = new HashMap<>();
        for (Bay bay : outfit.bays()) {
            shares.put(bay.id(), WHOLE);
        }
        for (Trailer towed : trailer) {
            BigDecimal tongueShare = BigDecimal.valueOf(towed.tonguePercent(), 2);
            onBoard.add(new Mass(towed.emptyMass().value().multiply(tongueShare)));
            shares.put(OutfitWriter.DECK, towed.tonguePercent() * 10);
        }
        Mass room = CargoRoom.of(vehicle.grossRating(), vehicle.emptyMass(), onBoard);
        limits.add(new MassLimit("payload of " + vehicle.name(), floor(room.value()), shares));
    }

    private void addRatings(List<MassLimit> limits, Trailer towed) {
        Mass deck = CargoRoom.of(towed.grossRating(), towed.emptyMass(), List.of());
        Mass tow = CargoRoom.of(Objects.requireNonNull(vehicle.towRating()), towed.emptyMass(), List.of());
        Map<String, Integer> onDeck = Map.of(OutfitWriter.DECK, WHOLE);
        limits.add(new MassLimit("rating of " + towed.name(), floor(deck.value()), onDeck));
        limits.add(new MassLimit("tow rating of " + vehicle.name(), floor(tow.value()), onDeck));
    }

    /** What somebody weighed and measured; left out, the limits before are all there are. */
    private void addMeasured(List<MassLimit> limits, Outfit outfit, List<Trailer> trailer) {
        add(limits, outfit, LimitKind.FRONT_AXLE, "front axle of " + vehicle.name());
        add(limits, outfit, LimitKind.REAR_AXLE, "rear axle of " + vehicle.name());
        add(limits, outfit, LimitKind.ROOF, "roof rack of " + vehicle.name());
        for (Trailer towed : trailer) {
            add(limits, outfit, LimitKind.TRAILER_AXLE, "axle of " + towed.name());
            add(limits, outfit, LimitKind.TONGUE_RATING, "hitch of " + vehicle.name());
            add(limits, outfit, LimitKind.COMBINATION, vehicle.name() + " and " + towed.name() + " together");
        }
    }

    private static void add(List<MassLimit> limits, Outfit outfit, LimitKind kind, String name) {
        EvenLoad.limit(outfit, kind, name).ifPresent(limits::add);
    }

    private static Mass massOf(List<Person> people) {
        return new Mass(people.stream().map(p -> p.mass().value()).reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    private static long floor(BigDecimal kilograms) {
        return kilograms.movePointRight(3).setScale(0, RoundingMode.FLOOR).longValueExact();
    }
}
