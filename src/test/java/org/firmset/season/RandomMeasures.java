package org.firmset.season;

import org.firmset.homestead.Axles;
import org.firmset.homestead.Deck;
import org.firmset.homestead.Rack;
import org.firmset.homestead.Trailer;
import org.firmset.homestead.Vehicle;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

/**
 * Axles, racks and decks made by chance. Their dice are their own, so that a homestead is otherwise what its seed always
 * made it.
 */
final class RandomMeasures {
    private RandomMeasures() {}

    static Vehicle added(Vehicle vehicle, boolean tows) {
        Dice dice = new Dice(vehicle.hashCode());
        double gross = vehicle.grossRating().amount();
        return new Vehicle(
                vehicle.key(),
                vehicle.name(),
                vehicle.grossRating(),
                vehicle.emptyMass(),
                vehicle.standingKit(),
                vehicle.bayVolume(),
                vehicle.longestPiece(),
                vehicle.towRating(),
                dice.chance(30) ? Mass.ofKilograms(gross + dice.between(800, 3000)) : null,
                tows && dice.chance(30) ? Mass.ofKilograms(dice.between(80, 300)) : null,
                dice.chance(40) ? axles(dice, vehicle.emptyMass().amount()) : null,
                dice.chance(20) ? rack(dice) : null);
    }

    private static Axles axles(Dice dice, double empty) {
        int wheelbase = dice.between(280, 400);
        int bayFront = wheelbase - dice.between(60, 150);
        int bayLength = Math.min(dice.between(140, 210), wheelbase * 3 / 2 - bayFront);
        int frontEmpty = (int) (empty * dice.between(52, 60) / 100);
        return new Axles(
                centimetres(wheelbase),
                Mass.ofKilograms(frontEmpty + dice.between(150, 600)),
                Mass.ofKilograms(empty - frontEmpty + dice.between(300, 1200)),
                Mass.ofKilograms(frontEmpty),
                centimetres(bayFront),
                centimetres(bayLength),
                centimetres(dice.between(120, 200)),
                centimetres(dice.between(150, 400)),
                centimetres(Math.max(wheelbase, bayFront + bayLength + dice.between(0, 30))));
    }

    private static Rack rack(Dice dice) {
        return new Rack(
                Mass.ofKilograms(dice.between(40, 150)),
                Volume.ofCubicMetres(dice.between(2, 8) / 10.0),
                centimetres(dice.between(200, 400)),
                dice.chance(50) ? centimetres(dice.between(120, 300)) : null);
    }

    static Trailer added(Trailer trailer) {
        Dice dice = new Dice(trailer.hashCode());
        return new Trailer(
                trailer.key(),
                trailer.name(),
                trailer.grossRating(),
                trailer.emptyMass(),
                trailer.tonguePercent(),
                trailer.deckVolume(),
                trailer.longestPiece(),
                dice.chance(50) ? deck(dice, trailer.emptyMass().amount()) : null);
    }

    private static @Nullable Deck deck(Dice dice, double empty) {
        int axle = dice.between(250, 400);
        int length = dice.between(220, 400);
        return new Deck(
                centimetres(axle),
                centimetres(Math.max(10, axle - length * dice.between(52, 65) / 100)),
                centimetres(length),
                dice.chance(60) ? Mass.ofKilograms(empty + dice.between(100, 2000)) : null);
    }

    private static Length centimetres(int centimetres) {
        return Length.ofMetres(centimetres / 100.0);
    }
}
