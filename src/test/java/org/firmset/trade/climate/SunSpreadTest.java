package org.firmset.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SunSpreadTest {
    @Test
    void where_it_never_rains_the_days_fall_about_the_mean() {
        assertThat(SunSpread.USUAL.hours(5, 0, 50)).isCloseTo(5, within(1e-6));
        // the 16th percentile lies one deviation, 30 % of 5 h, under the mean
        assertThat(SunSpread.USUAL.hours(5, 0, 16)).isCloseTo(3.5, within(0.01));
    }

    @Test
    void dry_and_wet_days_together_keep_the_mean() {
        double sum = 0;
        for (int percent = 1; percent <= 99; percent++) {
            sum += SunSpread.USUAL.hours(4, 0.4, percent);
        }
        assertThat(sum / 99).isCloseTo(4, within(0.05));
    }

    @Test
    void more_wet_days_make_a_poorer_poor_day_against_the_same_dry_one() {
        double few = SunSpread.USUAL.hours(5 * (1 - 0.1 * 0.5), 0.1, 20);
        double many = SunSpread.USUAL.hours(5 * (1 - 0.5 * 0.5), 0.5, 20);
        assertThat(many).isLessThan(few);
    }

    @Test
    void no_sun_is_no_sun_and_nonsense_is_refused() {
        assertThat(SunSpread.USUAL.hours(0, 0.5, 20)).isZero();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SunSpread.USUAL.hours(5, 0.5, 0))
                .withMessage("percent [0.0] must be from 1.0 to 99.0");
        assertThatIllegalArgumentException().isThrownBy(() -> new SunSpread(0, 0.3));
    }
}
