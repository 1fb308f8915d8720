package org.firmset.homestead.file;

import java.math.BigDecimal;
import java.util.List;
import org.firmset.homestead.Axles;
import org.firmset.homestead.Deck;
import org.firmset.homestead.Trailer;
import org.firmset.homestead.Vehicle;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.jspecify.annotations.Nullable;

/** Axles carry at least themselves, and what was measured fits together. */
final class AxleRules {
    /** A bay that reaches further behind the rear axle than half a wheelbase was measured from the wrong end. */
    private static final BigDecimal FURTHEST = new BigDecimal("1.5");

    private AxleRules() {}

    static void check(Vehicle vehicle, boolean tows, String pointer, List<Fault> faults) {
        @Nullable Axles axles = vehicle.axles();
        if (axles == null) {
            return;
        }
        String here = pointer + "/axles";
        checkMasses(vehicle, axles, here, faults);
        checkBay(axles, here, faults);
        checkHitch(axles, tows, here, faults);
    }

    private static void checkMasses(Vehicle vehicle, Axles axles, String here, List<Fault> faults) {
        BigDecimal rear =
                vehicle.emptyMass().value().subtract(axles.frontEmpty().value());
        if (rear.signum() <= 0) {
            faults.add(new Fault(
                    here + "/frontEmpty",
                    axles.frontEmpty().toString(),
                    "leaves nothing of the empty mass " + vehicle.emptyMass() + " for the rear axle",
                    "Write what a scale shows under the front axle alone"));
            return;
        }
        if (axles.frontRating().value().compareTo(axles.frontEmpty().value()) < 0) {
            faults.add(new Fault(
                    here + "/frontRating",
                    axles.frontRating().toString(),
                    "is under what the front axle carries of the empty vehicle, " + axles.frontEmpty(),
                    "Read the rating again, or weigh the front axle again"));
        }
        if (axles.rearRating().value().compareTo(rear) < 0) {
            faults.add(new Fault(
                    here + "/rearRating",
                    axles.rearRating().toString(),
                    "is under what the rear axle carries of the empty vehicle, " + new Mass(rear),
                    "Read the rating again, or weigh the front axle again"));
        }
    }

    private static void checkBay(Axles axles, String here, List<Fault> faults) {
        BigDecimal end = axles.bayFront().value().add(axles.bayLength().value());
        if (end.compareTo(axles.wheelbase().value().multiply(FURTHEST)) > 0) {
            faults.add(new Fault(
                    here + "/bayFront",
                    axles.bayFront().toString(),
                    "puts the rear end of the bay " + new Length(end)
                            + " behind the front axle, more than half a wheelbase behind the rear one",
                    "Measure from the front axle to the front edge of the bay, and the bay's length"));
        }
    }

    private static void checkHitch(Axles axles, boolean tows, String here, List<Fault> faults) {
        @Nullable Length hitch = axles.hitch();
        if (hitch == null) {
            if (tows) {
                faults.add(new Fault(
                        here + "/hitch",
                        "",
                        "is needed for a vehicle that tows",
                        "Measure from the front axle to the ball, or leave the trailer at home"));
            }
        } else if (hitch.value().compareTo(axles.wheelbase().value()) < 0) {
            faults.add(new Fault(
                    here + "/hitch",
                    hitch.toString(),
                    "is in front of the rear axle, which lies " + axles.wheelbase() + " behind the front one",
                    "Measure from the front axle, not from the rear one"));
        }
    }

    static void check(Trailer trailer, String pointer, List<Fault> faults) {
        @Nullable Deck deck = trailer.deck();
        if (deck == null) {
            return;
        }
        BigDecimal onWheels = BigDecimal.valueOf(100L - trailer.tonguePercent(), 2);
        // what rests on the tongue tells where the middle of the empty trailer lies; that is on its deck
        BigDecimal middle = deck.axle().value().multiply(onWheels);
        BigDecimal end = deck.front().value().add(deck.length().value());
        if (middle.compareTo(deck.front().value()) < 0 || middle.compareTo(end) > 0) {
            faults.add(new Fault(
                    pointer + "/deck/axle",
                    deck.axle().toString(),
                    "puts the middle of the empty trailer, with " + trailer.tonguePercent() + " % on its tongue, "
                            + new Length(middle) + " behind the coupler; its deck lies from " + deck.front() + " to "
                            + new Length(end),
                    "Measure coupler, deck and axle again, or weigh the tongue"));
        }
        @Nullable Mass rating = deck.axleRating();
        BigDecimal own = trailer.emptyMass().value().multiply(onWheels);
        if (rating != null && rating.value().compareTo(own) < 0) {
            faults.add(new Fault(
                    pointer + "/deck/axleRating",
                    rating.toString(),
                    "is under what the axle carries of the empty trailer, " + new Mass(own),
                    "Read the rating again, or weigh the trailer"));
        }
    }
}
