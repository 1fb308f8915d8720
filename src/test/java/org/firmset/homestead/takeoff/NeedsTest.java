package org.firmset.homestead.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.firmset.homestead.Given;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.homestead.Need;
import org.firmset.homestead.Stage;
import org.firmset.homestead.Supply;
import org.firmset.homestead.Takeoff;
import org.firmset.homestead.file.HomesteadRules;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.firmset.trade.trace.Amount;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class NeedsTest {
    private static final Homestead DEMO = SeedHomesteads.demo(LocalDate.of(2027, 3, 1));

    private static Map<String, Integer> needs(Homestead homestead, String stage) {
        return Needs.reckoned(homestead).stages().stream()
                .filter(s -> s.key().equals(stage))
                .flatMap(s -> s.needs().stream())
                .collect(Collectors.toMap(Need::material, Need::packs));
    }

    private static Takeoff counted(String key, @Nullable String stage, String number, String material) {
        return new Takeoff(
                key,
                key,
                "counted",
                stage,
                List.of(new Given("number", number)),
                List.of(new Supply("packs", material)));
    }

    private static Homestead with(Takeoff... takeoffs) {
        return DEMO.withTakeoffs(List.of(takeoffs));
    }

    @Test
    void the_demo_gets_its_quantities_from_takeoffs_as_its_note_says() {
        assertThat(needs(DEMO, "water-footing-steel")).isEqualTo(Map.of("rebar-4", 7));
        assertThat(needs(DEMO, "water-footing-pour")).isEqualTo(Map.of("concrete-80", 43));
        assertThat(needs(DEMO, "water-wall")).isEqualTo(Map.of("block-8", 82, "mortar-80", 7, "rebar-4", 2));
        assertThat(needs(DEMO, "water-wall-fill")).isEqualTo(Map.of("core-fill-80", 43));
        assertThat(needs(DEMO, "water-basin")).isEqualTo(Map.of("rock-yd3", 6));
        assertThat(needs(DEMO, "water-rebar-bend")).isEqualTo(Map.of("rebar-4", 9));
        assertThat(needs(DEMO, "water-cap-forms")).isEqualTo(Map.of("board-2x6", 4, "hardware-box", 1));
        assertThat(needs(DEMO, "water-cap-pour")).isEqualTo(Map.of("concrete-80", 67));
        assertThat(needs(DEMO, "shop-base")).isEqualTo(Map.of("rock-yd3", 4));
        assertThat(needs(DEMO, "shop-forms")).isEqualTo(Map.of("board-2x6", 5, "rebar-4", 14, "hardware-box", 1));
        assertThat(needs(DEMO, "cabin-piers")).isEqualTo(Map.of("concrete-80", 70, "rebar-4", 8, "hardware-box", 1));
        assertThat(needs(DEMO, "cabin-walls"))
                .isEqualTo(Map.of("board-2x6", 58, "panel-58", 19, "joist-2x8", 28, "beam-2x10", 1, "hardware-box", 3));
    }

    @Test
    void every_stage_of_the_demo_that_pours_lays_or_frames_has_a_takeoff() {
        List<String> byHand = DEMO.stages().stream()
                .filter(s -> DEMO.takeoffs().stream().noneMatch(t -> s.key().equals(t.stage())))
                .filter(s -> s.needs().stream()
                        .anyMatch(n -> List.of("concrete-80", "core-fill-80", "block-8", "rock-yd3", "rebar-4")
                                .contains(n.material())))
                .map(Stage::key)
                .toList();
        assertThat(byHand).isEmpty();
    }

    @Test
    void a_larger_dimension_needs_more_at_once() {
        Homestead thicker = DEMO.withTakeoffs(DEMO.takeoffs().stream()
                .map(t -> t.key().equals("cap") ? thicker(t) : t)
                .toList());
        assertThat(needs(thicker, "water-cap-pour")).isEqualTo(Map.of("concrete-80", 80));
    }

    private static Takeoff thicker(Takeoff t) {
        List<Given> given = t.given().stream()
                .map(g -> g.input().equals("thickness") ? new Given("thickness", "6 in") : g)
                .toList();
        return new Takeoff(t.key(), t.name(), t.kind(), t.stage(), given, t.supplies());
    }

    @Test
    void exact_amounts_are_added_before_they_are_rounded_up() {
        Homestead halves =
                with(counted("a", "cabin-flue", "2.5", "rebar-4"), counted("b", "cabin-flue", "2.5", "rebar-4"));
        assertThat(needs(halves, "cabin-flue")).containsEntry("rebar-4", 5);
    }

    @Test
    void what_is_written_at_the_stage_is_added() {
        Homestead more = with(counted("a", "cabin-windows", "0.5", "hardware-box"));
        assertThat(needs(more, "cabin-windows"))
                .containsEntry("hardware-box", 2)
                .containsEntry("opening", 6);
    }

    @Test
    void a_takeoff_of_no_stage_changes_nothing() {
        Homestead loose = with(counted("a", null, "5", "rebar-4"));
        assertThat(Needs.reckoned(loose).stages()).isEqualTo(DEMO.stages());
        assertThat(Needs.parts(loose)).hasSize(1);
    }

    @Test
    void amounts_become_packs_by_number_volume_mass_or_length() {
        Material bag = new Material(
                "m",
                "M",
                "pack",
                Mass.ofKilograms(20),
                Volume.ofCubicMetres(0.5),
                Length.ofMetres(4),
                false,
                false,
                null);
        assertThat(Needs.packs(Amount.packs(2.4, "bags"), bag)).hasValue(2.4);
        assertThat(Needs.packs(Amount.count(7, "blocks"), bag)).hasValue(7);
        assertThat(Needs.packs(Amount.volume(1.25), bag)).hasValue(2.5);
        assertThat(Needs.packs(Amount.mass(50), bag)).hasValue(2.5);
        assertThat(Needs.packs(Amount.length(10), bag)).hasValue(2.5);
        assertThat(Needs.packs(Amount.hours(3), bag)).isEmpty();
        assertThat(Needs.packs(Amount.pressure(3), bag)).isEmpty();
        assertThat(Needs.packs(Amount.word("bags"), bag)).isEmpty();
        assertThat(Needs.packs(Amount.on(LocalDate.of(2027, 5, 1)), bag)).isEmpty();
    }

    @Test
    void a_pack_that_holds_nothing_of_that_divides_nothing() {
        Material bare =
                new Material("m", "M", "pack", Mass.ofKilograms(0), Volume.ofCubicMetres(0), null, false, false, null);
        assertThat(Needs.packs(Amount.volume(1), bare)).isEqualTo(OptionalDouble.empty());
        assertThat(Needs.packs(Amount.mass(1), bare)).isEmpty();
        assertThat(Needs.packs(Amount.length(1), bare)).isEmpty();
    }

    @Test
    void the_demo_breaks_no_rule() {
        assertThat(HomesteadRules.faults(DEMO)).isEmpty();
    }
}
