package org.firmset.trade.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BatchTest {
    /** The solids hold as much heat as 220 kg of water. */
    private static final Batch BATCH = new Batch(1000, 5, 110);

    @Test
    void water_and_solids_meet_by_their_heat() {
        assertThat(BATCH.concreteCelsius(65)).isCloseTo(25, within(1e-12));
        assertThat(BATCH.waterCelsius(25)).isCloseTo(65, within(1e-12));
    }

    @Test
    void cold_solids_may_want_water_that_no_kettle_gives() {
        assertThat(BATCH.waterCelsius(40)).isCloseTo(110, within(1e-12));
        assertThat(BATCH.waterCelsius(1)).isCloseTo(-7, within(1e-12));
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @ValueSource(doubles = {0, -1, Double.NaN})
        void masses_that_are_none(double kilograms) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new Batch(kilograms, 5, 110))
                    .withMessage("solidsKilograms [" + kilograms + "] must be over 0");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new Batch(1000, 5, kilograms))
                    .withMessage("waterKilograms [" + kilograms + "] must be over 0");
        }

        @ParameterizedTest
        @ValueSource(doubles = {-30.1, 80.1, Double.NaN})
        void temperatures_that_are_none(double celsius) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new Batch(1000, celsius, 110))
                    .withMessage("solidsCelsius [" + celsius + "] must be from -30.0 to 80.0");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> BATCH.waterCelsius(celsius))
                    .withMessage("concreteCelsius [" + celsius + "] must be from -30.0 to 80.0");
        }

        @ParameterizedTest
        @ValueSource(doubles = {-0.1, 100.1, Double.NaN})
        void water_that_is_ice_or_steam(double celsius) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> BATCH.concreteCelsius(celsius))
                    .withMessage("waterCelsius [" + celsius + "] must be from 0.0 to 100.0");
        }
    }
}
