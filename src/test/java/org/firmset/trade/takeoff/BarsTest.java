package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BarsTest {
    private static final double INCH = 0.0254;
    private static final double PSI = 6894.757293168361;

    private static double inches(double metres) {
        return metres / INCH;
    }

    @ParameterizedTest(name = "{0}, tie {1}: {2} d inside, {3} d straight")
    @DisplayName("RB-02: bends and straight ends; ACI 318-19 Table 25.3.1, 318-11 7.1.3 and 7.2.2, verified;"
            + " 16 mm as no. 5, common practice, no source")
    @CsvSource(textBlock = """
            NO_3,  false, 6, 12
            NO_8,  false, 6, 12
            NO_9,  false, 8, 12
            NO_3,  true,  4, 6
            NO_5,  true,  4, 6
            MM_16, true,  4, 6
            NO_6,  true,  6, 12
            NO_9,  true,  8, 12
            """)
    void bends_and_straight_ends(BarSize size, boolean tie, double bend, double end) {
        assertThat(Bars.leastBend(size, tie) / size.diameter()).isCloseTo(bend, within(1e-9));
        assertThat(Bars.hookEnd90(size, tie) / size.diameter()).isCloseTo(end, within(1e-9));
    }

    @Test
    void straight_end_of_a_180_degree_hook_is_two_and_a_half_inches_until_4_diameters_are_more() {
        assertThat(inches(Bars.hookEnd180(BarSize.NO_5))).isCloseTo(2.5, within(1e-9));
        assertThat(inches(Bars.hookEnd180(BarSize.NO_6))).isCloseTo(3, within(1e-9));
    }

    @Test
    void hooks_of_a_thin_tie() {
        // 6 + 2 + 1 diameters of 1/2 in; 2 1/2 in + 2.5 pi d - 3 d
        assertThat(inches(Bars.hookLeg90(BarSize.NO_4, true))).isCloseTo(4.5, within(1e-9));
        assertThat(inches(Bars.hookAdds180(BarSize.NO_4, true)))
                .isCloseTo(2.5 + 2.5 * Math.PI * 0.5 - 1.5, within(1e-9));
    }

    @Test
    void deduction_of_a_tie_is_that_of_its_narrower_bend() {
        // 2 (2 d + d) - pi / 2 (2 d + d / 2)
        assertThat(Bars.bendDeduction90(BarSize.NO_4, true) / BarSize.NO_4.diameter())
                .isCloseTo(6 - 1.25 * Math.PI, within(1e-9));
    }

    @ParameterizedTest(name = "{0}, favourable {1}: {2} d")
    @DisplayName("RB-07: development length, ACI 318-14/-19 25.4.2.3, formula verified")
    @CsvSource(textBlock = """
            NO_6, true,  43.82
            NO_7, true,  54.77
            NO_6, false, 65.73
            """)
    void development_length(BarSize size, boolean favourable, double diameters) {
        assertThat(Bars.developmentLength(size, 60_000 * PSI, 3000 * PSI, favourable) / size.diameter())
                .isCloseTo(diameters, within(0.005));
    }

    @Test
    @DisplayName("concrete over 10,000 psi counts as that; ACI 318 25.4.1.4, memory")
    void strong_concrete_shortens_no_further() {
        double strong = Bars.developmentLength(BarSize.NO_4, 60_000 * PSI, 10_000 * PSI, true);
        assertThat(strong / BarSize.NO_4.diameter()).isCloseTo(24, within(1e-9));
        assertThat(Bars.developmentLength(BarSize.NO_4, 60_000 * PSI, 12_000 * PSI, true))
                .isCloseTo(strong, within(1e-12));
    }

    @Test
    void lap_in_concrete_is_12_inches_at_least() {
        // 1.3 x 24 x 3/8 in = 11.7 in
        assertThat(inches(Bars.concreteLap(BarSize.NO_3, 60_000 * PSI, 10_000 * PSI, true)))
                .isCloseTo(12, within(1e-9));
        assertThat(inches(Bars.concreteLap(BarSize.NO_4, 60_000 * PSI, 10_000 * PSI, true)))
                .isCloseTo(15.6, within(1e-9));
    }

    @ParameterizedTest(name = "{0} at {1} psi, high {2}: {3} in")
    @DisplayName("RB-08: lap in masonry, IBC 2107.2.1 Eq. 21-1, verified")
    @CsvSource(textBlock = """
            NO_4, 10000, false, 20
            NO_4, 20000, false, 20
            NO_4, 24000, false, 24
            NO_3, 10000, false, 15
            MM_8, 10000, false, 12.598425
            NO_4, 20000, true,  30
            NO_4, 24000, true,  36
            NO_4, 30000, true,  36
            NO_4, 40000, true,  40
            """)
    void lap_in_masonry(BarSize size, double psi, boolean high, double inches) {
        assertThat(inches(Bars.masonryLap(size, psi * PSI, high))).isCloseTo(inches, within(1e-6));
    }

    @ParameterizedTest(name = "{0} ft in bars of 20 ft, lap 2 ft: {1}")
    @CsvSource(textBlock = """
            1,     1
            20,    1
            20.01, 2
            38,    2
            38.01, 3
            """)
    void bars_for_a_run(double feet, long bars) {
        assertThat(Bars.barsForRun(feet, 20, 2)).isEqualTo(bars);
    }

    @ParameterizedTest(name = "{0} ft round in bars of 20 ft, lap 2 ft: {1}")
    @CsvSource(textBlock = """
            1,     1
            18,    1
            18.01, 2
            36,    2
            36.01, 3
            """)
    void bars_for_a_loop(double feet, long bars) {
        assertThat(Bars.barsForLoop(feet, 20, 2)).isEqualTo(bars);
    }

    @ParameterizedTest(name = "{0} in wide, 3 in from the edge, 12 in apart: {1}")
    @CsvSource(textBlock = """
            7,     1
            17.99, 1
            18,    2
            29.99, 2
            30,    3
            """)
    void bars_across(double inches, long bars) {
        assertThat(Bars.barsAcross(inches * INCH, 3 * INCH, 12 * INCH)).isEqualTo(bars);
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @ValueSource(doubles = {0, -1, Double.NaN})
        void what_must_be_over_0(double bad) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Bars.developmentLength(BarSize.NO_4, bad, 1, true))
                    .withMessage("yieldPascals [" + bad + "] must be over 0");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Bars.developmentLength(BarSize.NO_4, 1, bad, true))
                    .withMessage("strengthPascals [" + bad + "] must be over 0");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Bars.masonryLap(BarSize.NO_4, bad, false))
                    .withMessage("stressPascals [" + bad + "] must be over 0");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Bars.barsForRun(bad, 6, 0.5))
                    .withMessage("run [" + bad + "] must be over 0");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Bars.barsForLoop(bad, 6, 0.5))
                    .withMessage("loop [" + bad + "] must be over 0");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Bars.barsAcross(3, 0.1, bad))
                    .withMessage("spacing [" + bad + "] must be over 0");
        }

        @ParameterizedTest
        @ValueSource(doubles = {-0.01, 6, 7, Double.NaN})
        void a_lap_that_is_none_or_as_long_as_the_bar(double bad) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Bars.barsForRun(10, 6, bad))
                    .withMessage("lap [" + bad + "] must be 0 or more and under [6.0]");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Bars.barsForLoop(10, 6, bad))
                    .withMessage("lap [" + bad + "] must be 0 or more and under [6.0]");
        }

        @ParameterizedTest
        @ValueSource(doubles = {-0.01, 1.5, Double.NaN})
        void an_edge_that_is_half_the_width(double bad) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Bars.barsAcross(3, bad, 0.3))
                    .withMessage("edge [" + bad + "] must be 0 or more and under [1.5]");
        }

        @Test
        void nothing_at_the_limits() {
            assertThat(Bars.barsForRun(10, 6, 0)).isEqualTo(2);
            assertThat(Bars.barsAcross(3, 0, 1)).isEqualTo(4);
        }
    }
}
