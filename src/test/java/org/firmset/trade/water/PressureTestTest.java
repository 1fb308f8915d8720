package org.firmset.trade.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Results;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PressureTestTest {
    private static final Given<PressureTest> USUAL = Given.of(WaterKinds.PRESSURE_TEST);
    /** A test of copper pipe that was made; the pipe hardly grows, so the temperature counts. */
    private static final Given<PressureTest> MADE =
            USUAL.with("material", "copper").with("minutes", "15");

    @Nested
    class Verdicts {
        @ParameterizedTest(name = "drop {0}, temperature {1}, allowed {2}: {3}")
        @CsvSource(textBlock = """
                 0,    0, 0, PASSES
                 1,    0, 1, PASSES
                 1.01, 0, 1, FAILS
                -3,    0, 0, PASSES
                 5,   -5, 1, CANNOT_TELL
                 5,   -4, 1, CANNOT_TELL
                 5, -3.9, 1, FAILS
                 1,   -9, 1, PASSES
                 0,    1, 1, PASSES
                 0,  1.1, 1, CANNOT_TELL
                 5,    3, 1, FAILS
                """)
        void hold_the_drop_both_as_read_and_without_temperature(
                double drop, double thermal, double allowed, Verdict verdict) {
            assertThat(Verdict.of(drop, thermal, allowed)).isEqualTo(verdict);
        }

        @Test
        void are_not_given_for_what_is_no_number() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Verdict.of(Double.NaN, 0, 0))
                    .withMessageStartingWith("drop [NaN]");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Verdict.of(0, Double.NaN, 0))
                    .withMessageStartingWith("thermal [NaN]");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Verdict.of(0, 0, -1))
                    .withMessage("allowed [-1.0] must be 0 or more");
        }

        @Test
        void have_words() {
            assertThat(Verdict.values())
                    .extracting(Verdict::words)
                    .containsExactly("not made yet", "passes", "does not pass", "cannot tell");
        }
    }

    @Nested
    class TestPressures {
        @ParameterizedTest(name = "working {0}, times {1}, code {2}, head {3}: {4}")
        @CsvSource(textBlock = """
                100, 1.5, 50,  0, 150
                100, 1,   50,  0, 100
                 20, 1.5, 50,  0,  50
                 20, 1,   50, 30,  80
                100, 1.5, 50, 99, 150
                 10, 1,    0,  5,  10
                """)
        void are_the_greater_of_the_two(double working, double factor, double code, double head, double pressure) {
            assertThat(PressureTest.testPressure(working, factor, code, head)).isEqualTo(pressure);
        }

        @Test
        void are_not_worked_out_of_nonsense() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> PressureTest.testPressure(0, 1, 0, 0))
                    .withMessage("working [0.0] must be over 0");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> PressureTest.testPressure(1, 0.9, 0, 0))
                    .withMessage("factor [0.9] must be from 1.0 to 10.0");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> PressureTest.testPressure(1, 1, Double.NaN, 0))
                    .withMessage("codeLeast [NaN] must be 0 or more");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> PressureTest.testPressure(1, 1, 0, -1))
                    .withMessage("headAbove [-1.0] must be 0 or more");
        }
    }

    @Nested
    class Planned {
        private final Worksheet sheet = USUAL.work();

        @Test
        void has_these_lines() {
            assertThat(Results.keys(sheet))
                    .containsExactly(
                            "test-pressure",
                            "pressure-highest",
                            "pressure-lowest",
                            "hold",
                            "pipe-volume",
                            "water",
                            "pump-in",
                            "per-degree",
                            "verdict");
            assertThat(sheet.lines(Line.Role.MATERIAL)).extracting(Line::key).containsExactly("water");
            assertThat(Results.word(sheet, "verdict")).isEqualTo("not made yet");
            assertThat(Results.line(sheet, "test-pressure").caution())
                    .contains("Water only")
                    .contains("can maim");
            assertThat(Results.warnings(sheet)).isEmpty();
        }

        @Test
        void pressures_at_the_gauge_and_at_both_ends() {
            Worksheet hill = USUAL.with("highestAbove", "20 ft")
                    .with("lowestBelow", "30 ft")
                    .work();
            double psiForFoot = 0.4333993;
            assertThat(Results.amount(hill, "test-pressure", "psi")).isCloseTo(75, within(1e-6));
            assertThat(Results.amount(hill, "pressure-highest", "psi")).isCloseTo(75 - 20 * psiForFoot, within(1e-4));
            assertThat(Results.amount(hill, "pressure-lowest", "psi")).isCloseTo(75 + 30 * psiForFoot, within(1e-4));
            Worksheet high = USUAL.with("highestAbove", "100 ft").work();
            assertThat(Results.amount(high, "test-pressure", "psi")).isCloseTo(50 + 100 * psiForFoot, within(1e-3));
            assertThat(Results.amount(high, "pressure-highest", "psi")).isCloseTo(50, within(1e-6));
        }

        @Test
        void water_to_fill_and_to_pump_in() {
            double volume = Math.PI / 4 * Math.pow(1.049 * 0.0254, 2) * 91.44;
            TrappedWater trapped = new TrappedWater(PipeMaterial.PVC, 1.049 * 0.0254, 0.133 * 0.0254, 0);
            double pumped = volume * trapped.shareToPump(75 * UsUnits.PSI);
            assertThat(Results.amount(sheet, "pipe-volume", "L")).isCloseTo(volume * 1000, within(1e-5));
            assertThat(Results.amount(sheet, "pump-in", "mL")).isCloseTo(pumped * 1e6, within(1e-2));
            assertThat(Results.amount(sheet, "water", "L")).isCloseTo((volume + pumped) * 1000, within(1e-5));
            Worksheet airy = USUAL.with("airPercent", "1").work();
            assertThat(Results.amount(airy, "pump-in", "L") - Results.amount(sheet, "pump-in", "L"))
                    .isCloseTo(volume * 1000 * 0.01 * (1 - 101_325 / (101_325 + 75 * UsUnits.PSI)), within(1e-5));
        }

        @Test
        void change_of_the_reading_for_a_degree() {
            TrappedWater trapped = new TrappedWater(PipeMaterial.PVC, 1.049 * 0.0254, 0.133 * 0.0254, 0);
            assertThat(Results.amount(sheet, "per-degree", "Pa"))
                    .isCloseTo(trapped.pressureChange(10, 11, 75 * UsUnits.PSI), within(1e-3));
            assertThat(Results.amount(USUAL.with("startTemperature", "40 degC").work(), "per-degree", "Pa"))
                    .isCloseTo(trapped.pressureChange(39, 40, 75 * UsUnits.PSI), within(1e-3));
        }

        @Test
        void time_to_hold() {
            assertThat(Results.amount(sheet, "hold", "min")).isEqualTo(15);
            assertThat(Results.line(sheet, "hold").source()).isEqualTo(Sources.TEST_TIME);
            Worksheet longer = USUAL.with("holdMinutes", "120").work();
            assertThat(Results.amount(longer, "hold", "min")).isEqualTo(120);
            assertThat(Results.line(longer, "hold").source()).isNotEqualTo(Sources.TEST_TIME);
        }

        @Test
        void more_at_the_lowest_point_than_the_line_is_rated_for() {
            assertThat(Results.warnings(USUAL.with("rating", "75.001 psi").work()))
                    .isEmpty();
            assertThat(Results.warnings(USUAL.with("rating", "74.999 psi").work()))
                    .singleElement()
                    .asString()
                    .startsWith("At the lowest point the test pressure is more");
            assertThat(Results.warnings(USUAL.with("rating", "80 psi")
                            .with("lowestBelow", "20 ft")
                            .work()))
                    .hasSize(1);
        }

        @Test
        void plastic_stretches_first() {
            assertThat(Results.notes(sheet)).singleElement().asString().startsWith("Plastic pipe stretches");
            assertThat(Results.notes(USUAL.with("material", "copper").work())).isEmpty();
        }
    }

    @Nested
    class Made {
        @Test
        void has_more_lines() {
            assertThat(Results.keys(MADE.work()))
                    .containsSubsequence(
                            "per-degree", "thermal", "drop", "drop-corrected", "drop-allowed", "lost", "verdict");
        }

        @Test
        void passes_when_nothing_moved() {
            Worksheet sheet = MADE.work();
            assertThat(Results.word(sheet, "verdict")).isEqualTo("passes");
            assertThat(sheet.findings()).isEmpty();
            assertThat(Results.amount(sheet, "drop", "psi")).isZero();
            assertThat(Results.amount(sheet, "thermal", "psi")).isZero();
        }

        @ParameterizedTest(name = "end at {0}, allowed {1}, step {2}: {3}")
        @CsvSource(textBlock = """
                74 psi,    0 psi, 1 psi,   passes
                73.99 psi, 0 psi, 1 psi,   does not pass
                72.5 psi,  2 psi, 0.5 psi, passes
                72.4 psi,  2 psi, 0.5 psi, does not pass
                80 psi,    0 psi, 0 psi,   passes
                """)
        void allows_the_drop_and_one_step_of_the_gauge(String end, String allowed, String step, String verdict) {
            Worksheet sheet = MADE.with("endPressure", end)
                    .with("allowedDrop", allowed)
                    .with("gaugeStep", step)
                    .work();
            assertThat(Results.word(sheet, "verdict")).isEqualTo(verdict);
        }

        @Test
        void a_drop_that_cooling_explains_cannot_be_told() {
            Worksheet sheet = MADE.with("endPressure", "70 psi")
                    .with("endTemperature", "45 degF")
                    .work();
            TrappedWater trapped = new TrappedWater(PipeMaterial.COPPER, 1.049 * 0.0254, 0.133 * 0.0254, 0);
            double thermal = trapped.pressureChange(10, (45 - 32) / 1.8, 75 * UsUnits.PSI);
            assertThat(Results.amount(sheet, "thermal", "Pa"))
                    .isCloseTo(thermal, within(1e-2))
                    .isNegative();
            assertThat(Results.amount(sheet, "drop", "psi")).isCloseTo(5, within(1e-9));
            assertThat(Results.amount(sheet, "drop-corrected", "Pa"))
                    .isCloseTo(5 * UsUnits.PSI + thermal, within(1e-2));
            assertThat(Results.amount(sheet, "drop-allowed", "psi")).isCloseTo(1, within(1e-9));
            assertThat(Results.amount(sheet, "lost", "mL")).isZero();
            assertThat(Results.word(sheet, "verdict")).isEqualTo("cannot tell");
            assertThat(Results.warnings(sheet))
                    .singleElement()
                    .asString()
                    .startsWith("The change of temperature may explain the drop.");
        }

        @Test
        void a_steady_reading_while_it_got_warmer_may_hide_a_leak() {
            Worksheet sheet = MADE.with("endTemperature", "55 degF").work();
            assertThat(Results.word(sheet, "verdict")).isEqualTo("cannot tell");
            assertThat(Results.warnings(sheet))
                    .singleElement()
                    .asString()
                    .startsWith("The change of temperature may hide a leak.");
        }

        @Test
        void a_drop_that_is_not_explained_does_not_pass_and_says_what_leaked() {
            Worksheet sheet = MADE.with("endPressure", "60 psi").work();
            assertThat(Results.word(sheet, "verdict")).isEqualTo("does not pass");
            assertThat(Results.warnings(sheet))
                    .singleElement()
                    .asString()
                    .startsWith("The drop is not explained by the change of temperature.");
            double volume = Results.amount(sheet, "pipe-volume", "m3");
            TrappedWater trapped = new TrappedWater(PipeMaterial.COPPER, 1.049 * 0.0254, 0.133 * 0.0254, 0);
            assertThat(Results.amount(sheet, "lost", "mL"))
                    .isCloseTo(volume * 1e6 * 15 * UsUnits.PSI * trapped.compliance(75 * UsUnits.PSI), within(1e-2));
        }

        @Test
        void too_short_a_test_tells_nothing_good_but_may_tell_bad() {
            Worksheet brief = MADE.with("minutes", "14").work();
            assertThat(Results.word(brief, "verdict")).isEqualTo("cannot tell");
            assertThat(Results.warnings(brief))
                    .containsExactly("The test was shorter than the time the pressure must hold.");
            Worksheet leak =
                    MADE.with("minutes", "14").with("endPressure", "60 psi").work();
            assertThat(Results.word(leak, "verdict")).isEqualTo("does not pass");
        }

        @Test
        void so_does_one_that_began_too_low() {
            Given<PressureTest> low = MADE.with("startPressure", "74.9 psi").with("endPressure", "74.9 psi");
            assertThat(Results.word(low.work(), "verdict")).isEqualTo("cannot tell");
            assertThat(Results.warnings(low.work()))
                    .singleElement()
                    .asString()
                    .startsWith("The test began under the test pressure");
            Worksheet enough = MADE.with("startPressure", "74.9995 psi")
                    .with("endPressure", "74.9995 psi")
                    .work();
            assertThat(Results.word(enough, "verdict")).isEqualTo("passes");
        }

        @Test
        void the_effect_of_temperature_is_worked_out_at_the_pressure_read() {
            Given<PressureTest> airy = MADE.with("airPercent", "2")
                    .with("startPressure", "100 psi")
                    .with("endPressure", "100 psi")
                    .with("endTemperature", "52 degF");
            TrappedWater trapped = new TrappedWater(PipeMaterial.COPPER, 1.049 * 0.0254, 0.133 * 0.0254, 0.02);
            assertThat(Results.amount(airy.work(), "thermal", "Pa"))
                    .isCloseTo(trapped.pressureChange(10, 20 / 1.8, 100 * UsUnits.PSI), within(1e-3));
            assertThat(Results.amount(airy.work(), "per-degree", "Pa"))
                    .isCloseTo(trapped.pressureChange(10, 11, 100 * UsUnits.PSI), within(1e-3));
        }
    }

    @Nested
    class Refusals {
        @Test
        void a_working_pressure_beyond_the_rating() {
            assertThat(USUAL.with("rating", "50 psi").with("factor", "1").work().lines())
                    .isNotEmpty();
            assertThatExceptionOfType(Refusal.class)
                    .isThrownBy(() -> USUAL.with("rating", "49 psi").work())
                    .withMessageContaining("is more than the line is rated for");
        }

        @ParameterizedTest
        @ValueSource(strings = {"0.9", "2.1"})
        void a_factor_that_codes_do_not_ask(String factor) {
            assertThatExceptionOfType(Refusal.class)
                    .isThrownBy(() -> USUAL.with("factor", factor).work())
                    .withMessageEndingWith("Enter from 1 to 2.");
        }
    }
}
