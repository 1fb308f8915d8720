package org.firmset.trade.haul;

import java.util.ArrayList;
import java.util.List;

/** The floor of a bay, divided along its length into zones of the same length. */
final class Floor {
    private static final long SHORT_BED = 1000;
    private static final long LONG_DECK = 3000;

    final Bay bay;
    final long length;
    final int zones;
    private final boolean deck;

    Floor(Outfit outfit, Bay bay) {
        this.bay = bay;
        length = outfit.lengthOf(bay);
        HaulTrailer trailer = outfit.trailer();
        RoofRack roof = outfit.vehicle().roof();
        boolean onRoof = roof != null && bay.equals(roof.bay());
        deck = onRoof || (trailer != null && bay.equals(trailer.bay()));
        zones = onRoof || length < SHORT_BED ? 1 : length < LONG_DECK ? 3 : 4;
    }

    long from(int zone) {
        return length * zone / zones;
    }

    long room(int zone) {
        return bay.millilitres() * (zone + 1) / zones - bay.millilitres() * zone / zones;
    }

    /** What a pack takes of the {@code index}-th of the zones it lies across; the parts add up to the whole. */
    static long part(long whole, int zones, int index) {
        return whole * (index + 1) / zones - whole * index / zones;
    }

    /** The places for a pack: on as few zones as hold it, or across one border more. */
    List<Spot> spots(Packs packs) {
        if (packs.longestMillimetres() > length) {
            return List.of(overhanging(packs.longestMillimetres()));
        }
        int least = leastZones(packs);
        List<Spot> spots = new ArrayList<>();
        for (int count = least; count <= Math.min(zones, least + 1); count++) {
            for (int zone = 0; zone + count <= zones; zone++) {
                long from = from(zone);
                long to = from(zone + count);
                spots.add(new Spot(zone, count, from, to - from, (from + to) / 2.0, 0, 0));
            }
        }
        return spots;
    }

    private int leastZones(Packs packs) {
        int count = 1;
        while (count < zones
                && (packs.longestMillimetres() > length * count / zones
                        || packs.millilitres() > bay.millilitres() * count / zones)) {
            count++;
        }
        return count;
    }

    /** On a deck or a roof it sticks out at both ends alike; in a bed it stands against the front and sticks out behind. */
    private Spot overhanging(long longest) {
        long over = longest - length;
        return deck
                ? new Spot(0, zones, 0, length, length / 2.0, over / 2, over - over / 2)
                : new Spot(0, zones, 0, length, longest / 2.0, 0, over);
    }
}
