package org.firmset.season.ui;

import java.util.List;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.HaulTrailer;
import org.firmset.trade.haul.Outfit;
import org.firmset.trade.haul.TrailerDeck;
import org.firmset.trade.haul.VehicleAxles;
import org.jspecify.annotations.Nullable;

/**
 * Where the parts of an outfit lie along its length, in millimetres behind its nose, for a drawing of it. What nobody
 * measured is drawn about where such things are.
 */
record RigMeasures(
        long nose,
        long bedFront,
        long bedLength,
        long tail,
        @Nullable Long frontAxle,
        @Nullable Long rearAxle,
        @Nullable Long hitch,
        @Nullable Long deckFront,
        @Nullable Long deckLength,
        @Nullable Long trailerAxle,
        long end) {
    /** Drawn in front of the front axle, and of a bed whose vehicle nobody measured. */
    private static final long NOSE = 900;

    private static final long CAB = 2300;
    private static final long BUMPER = 150;
    private static final long BALL = 250;
    private static final long DRAWBAR = 1200;

    static RigMeasures of(Outfit outfit) {
        VehicleAxles axles = outfit.vehicle().axles();
        Bay bay = outfit.vehicle().bay();
        long bedFront = axles == null ? CAB : NOSE + axles.bayFrontMillimetres();
        long bedLength = outfit.lengthOf(bay);
        long tail = bedFront + bedLength + BUMPER;
        Long front = axles == null ? null : NOSE;
        Long rear = axles == null ? null : (Long) (NOSE + axles.wheelbaseMillimetres());
        HaulTrailer trailer = outfit.trailer();
        if (trailer == null) {
            return new RigMeasures(0, bedFront, bedLength, tail, front, rear, null, null, null, null, tail);
        }
        Long measured = axles == null ? null : axles.hitchMillimetres();
        long hitch = measured == null ? tail + BALL : NOSE + measured;
        TrailerDeck deck = trailer.deck();
        long deckFront = hitch + (deck == null ? DRAWBAR : deck.frontMillimetres());
        long deckLength = outfit.lengthOf(trailer.bay());
        Long axle = deck == null ? null : (Long) (hitch + deck.axleMillimetres());
        return new RigMeasures(
                0, bedFront, bedLength, tail, front, rear, hitch, deckFront, deckLength, axle, deckFront + deckLength);
    }

    /** Front edge of a bay; the roof is drawn over the seats. */
    long frontOf(Outfit outfit, String bay) {
        List<Bay> bays = outfit.bays();
        if (bays.getFirst().id().equals(bay)) {
            return bedFront;
        }
        HaulTrailer trailer = outfit.trailer();
        boolean onDeck = trailer != null && trailer.bay().id().equals(bay);
        return onDeck && deckFront != null ? deckFront : Math.max(0, bedFront - CAB / 2);
    }
}
