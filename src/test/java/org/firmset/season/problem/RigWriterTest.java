package org.firmset.season.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Rack;
import org.firmset.homestead.Vehicle;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.homestead.part.Part;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Volume;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.Cargo;
import org.firmset.trade.haul.MassLimit;
import org.firmset.trade.haul.Packs;
import org.firmset.trade.haul.Placement;
import org.firmset.trade.haul.Rig;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class RigWriterTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Homestead DEMO = SeedHomesteads.demo(TODAY);
    private static final Mass TWO = Mass.ofKilograms(163.293253);
    private static final double POUND = 453.59237;

    @Test
    void left_out_axles_leave_the_payload_alone() {
        Rig rig = new RigWriter(SeedHomesteads.empty("Fork", UnitSystem.METRIC, TODAY)).rig(Mass.ofKilograms(90));
        assertThat(rig.limits()).containsExactly(new MassLimit("payload of Vehicle", 660_000, Map.of("bed", 1000)));
        assertThat(rig.bays()).extracting(Bay::id).containsExactly("bed");
    }

    @Test
    void the_demo_has_a_limit_for_everything_that_was_weighed() {
        Rig rig = new RigWriter(DEMO).rig(TWO);
        assertThat(rig.limits())
                .extracting(MassLimit::name, l -> Math.round(l.grams() / POUND), MassLimit::sharePermille)
                .containsExactly(
                        tuple("payload of Pickup", 1250L, Map.of("bed", 1000, "deck", 120)),
                        tuple("rating of Flat trailer with front rack", 2250L, Map.of("deck", 1000)),
                        tuple("tow rating of Pickup", 3750L, Map.of("deck", 1000)),
                        // 3750 - 3000 - 360 x 80/145 - 140 x 45/145 + 150 x 48/145
                        tuple("front axle of Pickup", 558L, Map.of("bed", 97)),
                        // 3900 - 2100 - 360 x 65/145 - 140 x 100/145 - 150 x 193/145
                        tuple("rear axle of Pickup", 1342L, Map.of("bed", 904, "deck", 160)),
                        tuple("axle of Flat trailer with front rack", 2400L, Map.of("deck", 880)),
                        tuple("hitch of Pickup", 350L, Map.of("deck", 120)),
                        tuple(
                                "Pickup and Flat trailer with front rack together",
                                5150L,
                                Map.of("bed", 1000, "deck", 1000)));
    }

    @Test
    void forty_bags_of_the_demo_have_a_place_that_holds_every_limit() {
        Packs bag = new Packs("bag", "Bag", 1, Math.round(80 * POUND), 22_000, 0, true, false, false, 1);
        Placement placement = Placement.of(
                OutfitWriter.of(DEMO, TWO),
                List.of(new Cargo(OutfitWriter.BED, times(bag, 12)), new Cargo(OutfitWriter.DECK, times(bag, 28))));
        assertThat(placement.excesses()).isEmpty();
        assertThat(placement.sheet().warnings()).isEmpty();
    }

    private static Packs times(Packs p, int count) {
        return new Packs(p.kind(), p.name(), count, p.grams(), p.millilitres(), 0, true, false, false, 1);
    }

    @Test
    void packs_of_the_demo_are_loose_upright_or_dry_as_they_are_bought() {
        assertThat(DEMO.materials().stream()
                        .map(m -> OutfitWriter.packs(m, 1, 1))
                        .filter(Packs::loose))
                .extracting(Packs::kind)
                .containsExactly("rock-yd3");
        assertThat(DEMO.materials().stream()
                        .map(m -> OutfitWriter.packs(m, 1, 1))
                        .filter(Packs::upright))
                .extracting(Packs::kind)
                .containsExactly("opening");
        Packs bag = OutfitWriter.packs(DEMO.materials().getFirst(), 3, 2);
        assertThat(bag)
                .isEqualTo(
                        new Packs("concrete-80", "Concrete mix, 80 lb", 3, 36_288, 22_000, 0, true, false, false, 2));
    }

    @Test
    void a_roof_is_a_bay_of_its_own() {
        Homestead demo = withRoof(new Rack(Mass.ofKilograms(80), Volume.ofCubicMetres(0.5), Length.ofMetres(4), null));
        Rig rig = new RigWriter(demo).rig(TWO);
        assertThat(rig.bays()).extracting(Bay::id).containsExactly("bed", "roof", "deck");
        assertThat(rig.limits().stream().filter(l -> l.name().equals("roof rack of Pickup")))
                .containsExactly(new MassLimit("roof rack of Pickup", 80_000, Map.of("roof", 1000)));
        assertThat(rig.limits().getFirst().sharePermille()).containsEntry("roof", 1000);
    }

    private static Homestead withRoof(Rack rack) {
        Vehicle pickup = DEMO.vehicles().getFirst();
        List<@Nullable Object> parts = Part.of(Vehicle.class).stream()
                .<@Nullable Object>map(p -> p.name().equals("roof") ? rack : p.valueIn(pickup))
                .toList();
        Vehicle changed = Part.record(Vehicle.class, parts);
        @Nullable
        Object[] values = Part.of(Homestead.class).stream()
                .map(p -> p.name().equals("vehicles") ? List.of(changed) : p.valueIn(DEMO))
                .toArray();
        return Part.record(Homestead.class, Arrays.asList(values));
    }
}
