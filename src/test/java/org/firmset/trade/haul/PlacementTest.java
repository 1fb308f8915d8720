package org.firmset.trade.haul;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class PlacementTest {
    private static final long AMPLE = 5_000_000;

    private static Outfit pickup(long rearRating, @Nullable TrailerDeck deck) {
        VehicleAxles axles = new VehicleAxles(3600, AMPLE, rearRating, 1_400_000, 2300, 2000, 1650, 2500, 4900L);
        HaulVehicle vehicle = new HaulVehicle(
                "Pickup", AMPLE, 2_300_000, new Bay("bed", "Bed", 2_100_000, 3000), axles, null, AMPLE, null, null);
        HaulTrailer trailer =
                new HaulTrailer("Trailer", AMPLE, 500_000, 12, new Bay("deck", "Deck", 6_000_000, 6000), deck);
        return new Outfit(vehicle, deck == null ? null : trailer, 160_000, 60_000);
    }

    private static Packs bags(int count, int neededFirst) {
        return new Packs("bag-" + neededFirst, "Bag", count, 36_000, 22_000, 0, true, false, false, neededFirst);
    }

    private static Packs bars(long longest) {
        return new Packs("bar", "Bar", 10, 6_000, 2_000, longest, false, false, false, 1);
    }

    private static int packsIn(Placement placement, String bay, int zone) {
        return placement.zones().stream()
                .filter(z -> z.bay().equals(bay) && z.number() == zone)
                .flatMap(z -> z.packs().stream())
                .mapToInt(Stowed::packs)
                .sum();
    }

    private static double middle(Placement placement, String kind) {
        return placement.stowed().stream()
                .filter(s -> s.cargo().packs().kind().equals(kind))
                .mapToDouble(s -> s.middle() * s.packs())
                .sum();
    }

    @Test
    void every_pack_gets_one_place() {
        Placement placement =
                Placement.of(pickup(AMPLE, null), List.of(new Cargo("bed", bags(12, 1)), new Cargo("bed", bars(1800))));
        assertThat(placement.stowed().stream().mapToInt(Stowed::packs).sum()).isEqualTo(22);
        assertThat(placement.zones()).hasSize(3);
        assertThat(placement.zones().stream().mapToLong(Zone::grams).sum()).isEqualTo(12 * 36_000 + 10 * 6_000);
        assertThat(placement.zones().stream().mapToLong(Zone::roomMillilitres).sum())
                .isEqualTo(2_100_000);
        assertThat(placement.across()).extracting(s -> s.cargo().packs().kind()).contains("bar");
        assertThat(placement.holds()).isTrue();
        assertThat(placement.cautions()).anyMatch(c -> c.contains("hard stop"));
    }

    @Test
    void heavy_bags_lie_near_the_rear_axle() {
        // the axle is 1300 mm behind the bed's front edge, in the middle zone
        Placement placement = Placement.of(pickup(AMPLE, null), List.of(new Cargo("bed", bags(10, 1))));
        assertThat(packsIn(placement, "bed", 2)).isEqualTo(10);
    }

    @Test
    void a_tight_rear_axle_pushes_them_forward() {
        // 900 empty, 73.3 of people, 41.7 of kit; 360 kg of bags weigh 329.9 in the middle and 263.3 at the front
        Placement placement = Placement.of(pickup(1_300_000, null), List.of(new Cargo("bed", bags(10, 1))));
        assertThat(placement.holds()).isTrue();
        assertThat(packsIn(placement, "bed", 2)).isLessThan(10);
        assertThat(placement.sheet().limit(LimitKind.REAR_AXLE).orElseThrow().leftGrams())
                .isNotNegative();
    }

    @Test
    void what_no_place_can_mend_is_told_with_the_limit_and_by_how_much() {
        Placement placement = Placement.of(pickup(1_000_000, null), List.of(new Cargo("bed", bags(10, 1))));
        assertThat(placement.holds()).isFalse();
        // all in front: 900 + 160 x 1650/3600 + 60 x 2500/3600 + 360 x (2300 + 333)/3600 = 1278.3 kg
        assertThat(placement.excesses()).singleElement().satisfies(e -> {
            assertThat(e.kind()).isEqualTo(Excess.Kind.MASS);
            assertThat(e.where()).isEqualTo("rear axle");
            assertThat(e.by()).isBetween(278_000L, 279_000L);
        });
        assertThat(packsIn(placement, "bed", 1)).isEqualTo(10);
    }

    @Test
    void the_tongue_of_a_measured_deck_comes_between_a_tenth_and_fifteen_percent() {
        Placement placement = Placement.of(
                pickup(AMPLE, new TrailerDeck(3400, 1200, 3600, null)), List.of(new Cargo("deck", bags(28, 1))));
        assertThat(placement.holds()).isTrue();
        assertThat(Objects.requireNonNull(placement.sheet().tongue()).share()).isBetween(0.10, 0.15);
    }

    @Test
    void a_deck_far_behind_its_axle_cannot_press_the_tongue_down() {
        Placement placement = Placement.of(
                pickup(AMPLE, new TrailerDeck(2500, 2400, 3600, null)), List.of(new Cargo("deck", bags(28, 1))));
        assertThat(placement.excesses()).extracting(Excess::kind).containsExactly(Excess.Kind.TONGUE_LIGHT);
    }

    @Test
    void what_is_needed_first_comes_off_first() {
        Packs early = new Packs("early", "Early", 8, 8_000, 70_000, 0, false, false, false, 1);
        Packs late = new Packs("late", "Late", 8, 8_000, 70_000, 0, false, false, false, 2);
        Placement placement =
                Placement.of(pickup(AMPLE, null), List.of(new Cargo("bed", late), new Cargo("bed", early)));
        assertThat(middle(placement, "early")).isGreaterThan(middle(placement, "late"));
    }

    @Test
    void in_a_zone_what_stands_is_on_the_floor_then_heavy_then_needed_last() {
        List<Cargo> cargo = new ArrayList<>();
        cargo.add(new Cargo("roof", new Packs("late", "L", 1, 3_000, 10_000, 0, false, false, false, 5)));
        cargo.add(new Cargo("roof", new Packs("soon", "S", 1, 4_000, 10_000, 0, false, false, false, 1)));
        cargo.add(new Cargo("roof", new Packs("heavy", "H", 1, 30_000, 10_000, 0, false, false, false, 1)));
        cargo.add(new Cargo("roof", new Packs("pail", "P", 1, 5_000, 10_000, 0, false, true, false, 3)));
        HaulVehicle van = new HaulVehicle(
                "Van",
                AMPLE,
                2_000_000,
                new Bay("bed", "Bed", 1_000_000, 2000),
                null,
                null,
                null,
                null,
                new RoofRack(new Bay("roof", "Roof", 100_000, 2000), 100_000, null));
        Placement placement = Placement.of(new Outfit(van, null, 0, 0), cargo);
        assertThat(placement.zones().getLast().packs())
                .extracting(s -> s.cargo().packs().kind())
                .containsExactly("pail", "heavy", "late", "soon");
    }

    @Test
    void a_long_piece_lies_across_zones_with_its_mass_in_its_middle() {
        Placement placement = Placement.of(pickup(AMPLE, null), List.of(new Cargo("bed", bars(1900))));
        assertThat(placement.across()).singleElement().satisfies(s -> {
            assertThat(s.from()).isZero();
            assertThat(s.length()).isEqualTo(2000);
            assertThat(s.middle()).isEqualTo(1000);
            assertThat(s.overFront() + s.overRear()).isZero();
        });
    }

    @Test
    void a_piece_longer_than_the_bed_sticks_out_behind_and_is_flagged() {
        Placement placement = Placement.of(pickup(AMPLE, null), List.of(new Cargo("bed", bars(2800))));
        assertThat(placement.holds()).isTrue();
        assertThat(placement.across()).singleElement().satisfies(s -> {
            assertThat(s.middle()).isEqualTo(1400);
            assertThat(s.overRear()).isEqualTo(800);
        });
        assertThat(placement.restraints()).singleElement().satisfies(r -> {
            assertThat(r.flag()).isTrue();
            assertThat(r.leastTies()).isEqualTo(2);
        });
    }

    @Test
    void on_a_deck_it_sticks_out_at_both_ends() {
        Placement placement = Placement.of(
                pickup(AMPLE, new TrailerDeck(3400, 1200, 3600, null)), List.of(new Cargo("deck", bars(6000))));
        assertThat(placement.across())
                .extracting(Stowed::overFront, Stowed::overRear)
                .containsExactly(org.assertj.core.api.Assertions.tuple(1200L, 1200L));
    }

    @Test
    void a_piece_longer_than_the_bay_takes_is_told() {
        Placement placement = Placement.of(pickup(AMPLE, null), List.of(new Cargo("bed", bars(3200))));
        assertThat(placement.excesses()).containsExactly(new Excess(Excess.Kind.LENGTH, "Bed", 200));
    }

    @Test
    void too_little_room_is_told() {
        Packs foam = new Packs("foam", "Foam", 4, 1_000, 700_000, 0, false, false, false, 1);
        Placement placement = Placement.of(pickup(AMPLE, null), List.of(new Cargo("bed", foam)));
        assertThat(placement.excesses()).containsExactly(new Excess(Excess.Kind.ROOM, "Bed", 700_000));
    }

    @Test
    void nothing_is_no_trouble() {
        Placement placement = Placement.of(pickup(AMPLE, new TrailerDeck(3400, 1200, 3600, null)), List.of());
        assertThat(placement.holds()).isTrue();
        assertThat(placement.stowed()).isEmpty();
        assertThat(placement.restraints()).isEmpty();
    }

    @Test
    void a_bay_that_is_not_there_is_a_programmers_mistake() {
        assertThatThrownBy(() -> Placement.of(pickup(AMPLE, null), List.of(new Cargo("deck", bars(100)))))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
