package org.firmset.homestead.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.firmset.measure.UnitSystem;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Kind;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class InputsTest {
    private static final Kind<?> SLAB = Catalogue.find("slab").orElseThrow();
    private static final Kind<?> CUTS = Catalogue.find("cut-list").orElseThrow();

    private static Map<String, String> texts(String... namesAndValues) {
        Map<String, String> texts = new HashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            texts.put(namesAndValues[i], namesAndValues[i + 1]);
        }
        return texts;
    }

    private static Worksheet done(Kind<?> kind, String... texts) {
        return ((Worked.Done) Inputs.work(kind, texts(texts))).worksheet();
    }

    private static List<InputFault> refused(Kind<?> kind, String... texts) {
        return ((Worked.Refused) Inputs.work(kind, texts(texts))).faults();
    }

    private static Amount bags(Worksheet worksheet) {
        return worksheet.line("bags").orElseThrow().amount();
    }

    @Test
    void either_system_of_units_comes_to_the_same() {
        Worksheet us = done(SLAB, "plan", "12 ft x 10 ft", "thickness", "4 in");
        Worksheet metric = done(SLAB, "plan", "3.6576 m x 3.048 m", "thickness", "101.6 mm");
        assertThat(bags(us)).isEqualTo(bags(metric));
    }

    @Test
    void fractions_of_an_inch_are_understood() {
        Worksheet fraction = done(SLAB, "plan", "12 ft 6 1/2 in x 10 ft", "thickness", "3 1/2 in");
        Worksheet decimals = done(SLAB, "plan", "150.5 in x 120 in", "thickness", "3.5 in");
        assertThat(bags(fraction)).isEqualTo(bags(decimals));
    }

    @Test
    void what_is_blank_is_as_usual() {
        Worksheet blank = done(SLAB, "plan", "12 ft x 10 ft", "thickness", "4 in", "wastePercent", " ");
        Worksheet usual = done(SLAB, "plan", "12 ft x 10 ft", "thickness", "4 in", "wastePercent", "10");
        assertThat(blank).isEqualTo(usual);
    }

    @Test
    void inputs_of_a_group_are_found_by_their_own_names() {
        Worksheet bare = done(SLAB, "plan", "12 ft x 10 ft", "thickness", "4 in", "wastePercent", "0");
        assertThat(((Amount.Packs) bags(bare)).whole()).isEqualTo(67);
    }

    @Test
    void a_percent_sign_and_a_bare_nothing_are_understood() {
        Worksheet signs =
                done(SLAB, "plan", "12 ft x 10 ft", "thickness", "4 in", "wastePercent", "5 %", "edgeDepth", "0");
        Worksheet plain = done(SLAB, "plan", "12 ft x 10 ft", "thickness", "4 in", "wastePercent", "5");
        assertThat(signs).isEqualTo(plain);
        assertThat(refused(SLAB, "plan", "12 ft x 10 ft", "thickness", "4")
                        .getFirst()
                        .problem())
                .contains("is not a number with its unit");
    }

    @Test
    void ranges_are_told_in_the_units_of_the_reader() {
        var thickness = Inputs.of(SLAB).stream()
                .map(Inputs.Input::part)
                .filter(p -> p.name().equals("thickness"))
                .findFirst()
                .orElseThrow();
        assertThat(thickness.range(UnitSystem.METRIC)).isEqualTo("From 40 mm to 1 m.");
        assertThat(thickness.range(UnitSystem.US)).isEqualTo("From 1.575 in to 3 ft 3 3/8 in.");
    }

    @Test
    void yes_and_no_are_understood() {
        Kind<?> run = Catalogue.find("bar-run").orElseThrow();
        assertThat(done(run, "run", "34 ft 8 in", "bar", "no-4", "loop", "yes"))
                .isNotEqualTo(done(run, "run", "34 ft 8 in", "bar", "no-4", "loop", "no"));
    }

    @Test
    void the_same_question_gets_the_same_worksheet_back() {
        assertThat(done(CUTS, "pieces", "7 x 44 in")).isSameAs(done(CUTS, "pieces", "7 x 44 in"));
    }

    @Nested
    class Refusals {
        @Test
        void name_the_input_its_value_and_the_allowed_range() {
            assertThat(refused(SLAB, "plan", "12 ft x 10 ft", "thickness", "900 m"))
                    .containsExactly(new InputFault(
                            "thickness", "900 m", "is too large", "The most is 1 m; allowed is 40 mm to 1 m"));
        }

        @Test
        void are_told_together() {
            assertThat(refused(SLAB, "plan", "wide", "thickness", "0 in", "colour", "red", "wastePercent", "many"))
                    .extracting(InputFault::input)
                    .containsExactlyInAnyOrder("colour", "plan", "thickness", "wastePercent");
        }

        @Test
        void come_from_contradictions_too() {
            List<InputFault> faults = refused(CUTS, "pieces", "25 ft");
            assertThat(faults).hasSize(1);
            assertThat(faults.getFirst().input()).isEqualTo("pieces");
            assertThat(faults.getFirst().value()).isEqualTo("25 ft");
            assertThat(faults.getFirst().problem()).contains("longer than the longest stock");
        }

        @Test
        void shorten_endless_values_and_show_no_control_characters() {
            InputFault fault = new InputFault("length", "\u001b[31m" + "9".repeat(500), "is too long", "Write less");
            assertThat(fault.line()).hasSizeLessThan(140).doesNotContain("\u001b");
        }

        @Test
        void of_words_list_those_that_are_understood() {
            Kind<?> wall = Catalogue.find("wall-fill").orElseThrow();
            assertThat(refused(wall, "length", "4 m", "height", "1 m", "block", "brick")
                            .getFirst()
                            .remedy())
                    .contains("in-8", "mm-190");
        }
    }
}
