package org.firmset.trade.haul;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class EvenLoadTest {
    /** Wheelbase 4 m, bed from 2 to 4 m with its middle at three quarters, ball 1 m behind the rear axle. */
    private static final Outfit OUTFIT = new Outfit(
            new HaulVehicle(
                    "Pickup",
                    3_000_000,
                    2_000_000,
                    new Bay("bed", "Bed", 1, 2000),
                    new VehicleAxles(4000, 1_500_000, 1_600_000, 1_200_000, 2000, 2000, 1000, 4000, 5000L),
                    5_000_000L,
                    2_000_000L,
                    150_000L,
                    new RoofRack(new Bay("roof", "Roof", 1, 1), 80_000, 2000L)),
            new HaulTrailer(
                    "Trailer",
                    1_500_000,
                    400_000,
                    11,
                    new Bay("deck", "Deck", 1, 4000),
                    new TrailerDeck(3000, 1000, 4000, 1_000_000L)),
            200_000,
            100_000);

    private static MassLimit of(LimitKind kind) {
        return EvenLoad.limit(OUTFIT, kind, "x").orElseThrow();
    }

    @Test
    void the_rear_axle_takes_the_beds_middle_and_the_tongue_by_the_lever_rounded_up() {
        // left of 1600: empty 800, people 50, kit 100, empty tongue 44 x 1.25 = 55; the deck puts 0.11 x 1.25 on
        assertThat(of(LimitKind.REAR_AXLE))
                .isEqualTo(new MassLimit("x", 595_000, Map.of("bed", 750, "roof", 500, "deck", 138)));
    }

    @Test
    void a_share_that_lightens_the_front_axle_does_not_count() {
        // left of 1500: empty 1200, people 150, kit 0, the empty tongue lifts 11
        assertThat(of(LimitKind.FRONT_AXLE)).isEqualTo(new MassLimit("x", 161_000, Map.of("bed", 250, "roof", 500)));
    }

    @Test
    void the_trailers_limits() {
        assertThat(of(LimitKind.TRAILER_AXLE)).isEqualTo(new MassLimit("x", 644_000, Map.of("deck", 890)));
        assertThat(of(LimitKind.TONGUE_RATING)).isEqualTo(new MassLimit("x", 106_000, Map.of("deck", 110)));
        assertThat(of(LimitKind.COMBINATION))
                .isEqualTo(new MassLimit("x", 2_300_000, Map.of("bed", 1000, "roof", 1000, "deck", 1000)));
        assertThat(of(LimitKind.ROOF)).isEqualTo(new MassLimit("x", 80_000, Map.of("roof", 1000)));
        assertThat(of(LimitKind.PAYLOAD))
                .isEqualTo(new MassLimit("x", 656_000, Map.of("bed", 1000, "roof", 1000, "deck", 110)));
    }

    @Test
    void what_is_not_known_is_no_limit() {
        HaulVehicle plain = new HaulVehicle("Van", 3, 2, new Bay("bed", "Bed", 1, 1), null, null, null, null, null);
        Outfit outfit = new Outfit(plain, null, 0, 0);
        for (LimitKind kind : LimitKind.values()) {
            Optional<MassLimit> limit = EvenLoad.limit(outfit, kind, "x");
            assertThat(limit.isPresent()).as(kind.words()).isEqualTo(kind == LimitKind.PAYLOAD);
        }
    }
}
