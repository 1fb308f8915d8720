package org.firmset.trade.haul;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class LoadSheetTest {
    private static final Bay BED = new Bay("bed", "Bed", 2_000_000, 2500);
    private static final Bay DECK = new Bay("deck", "Deck", 6_000_000, 4000);
    private static final VehicleAxles AXLES =
            new VehicleAxles(3000, 1_700_000, 1_800_000, 1_200_000, 2000, 2000, 1500, 3000, 4500L);

    private static Outfit alone(@Nullable VehicleAxles axles) {
        return new Outfit(
                new HaulVehicle("Pickup", 3_000_000, 2_000_000, BED, axles, null, null, null, null),
                null,
                200_000,
                50_000);
    }

    private static Outfit towing(@Nullable TrailerDeck deck) {
        return new Outfit(
                new HaulVehicle("Pickup", 3_000_000, 2_000_000, BED, AXLES, 5_200_000L, 2_500_000L, 200_000L, null),
                new HaulTrailer("Trailer", 1_600_000, 400_000, 12, DECK, deck),
                200_000,
                50_000);
    }

    private static Tongue tongue(LoadSheet sheet) {
        return Objects.requireNonNull(sheet.tongue());
    }

    @Test
    void people_kit_and_cargo_press_the_axles_by_the_lever_rule() {
        LoadSheet sheet = LoadSheet.of(alone(AXLES), List.of(new Placed("bed", 300_000, 500)));
        // rear: 800 empty + 200 x 1500/3000 + 50 x 3000/3000 + 300 x 2500/3000
        assertThat(sheet.limits())
                .extracting(LoadLimit::kind, LoadLimit::onItGrams, LoadLimit::leftGrams, LoadLimit::binds)
                .containsExactly(
                        tuple(LimitKind.PAYLOAD, 550_000L, 450_000L, false),
                        tuple(LimitKind.FRONT_AXLE, 1_350_000L, 350_000L, true),
                        tuple(LimitKind.REAR_AXLE, 1_200_000L, 600_000L, false));
        assertThat(sheet.holds()).isTrue();
        assertThat(sheet.warnings()).isEmpty();
        assertThat(sheet.tongue()).isNull();
    }

    @Test
    void without_axles_only_what_the_sticker_tells_is_held() {
        LoadSheet sheet = LoadSheet.of(alone(null), List.of(new Placed("bed", 751_000, 500)));
        assertThat(sheet.limits()).containsExactly(new LoadLimit(LimitKind.PAYLOAD, 1_001_000, 1_000_000, true));
        assertThat(sheet.holds()).isFalse();
        assertThat(sheet.binding().overGrams()).isEqualTo(1000);
        assertThat(sheet.limit(LimitKind.REAR_AXLE)).isEmpty();
    }

    @Test
    void a_heavy_tongue_lightens_the_front_axle_and_is_warned_of() {
        // 1000 kg two metres before the trailer's axle: 500 kg of them on the tongue
        LoadSheet sheet = LoadSheet.of(
                towing(new TrailerDeck(4000, 1000, 4000, 1_500_000L)), List.of(new Placed("deck", 1_000_000, 1000)));
        assertThat(tongue(sheet).onHitchGrams()).isEqualTo(548_000);
        assertThat(tongue(sheet).share()).isEqualTo(548.0 / 1400);
        assertThat(sheet.limits())
                .extracting(LoadLimit::kind, LoadLimit::onItGrams)
                .containsExactly(
                        tuple(LimitKind.PAYLOAD, 798_000L),
                        tuple(LimitKind.FRONT_AXLE, 1_026_000L),
                        tuple(LimitKind.REAR_AXLE, 1_772_000L),
                        tuple(LimitKind.TRAILER_RATING, 1_400_000L),
                        tuple(LimitKind.TRAILER_AXLE, 852_000L),
                        tuple(LimitKind.TOW_RATING, 1_400_000L),
                        tuple(LimitKind.TONGUE_RATING, 548_000L),
                        tuple(LimitKind.COMBINATION, 3_650_000L));
        assertThat(sheet.warnings())
                .containsExactly(
                        new LoadWarning(LoadWarning.Kind.FRONT_LIGHT, 174_000),
                        new LoadWarning(LoadWarning.Kind.TONGUE_HEAVY, 338_000));
    }

    @Test
    void a_load_behind_the_trailers_axle_lifts_the_tongue() {
        LoadSheet sheet = LoadSheet.of(
                towing(new TrailerDeck(3000, 1000, 4000, null)), List.of(new Placed("deck", 300_000, 3500)));
        assertThat(tongue(sheet).onHitchGrams()).isEqualTo(48_000 - 150_000);
        assertThat(sheet.warnings()).extracting(LoadWarning::kind).containsExactly(LoadWarning.Kind.TONGUE_LIGHT);
        assertThat(sheet.limit(LimitKind.TRAILER_AXLE)).isEmpty();
    }

    @Test
    void a_deck_that_was_not_measured_is_taken_by_its_percent_and_says_so() {
        LoadSheet sheet = LoadSheet.of(towing(null), List.of(new Placed("deck", 600_000, 0)));
        assertThat(tongue(sheet).onHitchGrams()).isEqualTo(120_000);
        assertThat(tongue(sheet).missingGrams()).isZero();
        assertThat(sheet.warnings())
                .extracting(LoadWarning::kind)
                .containsExactly(LoadWarning.Kind.TONGUE_NOT_MEASURED);
    }

    @Test
    void a_roof_counts_over_the_seats_unless_its_middle_is_known() {
        for (@Nullable Long middle : java.util.Arrays.asList(null, 1500L)) {
            Outfit outfit = new Outfit(
                    new HaulVehicle(
                            "Van",
                            3_000_000,
                            2_000_000,
                            BED,
                            AXLES,
                            null,
                            null,
                            null,
                            new RoofRack(new Bay("roof", "Roof", 500_000, 3000), 100_000, middle)),
                    null,
                    0,
                    0);
            LoadSheet sheet = LoadSheet.of(outfit, List.of(new Placed("roof", 110_000, 77)));
            assertThat(sheet.limit(LimitKind.REAR_AXLE).orElseThrow().onItGrams())
                    .isEqualTo(855_000);
            assertThat(sheet.binding()).isEqualTo(new LoadLimit(LimitKind.ROOF, 110_000, 100_000, true));
        }
    }

    @Test
    void cargo_in_a_bay_that_is_not_there_is_a_programmers_mistake() {
        assertThatThrownBy(() -> LoadSheet.of(alone(AXLES), List.of(new Placed("deck", 1, 0))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("deck");
    }

    @Test
    void a_trailer_needs_the_place_of_the_hitch_when_axles_are_known() {
        VehicleAxles noHitch = new VehicleAxles(3000, 1, 1, 1, 2000, 2000, 1500, 3000, null);
        HaulVehicle vehicle = new HaulVehicle("Pickup", 2, 1, BED, noHitch, null, 1L, null, null);
        assertThatThrownBy(() -> new Outfit(vehicle, new HaulTrailer("T", 2, 1, 10, DECK, null), 0, 0))
                .hasMessageContaining("hitch of vehicle [Pickup]");
    }
}
