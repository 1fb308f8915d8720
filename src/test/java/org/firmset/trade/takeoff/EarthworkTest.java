package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.firmset.trade.takeoff.Earthwork.Ground;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EarthworkTest {
    @Test
    void ground_swells_when_dug_and_shrinks_when_compacted() {
        assertThat(Earthwork.loose(100, 0.25)).isEqualTo(125);
        assertThat(Earthwork.loose(0, 0)).isZero();
        assertThat(Earthwork.loose(10, 1)).isEqualTo(20);
        assertThat(Earthwork.inGroundFor(90, 0.1)).isCloseTo(100, within(1e-9));
        assertThat(Earthwork.inGroundFor(90, 0)).isEqualTo(90);
        assertThat(Earthwork.inGroundFor(1, 0.9)).isCloseTo(10, within(1e-9));
        assertThat(Ground.CLAY.loadFactor()).isCloseTo(1 / 1.4, within(1e-12));
    }

    @ParameterizedTest(name = "{0} deep in layers of 0.2, {1} compacted: {2}")
    @CsvSource(textBlock = """
            0.16,  0.8,   1
            0.161, 0.8,   2
            0.45,  0.8,   3
            0.2,   1,     1
            0.001, 0.001, 5
            """)
    void layers(double depth, double share, long lifts) {
        assertThat(Earthwork.lifts(depth, 0.2, share)).isEqualTo(lifts);
    }

    @Test
    void mass_dry_and_moist() {
        assertThat(Earthwork.dryMass(2, 2000, 0.95)).isEqualTo(3800);
        assertThat(Earthwork.dryMass(0, 2000, 1.1)).isZero();
        assertThat(Earthwork.moistMass(1000, 0.06)).isEqualTo(1060);
        assertThat(Earthwork.moistMass(1000, 0)).isEqualTo(1000);
        assertThat(Earthwork.moistMass(0, 1)).isZero();
    }

    @ParameterizedTest(name = "{0}: {1}, {2} kg/m3")
    @CsvSource(textBlock = """
            CRUSHED_ROCK, 0.8559, 1779.8
            SAND,         0.8559, 1661.2
            EARTH,        0.72,   1601.8
            CLAY,         0.6294, 1601.8
            """)
    void fills(FillMaterial fill, double share, double density) {
        assertThat(fill.compactedShare()).isCloseTo(share, within(0.00005));
        assertThat(fill.compactedDensity()).isCloseTo(density, within(0.05));
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @ValueSource(doubles = {-0.01, Double.NaN, Double.POSITIVE_INFINITY})
        void volumes_and_masses_that_are_none(double bad) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Earthwork.loose(bad, 0.2))
                    .withMessage("inGround [" + bad + "] must be 0 or more");
            assertThatIllegalArgumentException().isThrownBy(() -> Earthwork.inGroundFor(bad, 0.1));
            assertThatIllegalArgumentException().isThrownBy(() -> Earthwork.dryMass(bad, 2000, 1));
            assertThatIllegalArgumentException().isThrownBy(() -> Earthwork.dryMass(1, bad, 1));
            assertThatIllegalArgumentException().isThrownBy(() -> Earthwork.moistMass(bad, 0.1));
        }

        @ParameterizedTest
        @ValueSource(doubles = {-0.01, 1.2, Double.NaN})
        void shares_that_are_none(double bad) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Earthwork.loose(1, bad))
                    .withMessage("swell [" + bad + "] must be from 0.0 to 1.0");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Earthwork.inGroundFor(1, bad))
                    .withMessage("shrink [" + bad + "] must be from 0.0 to 0.9");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Earthwork.lifts(1, 1, bad))
                    .withMessage("compactedShare [" + bad + "] must be from 0.001 to 1.0");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Earthwork.dryMass(1, 1, bad))
                    .withMessage("relative [" + bad + "] must be from 0.001 to 1.1");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Earthwork.moistMass(1, bad))
                    .withMessage("water [" + bad + "] must be from 0.0 to 1.0");
        }

        @ParameterizedTest
        @ValueSource(doubles = {0, -1, Double.NaN})
        void depths_that_are_not_over_0(double bad) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Earthwork.lifts(bad, 1, 0.8))
                    .withMessage("depth [" + bad + "] and looseLift [1.0] must be over 0");
            assertThatIllegalArgumentException().isThrownBy(() -> Earthwork.lifts(1, bad, 0.8));
        }
    }
}
