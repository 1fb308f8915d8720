package org.firmset.trade.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Curve;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Results;
import org.firmset.trade.trace.Table;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PumpFillTest {
    private static final Given<PumpFill> USUAL = Given.of(WaterKinds.PUMP_FILL);
    private static final double FLOW = 5 * 3.785411784 / 60_000;
    private static final double BORE = 1.049 * 0.0254;
    private static final double FITTINGS = 0.5 + 1 + 6 * 1.5 + 0.15 + 2;

    private static double friction() {
        return Friction.darcy(FLOW, 60.96, BORE, 1.5e-6, Water.kinematicViscosity(10));
    }

    private static double head() {
        return 12.192 + friction() + FITTINGS * Friction.velocityHead(FLOW, BORE);
    }

    @Nested
    class Lines {
        private final Worksheet sheet = USUAL.work();

        @Test
        void are_these() {
            assertThat(Results.keys(sheet))
                    .containsExactly(
                            "speed",
                            "friction",
                            "fittings",
                            "head",
                            "pressure",
                            "hydraulic-power",
                            "electrical-power",
                            "hours",
                            "energy",
                            "pipe");
            assertThat(sheet.lines(Line.Role.MATERIAL)).extracting(Line::key).containsExactly("pipe");
            assertThat(Results.amount(sheet, "pipe", "ft")).isEqualTo(200);
        }

        @Test
        void head_is_lift_friction_and_fittings() {
            assertThat(Results.amount(sheet, "speed", "ft/s")).isCloseTo(1.856131, within(1e-6));
            assertThat(Results.amount(sheet, "friction", "m")).isCloseTo(friction(), within(1e-9));
            assertThat(Results.term(sheet, "fittings", "k", "")).isCloseTo(FITTINGS, within(1e-9));
            assertThat(Results.amount(sheet, "fittings", "m"))
                    .isCloseTo(12.65 * Friction.velocityHead(FLOW, BORE), within(1e-9));
            assertThat(Results.amount(sheet, "head", "m")).isCloseTo(head(), within(1e-9));
            assertThat(Results.term(sheet, "friction", "e", "")).isCloseTo(0.0015, within(1e-12));
            assertThat(Results.amount(sheet, "pressure", "kPa"))
                    .isCloseTo(head() * 999.7027 * 9.80665 / 1000, within(1e-5));
        }

        @Test
        void power_hours_and_energy() {
            double hydraulic = 999.7027 * 9.80665 * FLOW * head();
            assertThat(Results.amount(sheet, "hydraulic-power", "W")).isCloseTo(hydraulic, within(1e-5));
            assertThat(Results.amount(sheet, "electrical-power", "W")).isCloseTo(hydraulic / 0.4, within(1e-5));
            assertThat(Results.amount(sheet, "hours", "h")).isCloseTo(5.5, within(1e-9));
            assertThat(Results.amount(sheet, "energy", "Wh")).isCloseTo(hydraulic / 0.4 * 5.5, within(1e-4));
            assertThat(Results.term(sheet, "electrical-power", "eta", "")).isEqualTo(40);
        }

        @Test
        void every_kind_of_fitting_is_in_the_sum() {
            Worksheet many = USUAL.with("elbows", "1")
                    .with("valves", "2")
                    .with("checkValves", "3")
                    .work();
            assertThat(Results.term(many, "fittings", "k", "")).isCloseTo(1.5 + 1.5 + 0.3 + 6, within(1e-9));
        }

        @Test
        void the_other_law_can_be_chosen() {
            Worksheet hazen = USUAL.with("law", "hazen-williams").work();
            assertThat(Results.amount(hazen, "friction", "m"))
                    .isCloseTo(Friction.hazenWilliams(FLOW, 60.96, BORE, 150), within(1e-9));
            assertThat(Results.line(hazen, "friction").source()).isEqualTo(Sources.HAZEN_WILLIAMS);
        }
    }

    @Test
    void the_head_the_line_needs_goes_from_no_flow_to_half_as_much_again() {
        Worksheet sheet = USUAL.work();
        Table table = sheet.tables().getFirst();
        assertThat(table.rows()).hasSize(7);
        assertThat(Results.amount(table.rows().getFirst().get(0), "gpm")).isZero();
        assertThat(Results.amount(table.rows().getFirst().get(1), "ft")).isCloseTo(40, within(1e-9));
        assertThat(Results.amount(table.rows().get(4).get(0), "gpm")).isCloseTo(5, within(1e-8));
        assertThat(Results.amount(table.rows().get(4).get(1), "m")).isCloseTo(head(), within(1e-8));
        List<Amount> last = table.rows().getLast();
        assertThat(Results.amount(last.getFirst(), "gpm")).isCloseTo(7.5, within(1e-8));
        Curve curve = sheet.curves().getFirst();
        assertThat(curve.points()).hasSize(7);
        assertThat(curve.points().get(4).x()).isCloseTo(5 * 3.785411784, within(1e-8));
        assertThat(curve.points().get(4).y()).isCloseTo(head(), within(1e-9));
        assertThat(curve.marks()).singleElement().satisfies(mark -> {
            assertThat(mark.x()).isCloseTo(5 * 3.785411784, within(1e-8));
            assertThat(mark.y()).isCloseTo(head(), within(1e-9));
        });
    }

    @Nested
    class Findings {
        @Test
        void only_the_advice_to_look_at_the_pumps_curve_where_all_is_well() {
            Worksheet sheet = USUAL.work();
            assertThat(sheet.findings()).hasSize(1);
            assertThat(Results.notes(sheet)).singleElement().asString().contains("pump's own curve");
        }

        @Test
        void water_faster_than_8_feet_a_second() {
            // 21.55 gpm run 8 ft/s in 1.049 in
            assertThat(Results.warnings(USUAL.with("flow", "21.5 gpm").work())).isEmpty();
            assertThat(Results.warnings(USUAL.with("flow", "21.6 gpm").work()))
                    .singleElement()
                    .asString()
                    .startsWith("The water runs faster than 8 ft/s");
        }

        @Test
        void a_pump_high_above_the_water() {
            assertThat(Results.warnings(USUAL.with("suctionLift", "20 ft").work()))
                    .isEmpty();
            assertThat(Results.warnings(USUAL.with("suctionLift", "20.1 ft").work()))
                    .singleElement()
                    .asString()
                    .startsWith("The pump stands more than 20 ft");
        }

        @Test
        void friction_that_is_uncertain() {
            // Re is 2,300 at 0.997 gpm and 4,000 at 1.73 gpm
            assertThat(Results.notes(USUAL.with("flow", "0.98 gpm").work())).hasSize(1);
            assertThat(Results.notes(USUAL.with("flow", "1.02 gpm").work())).hasSize(2);
            assertThat(Results.notes(USUAL.with("flow", "1.7 gpm").work())).hasSize(2);
            assertThat(Results.notes(USUAL.with("flow", "1.76 gpm").work())).hasSize(1);
            Given<PumpFill> hazen = USUAL.with("law", "hazen-williams");
            assertThat(Results.notes(hazen.with("flow", "0.98 gpm").work()))
                    .hasSize(2)
                    .first()
                    .asString()
                    .startsWith("The Reynolds number is under 4,000");
            assertThat(Results.notes(hazen.with("flow", "1.76 gpm").work())).hasSize(1);
        }
    }

    @Nested
    class Refusals {
        @Test
        void a_suction_lift_beyond_the_whole_lift() {
            Given<PumpFill> low = USUAL.with("lift", "10 ft");
            assertThat(low.with("suctionLift", "10 ft").work().lines()).isNotEmpty();
            assertThatExceptionOfType(Refusal.class)
                    .isThrownBy(() -> low.with("suctionLift", "11 ft").work())
                    .withMessageStartingWith("suctionLift [3.3528 m] is more than the whole lift.");
        }

        @ParameterizedTest
        @ValueSource(doubles = {-1, Double.NaN})
        void what_must_not_be_negative(double value) {
            String end = " [" + value + "] must be 0 or more";
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Pumping.hydraulicPower(value, 1, 1))
                    .withMessage("flow" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Pumping.hydraulicPower(1, value, 1))
                    .withMessage("head" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Pumping.electricalPower(value, 1))
                    .withMessage("hydraulicPower" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Pumping.hours(value, 1))
                    .withMessage("volume" + end);
        }

        @ParameterizedTest
        @ValueSource(doubles = {0, -0.1, Double.NaN})
        void what_must_be_over_0(double value) {
            String end = " [" + value + "] must be over 0";
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Pumping.electricalPower(1, value))
                    .withMessage("efficiency" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Pumping.hours(1, value))
                    .withMessage("flow" + end);
        }

        @Test
        void an_efficiency_over_1() {
            assertThat(Pumping.electricalPower(5, 1)).isEqualTo(5);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Pumping.electricalPower(1, 1.01))
                    .withMessage("efficiency [1.01] must be from 0.0 to 1.0");
        }
    }
}
