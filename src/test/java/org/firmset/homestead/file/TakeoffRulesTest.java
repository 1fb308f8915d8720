package org.firmset.homestead.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.firmset.homestead.Given;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Supply;
import org.firmset.homestead.Takeoff;
import org.junit.jupiter.api.Test;

class TakeoffRulesTest {
    private static final Homestead DEMO = SeedHomesteads.demo(LocalDate.of(2027, 3, 1));
    private static final List<Given> CAP = List.of(new Given("plan", "3 m x 3 m"), new Given("thickness", "5 in"));

    private static Fault only(String kind, List<Given> given, List<Supply> supplies) {
        Homestead homestead =
                DEMO.withTakeoffs(List.of(new Takeoff("one", "One", kind, "water-cap-pour", given, supplies)));
        List<Fault> faults = HomesteadRules.faults(homestead);
        assertThat(faults).hasSize(1);
        return faults.getFirst();
    }

    @Test
    void a_kind_that_is_not_known_is_told_the_known_ones() {
        Fault fault = only("pyramid", CAP, List.of());
        assertThat(fault.pointer()).isEqualTo("/takeoffs/0/kind");
        assertThat(fault.remedy()).contains("slab", "wall-fill");
    }

    @Test
    void an_input_that_is_refused_is_pointed_at() {
        Fault fault = only("slab", List.of(CAP.getFirst(), new Given("thickness", "5 mi")), List.of());
        assertThat(fault.pointer()).isEqualTo("/takeoffs/0/given/1/value");
        assertThat(fault.line()).contains("[5 mi] is too large", "allowed is 40 mm to 1 m");
    }

    @Test
    void an_input_that_is_missing_is_named() {
        Fault fault = only("slab", List.of(CAP.getFirst()), List.of());
        assertThat(fault.pointer()).isEqualTo("/takeoffs/0/given");
        assertThat(fault.value()).isEqualTo("thickness");
        assertThat(fault.problem()).isEqualTo("is missing");
    }

    @Test
    void an_input_may_be_given_once_only() {
        Fault fault = only("slab", List.of(CAP.get(0), CAP.get(1), new Given("thickness", "6 in")), List.of());
        assertThat(fault.pointer()).isEqualTo("/takeoffs/0/given/2/input");
        assertThat(fault.problem()).isEqualTo("is given twice");
    }

    @Test
    void a_quantity_that_the_takeoff_has_not_is_told_those_it_has() {
        Fault fault = only("slab", CAP, List.of(new Supply("gravel", "rock-yd3")));
        assertThat(fault.pointer()).isEqualTo("/takeoffs/0/supplies/0/line");
        assertThat(fault.remedy()).contains("bags", "mixing-water");
    }

    @Test
    void a_step_is_nothing_that_can_be_bought() {
        assertThat(only("slab", CAP, List.of(new Supply("area", "panel-58"))).problem())
                .isEqualTo("is no quantity of this takeoff");
    }

    @Test
    void a_quantity_that_no_pack_can_be_divided_by_is_refused() {
        Homestead homestead = DEMO.withTakeoffs(List.of(new Takeoff(
                "one",
                "One",
                "counted",
                null,
                List.of(new Given("number", "100000"), new Given("wastePercent", "100")),
                List.of(new Supply("packs", "rebar-4")))));
        assertThat(HomesteadRules.faults(homestead))
                .singleElement()
                .satisfies(f -> assertThat(f.problem()).contains("more than 100,000 packs"));
    }

    @Test
    void a_stage_or_material_that_is_not_there_is_refused() {
        Homestead homestead = DEMO.withTakeoffs(
                List.of(new Takeoff("one", "One", "slab", "water-moat", CAP, List.of(new Supply("bags", "lava")))));
        assertThat(HomesteadRules.faults(homestead))
                .extracting(Fault::pointer)
                .containsExactly("/takeoffs/0/stage", "/takeoffs/0/supplies/0/material");
    }
}
