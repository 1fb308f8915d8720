package org.firmset.trade.haul.splitting;

import java.util.List;
import java.util.Map;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.MassLimit;
import org.firmset.trade.haul.Rig;

/** Rigs for tests. */
final class Rigs {
    /** A van: 900 kg, 4 m3, 3.1 m. */
    static final Rig VAN = van(900_000);

    /** Bed of 500 kg, 2 m3 and 3 m; deck of 1,000 kg, 6 m3 and 6 m, of which 12 % lie on the vehicle. */
    static final Rig WITH_TRAILER = new Rig(
            "pickup",
            "Pickup with trailer",
            List.of(new Bay("bed", "Bed", 2_000_000, 3_000), new Bay("deck", "Deck", 6_000_000, 6_000)),
            List.of(
                    new MassLimit("payload", 500_000, Map.of("bed", 1000, "deck", 120)),
                    new MassLimit("trailer", 1_000_000, Map.of("deck", 1000))));

    private Rigs() {}

    static Rig van(long grams) {
        return new Rig(
                "van",
                "Van",
                List.of(new Bay("bed", "Bed", 4_000_000, 3_100)),
                List.of(new MassLimit("payload", grams, Map.of("bed", 1000))));
    }
}
