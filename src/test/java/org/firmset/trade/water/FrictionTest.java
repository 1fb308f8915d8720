package org.firmset.trade.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FrictionTest {
    private static final long SEED = Long.getLong("firmset.seed", 2027);
    private static final double BORE = 0.0266446;
    private static final double VISCOSITY = 1e-6;

    @ParameterizedTest(name = "Re {0}, roughness {1}: {2}")
    @CsvSource(textBlock = """
            2300,       0,      0.04728331390522
            4000,       0,      0.03990701405564
            4000,       0.001,  0.04091038986285
            10000,      0.05,   0.07380127563854
            100000,     0.0001, 0.01851386607747
            100000,     0.1,    0.10182056678004
            1000000,    0,      0.01164504099799
            100000000,  0.00001,0.00818755910268
            """)
    void colebrook_as_bisection_finds_it(double reynolds, double roughness, double factor) {
        assertThat(Friction.colebrook(reynolds, roughness)).isCloseTo(factor, within(1e-10));
    }

    @Test
    void colebrook_holds_to_1e_10_everywhere() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 2000; i++) {
            double re = Math.exp(random.nextDouble(Math.log(2300), Math.log(1e9)));
            double rough = random.nextDouble(0, 0.1);
            double f = Friction.colebrook(re, rough);
            double left = 1 / Math.sqrt(f);
            double right = -2 * Math.log10(rough / 3.7 + 2.51 * left / re);
            // df = 2 f^1.5 dx
            assertThat(Math.abs(left - right) * 2 * Math.pow(f, 1.5))
                    .as("seed %d, Re %s, roughness %s", SEED, re, rough)
                    .isLessThan(1e-10);
        }
    }

    @ParameterizedTest(name = "Re {0}: {1}")
    @CsvSource(textBlock = """
             100, 0.64
            2300, 0.02782608695652
            3150, 0.03436823840969
            4000, 0.04091038986285
            8000, 0.03414359512733
            """)
    void factor_from_laminar_to_turbulent(double reynolds, double factor) {
        assertThat(Friction.factor(reynolds, 0.001)).isCloseTo(factor, within(1e-10));
    }

    @Test
    void uncertain_is_only_what_lies_between() {
        assertThat(Friction.uncertain(2300)).isFalse();
        assertThat(Friction.uncertain(2300.1)).isTrue();
        assertThat(Friction.uncertain(3999.9)).isTrue();
        assertThat(Friction.uncertain(4000)).isFalse();
    }

    @Test
    void speed_and_reynolds_number() {
        assertThat(Friction.velocity(Math.PI, 2)).isCloseTo(1, within(1e-12));
        assertThat(Friction.reynolds(Math.PI, 2, 0.5)).isCloseTo(4, within(1e-12));
        assertThat(Friction.velocityHead(Math.PI * Water.GRAVITY, 2)).isCloseTo(Water.GRAVITY / 2, within(1e-12));
    }

    @Test
    void laminar_flow_loses_by_hagen_and_poiseuille() {
        double flow = 1e-5;
        double expected = 128 * VISCOSITY * 7 * flow / (Math.PI * Water.GRAVITY * Math.pow(BORE, 4));
        assertThat(Friction.darcy(flow, 7, BORE, 1.5e-6, VISCOSITY)).isCloseTo(expected, within(1e-12));
    }

    @Test
    void still_water_loses_nothing() {
        assertThat(Friction.darcy(0, 100, BORE, 1.5e-6, VISCOSITY)).isZero();
        assertThat(Friction.hazenWilliams(0, 100, BORE, 150)).isZero();
    }

    @Test
    void hazen_and_williams_follow_their_powers() {
        double once = Friction.hazenWilliams(6e-4, 100, BORE, 150);
        assertThat(Friction.hazenWilliams(6e-4, 200, BORE, 150) / once).isCloseTo(2, within(1e-12));
        assertThat(Friction.hazenWilliams(1.2e-3, 100, BORE, 150) / once).isCloseTo(Math.pow(2, 1.852), within(1e-12));
        assertThat(Friction.hazenWilliams(6e-4, 100, BORE, 75) / once).isCloseTo(Math.pow(2, 1.852), within(1e-12));
        assertThat(Friction.hazenWilliams(6e-4, 100, BORE / 2, 150) / once)
                .isCloseTo(Math.pow(2, 4.8704), within(1e-10));
    }

    @ParameterizedTest(name = "C {0}, {1} to 12 gpm")
    @CsvSource(textBlock = """
            140, 3
            150, 4.5
            """)
    void darcy_and_hazen_williams_agree_within_15_percent_for_smooth_1_inch_pipe(double c, double least) {
        SplittableRandom random = new SplittableRandom(SEED);
        double viscosity = Water.kinematicViscosity(20);
        for (int i = 0; i < 1000; i++) {
            double gpm = random.nextDouble(least, 12);
            double flow = gpm * UsUnits.GALLON / 60_000;
            double darcy = Friction.darcy(flow, 100, 1.049 * 0.0254, 1.5e-6, viscosity);
            double hazen = Friction.hazenWilliams(flow, 100, 1.049 * 0.0254, c);
            assertThat(darcy / hazen).as("seed %d, %s gpm", SEED, gpm).isBetween(0.85, 1.15);
        }
    }

    @Test
    void equivalent_length_loses_as_much_as_the_fittings() {
        double length = Friction.equivalentLength(6, BORE, 0.03);
        assertThat(length).isCloseTo(6 * BORE / 0.03, within(1e-12));
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @ValueSource(doubles = {2299.9, 1.1e9, Double.NaN})
        void a_reynolds_number_that_is_not_turbulent(double reynolds) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Friction.colebrook(reynolds, 0))
                    .withMessage("reynolds [" + reynolds + "] must be from 2300.0 to 1.0E9");
        }

        @ParameterizedTest
        @ValueSource(doubles = {-0.001, 0.101, Double.NaN})
        void a_roughness_beyond_a_tenth_of_the_bore(double roughness) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Friction.colebrook(1e5, roughness))
                    .withMessage("relativeRoughness [" + roughness + "] must be from 0.0 to 0.1");
        }

        @ParameterizedTest
        @ValueSource(doubles = {0, -1, Double.NaN})
        void what_must_be_over_0(double value) {
            String end = " [" + value + "] must be over 0";
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Friction.factor(value, 0))
                    .withMessage("reynolds" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Friction.velocity(1, value))
                    .withMessage("bore" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Friction.reynolds(1, 1, value))
                    .withMessage("viscosity" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Friction.hazenWilliams(1, 1, 1, value))
                    .withMessage("c" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Friction.hazenWilliams(1, 1, value, 1))
                    .withMessage("bore" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Friction.equivalentLength(1, value, 1))
                    .withMessage("bore" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Friction.equivalentLength(1, 1, value))
                    .withMessage("factor" + end);
        }

        @ParameterizedTest
        @ValueSource(doubles = {-1, Double.NaN})
        void what_must_not_be_negative(double value) {
            String end = " [" + value + "] must be 0 or more";
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Friction.velocity(value, 1))
                    .withMessage("flow" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Friction.darcy(1, value, 1, 0, 1))
                    .withMessage("length" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Friction.hazenWilliams(value, 1, 1, 1))
                    .withMessage("flow" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Friction.hazenWilliams(1, value, 1, 1))
                    .withMessage("length" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Friction.equivalentLength(value, 1, 1))
                    .withMessage("k" + end);
        }
    }
}
