package org.firmset.season.problem;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Pattern;
import org.firmset.homestead.Axles;
import org.firmset.homestead.Deck;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.homestead.Rack;
import org.firmset.homestead.Trailer;
import org.firmset.homestead.Vehicle;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Measured;
import org.firmset.measure.Volume;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.HaulTrailer;
import org.firmset.trade.haul.HaulVehicle;
import org.firmset.trade.haul.Outfit;
import org.firmset.trade.haul.Packs;
import org.firmset.trade.haul.RoofRack;
import org.firmset.trade.haul.TrailerDeck;
import org.firmset.trade.haul.VehicleAxles;
import org.jspecify.annotations.Nullable;

/**
 * The vehicle a homestead drives with, as the arithmetic of loads wants it: masses rounded up and ratings down to whole
 * grams.
 */
public final class OutfitWriter {
    /** Id of the bay in the vehicle. */
    public static final String BED = "bed";

    /** Id of the bay on its roof. */
    public static final String ROOF = "roof";

    /** Id of the bay on the trailer. */
    public static final String DECK = "deck";

    private static final Pattern LOOSE =
            Pattern.compile("(cubic (yard|foot|feet|metre|meter)|yd3|ft3|m3|ton|tonne)s?", Pattern.CASE_INSENSITIVE);

    private OutfitWriter() {}

    /** @param people all who ride along */
    public static Outfit of(Homestead homestead, Mass people) {
        Vehicle vehicle = homestead.driven().orElseThrow();
        @Nullable Trailer trailer = homestead.towed().orElse(null);
        return of(vehicle, trailer, people);
    }

    /**
     * Packs of a material to be placed in a bay. What is bought by a measure of volume or mass lies loose.
     *
     * @param neededFirst 1 for what is needed first on site, more for later
     */
    public static Packs packs(Material material, int count, int neededFirst) {
        Length longest = material.longest();
        return new Packs(
                material.key(),
                material.name(),
                count,
                mass(material.mass()),
                whole(material.volume(), 6, RoundingMode.CEILING),
                longest == null ? 0 : whole(longest, 3, RoundingMode.CEILING),
                material.dry(),
                material.upright(),
                LOOSE.matcher(material.pack()).matches(),
                neededFirst);
    }

    private static Outfit of(Vehicle vehicle, @Nullable Trailer trailer, Mass people) {
        return new Outfit(
                new HaulVehicle(
                        vehicle.name(),
                        rating(vehicle.grossRating()),
                        mass(vehicle.emptyMass()),
                        bay(BED, vehicle.name(), vehicle.bayVolume(), vehicle.longestPiece()),
                        axles(vehicle.axles()),
                        maybe(vehicle.combinationRating()),
                        maybe(vehicle.towRating()),
                        maybe(vehicle.tongueRating()),
                        roof(vehicle)),
                trailer == null ? null : trailer(trailer),
                mass(people),
                mass(vehicle.standingKit()));
    }

    private static HaulTrailer trailer(Trailer trailer) {
        return new HaulTrailer(
                trailer.name(),
                rating(trailer.grossRating()),
                mass(trailer.emptyMass()),
                trailer.tonguePercent(),
                bay(DECK, trailer.name(), trailer.deckVolume(), trailer.longestPiece()),
                deck(trailer.deck()));
    }

    private static @Nullable VehicleAxles axles(@Nullable Axles axles) {
        return axles == null
                ? null
                : new VehicleAxles(
                        millimetres(axles.wheelbase()),
                        rating(axles.frontRating()),
                        rating(axles.rearRating()),
                        mass(axles.frontEmpty()),
                        millimetres(axles.bayFront()),
                        millimetres(axles.bayLength()),
                        millimetres(axles.seats()),
                        millimetres(axles.kit()),
                        axles.hitch() == null ? null : millimetres(axles.hitch()));
    }

    private static @Nullable RoofRack roof(Vehicle vehicle) {
        Rack rack = vehicle.roof();
        return rack == null
                ? null
                : new RoofRack(
                        bay(ROOF, "Roof of " + vehicle.name(), rack.volume(), rack.longestPiece()),
                        rating(rack.rating()),
                        rack.middle() == null ? null : millimetres(rack.middle()));
    }

    private static @Nullable TrailerDeck deck(@Nullable Deck deck) {
        return deck == null
                ? null
                : new TrailerDeck(
                        millimetres(deck.axle()),
                        millimetres(deck.front()),
                        millimetres(deck.length()),
                        maybe(deck.axleRating()));
    }

    private static Bay bay(String id, String name, Volume volume, Length longestPiece) {
        return new Bay(id, name, whole(volume, 6, RoundingMode.FLOOR), whole(longestPiece, 3, RoundingMode.FLOOR));
    }

    private static @Nullable Long maybe(@Nullable Mass rating) {
        return rating == null ? null : rating(rating);
    }

    private static long rating(Mass mass) {
        return whole(mass, 3, RoundingMode.FLOOR);
    }

    private static long mass(Mass mass) {
        return whole(mass, 3, RoundingMode.CEILING);
    }

    private static long millimetres(Length length) {
        return whole(length, 3, RoundingMode.HALF_UP);
    }

    private static long whole(Measured measured, int decimals, RoundingMode mode) {
        BigDecimal value = measured.value().movePointRight(decimals);
        return value.setScale(0, mode).longValueExact();
    }
}
