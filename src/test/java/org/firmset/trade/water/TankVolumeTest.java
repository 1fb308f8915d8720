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

class TankVolumeTest {
    private static final long SEED = Long.getLong("firmset.seed", 2027);

    @Test
    void an_upright_cylinder() {
        assertThat(TankVolume.upright(2, 3)).isCloseTo(3 * Math.PI, within(1e-12));
        assertThat(TankVolume.upright(2, 0)).isZero();
    }

    @ParameterizedTest(name = "depth {0} of 2: {1} of the whole")
    @CsvSource(textBlock = """
            0,   0
            0.5, 0.19550110947789
            1,   0.5
            1.5, 0.80449889052211
            2,   1
            """)
    void a_lying_cylinder_by_the_circular_segment(double depth, double share) {
        // a quarter of the depth: (acos(1/2) - 1/2 sqrt(3/4)) / pi
        assertThat(TankVolume.lying(2, 5, depth) / (5 * Math.PI)).isCloseTo(share, within(1e-12));
    }

    @Test
    void a_fuller_lying_cylinder_holds_more() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 1000; i++) {
            double diameter = random.nextDouble(0.3, 6);
            double depth = random.nextDouble(0, diameter * 0.999);
            double more = random.nextDouble(depth, diameter);
            assertThat(TankVolume.lying(diameter, 2, more))
                    .as("seed %d, diameter %s, depth %s and %s", SEED, diameter, depth, more)
                    .isGreaterThanOrEqualTo(TankVolume.lying(diameter, 2, depth));
        }
    }

    @Test
    void a_box() {
        assertThat(TankVolume.box(2, 3, 0.5)).isEqualTo(3);
    }

    @ParameterizedTest(name = "depth {0}: {1}")
    @CsvSource(textBlock = """
            0,   0
            0.5, 0.04166666666667
            1,   0.33333333333333
            1.5, 0.83333333333333
            3,   2.33333333333333
            """)
    void a_cone_bottom_in_units_of_its_section(double depth, double volume) {
        assertThat(TankVolume.coneBottom(2, 1, depth) / Math.PI).isCloseTo(volume, within(1e-12));
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @ValueSource(doubles = {0, -1, Double.NaN})
        void sides_that_are_not_over_0(double value) {
            String end = " [" + value + "] must be over 0";
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankVolume.upright(value, 1))
                    .withMessage("diameter" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankVolume.lying(value, 1, 0))
                    .withMessage("diameter" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankVolume.lying(1, value, 0))
                    .withMessage("length" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankVolume.box(value, 1, 1))
                    .withMessage("length" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankVolume.box(1, value, 1))
                    .withMessage("width" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankVolume.coneBottom(value, 1, 1))
                    .withMessage("diameter" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankVolume.coneBottom(1, value, 1))
                    .withMessage("cone" + end);
        }

        @ParameterizedTest
        @ValueSource(doubles = {-0.1, Double.NaN})
        void depths_under_0(double value) {
            String end = " [" + value + "] must be 0 or more";
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankVolume.upright(1, value))
                    .withMessage("depth" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankVolume.box(1, 1, value))
                    .withMessage("depth" + end);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankVolume.coneBottom(1, 1, value))
                    .withMessage("depth" + end);
        }

        @ParameterizedTest
        @ValueSource(doubles = {-0.1, 2.1, Double.NaN})
        void a_depth_that_is_not_in_the_lying_tank(double depth) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> TankVolume.lying(2, 1, depth))
                    .withMessage("depth [" + depth + "] must be from 0.0 to 2.0");
        }
    }
}
