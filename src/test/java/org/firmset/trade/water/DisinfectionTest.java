package org.firmset.trade.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Results;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DisinfectionTest {
    private static final Given<Disinfection> USUAL = Given.of(WaterKinds.DISINFECTION);
    private static final Given<Disinfection> WITH_PIPES =
            USUAL.with("pipeBore", "1 in").with("pipeLength", "1000 ft");
    /** 1,000 ft of 1 in. */
    private static final double PIPES = Math.PI / 4 * 0.0254 * 0.0254 * 304.8 * 1000 / 3.785411784;

    @ParameterizedTest(name = "{0}: {1} gal, {2} mg/L, {3} h, {4} mg/L left")
    @CsvSource(textBlock = """
            full-tank,        1690.8, 50,  24, 10
            wetted-walls,     5,      200, 3,
            bottom-then-fill, 82.5,   50,  6,  2
            pipes,            40.8,   50,  24, 5
            """)
    void methods(String method, double gallons, double dose, double hours, Double left) {
        Worksheet sheet = WITH_PIPES.with("method", method).work();
        assertThat(Results.amount(sheet, "pipe-volume", "gal")).isCloseTo(PIPES, within(1e-6));
        assertThat(Results.amount(sheet, "water", "gal")).isCloseTo(gallons, within(0.01));
        assertThat(Results.amount(sheet, "dose", "mg/L")).isEqualTo(dose);
        assertThat(Results.amount(sheet, "contact", "h")).isEqualTo(hours);
        assertThat(sheet.line("left")
                        .map(l -> Results.amount(l.amount(), "mg/L"))
                        .orElse(null))
                .isEqualTo(left);
        assertThat(Results.amount(sheet, "chlorine-liquid", "gal"))
                .isCloseTo(Results.amount(sheet, "water", "gal") * dose / 60_000, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            full-tank        | V = tank + pipes
            wetted-walls     | V as mixed for the walls
            bottom-then-fill | V = 5 % of the tank
            pipes            | V = pipes
            """)
    void say_what_water_is_chlorinated(String method, String formula) {
        Worksheet sheet = WITH_PIPES.with("method", method).work();
        assertThat(Results.line(sheet, "water").formula()).isEqualTo(formula);
        assertThat(Results.line(sheet, "water").source())
                .isEqualTo(method.equals("bottom-then-fill") ? Sources.STORAGE_TIMES : Sources.GEOMETRY);
    }

    @Test
    void sources_of_dose_and_time() {
        for (DisinfectionMethod method : DisinfectionMethod.values()) {
            boolean pipes = method == DisinfectionMethod.PIPES;
            assertThat(method.source()).isEqualTo(pipes ? Sources.PIPES : Sources.STORAGE);
        }
        assertThat(DisinfectionMethod.FULL_TANK.doseSource()).isEqualTo(Sources.SHOCK);
        assertThat(DisinfectionMethod.WETTED_WALLS.doseSource()).isEqualTo(Sources.STORAGE);
        assertThat(DisinfectionMethod.FULL_TANK.timeSource()).isEqualTo(Sources.STORAGE_TIMES);
        assertThat(DisinfectionMethod.BOTTOM_THEN_FILL.timeSource()).isEqualTo(Sources.STORAGE_TIMES);
        assertThat(DisinfectionMethod.WETTED_WALLS.timeSource()).isEqualTo(Sources.WALL_TIME);
        assertThat(DisinfectionMethod.PIPES.timeSource()).isEqualTo(Sources.PIPES);
    }

    @Test
    void the_dose_can_be_given() {
        Worksheet sheet = USUAL.with("doseMgPerLitre", "100").work();
        assertThat(Results.amount(sheet, "dose", "mg/L")).isEqualTo(100);
        assertThat(Results.line(sheet, "dose").formula()).isEqualTo("as entered");
        assertThat(Results.line(sheet, "dose").source()).isEqualTo(Source.PRACTICE);
        assertThat(Results.amount(sheet, "chlorine-liquid", "gal")).isCloseTo(2.75, within(1e-6));
        assertThat(Results.line(USUAL.work(), "dose").formula()).isEqualTo("usual for the method");
        assertThat(Results.line(USUAL.work(), "dose").source()).isEqualTo(Sources.SHOCK);
    }

    @Test
    void dry_chlorine_is_weighed() {
        Worksheet sheet =
                USUAL.with("disinfectant", "dry").with("strengthPercent", "65").work();
        assertThat(Results.amount(sheet, "chlorine-dry", "kg")).isCloseTo(6.245929444 * 50 / 650, within(1e-8));
        assertThat(sheet.line("chlorine-liquid")).isEmpty();
        assertThat(sheet.lines(Line.Role.MATERIAL)).extracting(Line::key).containsExactly("water", "chlorine-dry");
        assertThat(Results.notes(sheet)).isEmpty();
    }

    @Test
    void liquid_chlorine_is_measured_and_loses_strength() {
        Worksheet sheet = USUAL.work();
        assertThat(Results.keys(sheet))
                .containsExactly("pipe-volume", "water", "dose", "chlorine-liquid", "left", "contact", "to-drink");
        assertThat(sheet.lines(Line.Role.MATERIAL)).extracting(Line::key).containsExactly("water", "chlorine-liquid");
        assertThat(Results.line(sheet, "chlorine-liquid").caution())
                .contains("Never mix it")
                .contains("poison gas");
        assertThat(Results.line(sheet, "chlorine-liquid").formula()).startsWith("v = V c");
        assertThat(Results.amount(sheet, "to-drink", "mg/L")).isEqualTo(4);
        assertThat(Results.notes(sheet)).singleElement().asString().startsWith("Liquid chlorine loses strength");
    }

    @Nested
    class Findings {
        @Test
        void strong_water_is_not_for_a_stream() {
            assertThat(Results.warnings(USUAL.work()))
                    .singleElement()
                    .asString()
                    .startsWith("The strong water kills fish");
            Given<Disinfection> weak = USUAL.with("method", "bottom-then-fill");
            assertThat(Results.warnings(weak.with("doseMgPerLitre", "4").work()))
                    .noneMatch(w -> w.startsWith("The strong water"));
            assertThat(Results.warnings(weak.with("doseMgPerLitre", "4.1").work()))
                    .anyMatch(w -> w.startsWith("The strong water"));
        }

        @Test
        void a_dose_under_what_must_be_left() {
            assertThat(Results.warnings(USUAL.with("doseMgPerLitre", "10").work()))
                    .noneMatch(w -> w.startsWith("The chlorine at first is less"));
            assertThat(Results.warnings(USUAL.with("doseMgPerLitre", "9.9").work()))
                    .anyMatch(w -> w.startsWith("The chlorine at first is less"));
        }

        @Test
        void the_bottoms_water_is_thinned_by_filling() {
            Given<Disinfection> bottom = USUAL.with("method", "bottom-then-fill");
            Worksheet sheet = bottom.work();
            assertThat(Results.amount(sheet, "after-filling", "mg/L")).isCloseTo(2.5, within(1e-12));
            assertThat(Results.amount(sheet, "contact-full", "h")).isEqualTo(24);
            assertThat(Results.warnings(sheet)).hasSize(1);
            assertThat(Results.warnings(bottom.with("doseMgPerLitre", "40").work()))
                    .hasSize(1);
            assertThat(Results.warnings(bottom.with("doseMgPerLitre", "39").work()))
                    .hasSize(2)
                    .first()
                    .asString()
                    .startsWith("Filled up with water without chlorine");
        }

        @Test
        void other_methods_have_no_second_step() {
            for (String method : new String[] {"full-tank", "wetted-walls", "pipes"}) {
                Worksheet sheet = WITH_PIPES.with("method", method).work();
                assertThat(sheet.line("after-filling")).isEmpty();
                assertThat(sheet.line("contact-full")).isEmpty();
            }
        }

        @Test
        void spraying_inside_is_dangerous() {
            assertThat(Results.warnings(USUAL.with("method", "wetted-walls").work()))
                    .hasSize(2)
                    .first()
                    .asString()
                    .contains("confined space");
        }

        @ParameterizedTest
        @CsvSource(textBlock = """
                full-tank,        false
                pipes,            false
                wetted-walls,     true
                bottom-then-fill, true
                """)
        void pipes_that_are_left_out_are_named(String method, boolean left) {
            assertThat(Results.notes(WITH_PIPES.with("method", method).work())
                            .contains("The pipes are not in this: do them by the method for pipes."))
                    .isEqualTo(left);
            if (left) {
                assertThat(Results.notes(USUAL.with("method", method).work())).hasSize(1);
            }
        }
    }

    @Nested
    class Refusals {
        private static void refused(Given<Disinfection> job, String message) {
            assertThatExceptionOfType(Refusal.class).isThrownBy(job::work).withMessageStartingWith(message);
        }

        @Test
        void strengths_that_are_not_sold() {
            assertThat(USUAL.with("strengthPercent", "16").work().lines()).isNotEmpty();
            refused(USUAL.with("strengthPercent", "16.1"), "strengthPercent [16.1] is stronger than liquid");
            Given<Disinfection> dry = USUAL.with("disinfectant", "dry");
            assertThat(dry.with("strengthPercent", "30").work().lines()).isNotEmpty();
            refused(dry.with("strengthPercent", "29.9"), "strengthPercent [29.9] is weaker than dry");
        }

        @Test
        void no_tank_or_no_pipes() {
            refused(USUAL.with("tankVolume", "0 L"), "tankVolume [0 m3] leaves no tank");
            refused(USUAL.with("method", "pipes"), "pipeLength [0 m] leaves no pipes");
            assertThat(WITH_PIPES
                            .with("method", "pipes")
                            .with("tankVolume", "0 L")
                            .work()
                            .lines())
                    .isNotEmpty();
        }

        @ParameterizedTest
        @ValueSource(doubles = {0, -1, Double.NaN})
        void a_strength_that_is_none(double strength) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Chlorine.liquid(1, 1, strength))
                    .withMessage("strength [" + strength + "] must be over 0");
        }

        @Test
        void a_strength_over_1_or_a_negative_volume_or_dose() {
            assertThat(Chlorine.dry(1, 1, 1)).isCloseTo(0.001, within(1e-15));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Chlorine.dry(1, 1, 1.01))
                    .withMessage("strength [1.01] must be from 0.0 to 1.0");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Chlorine.liquid(-1, 1, 0.1))
                    .withMessage("volume [-1.0] must be 0 or more");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Chlorine.liquid(1, Double.NaN, 0.1))
                    .withMessage("dose [NaN] must be 0 or more");
        }
    }
}
