package org.firmset.trade.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.firmset.trade.climate.DailyTemperature;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class StrengthTest {
    private static final LocalDate POUR = LocalDate.of(2027, 5, 1);

    @ParameterizedTest(name = "{0}, {1} d: {2}")
    @DisplayName("ST-01: share of the 28-day strength at 20 °C; EN 1992-1-1 Eq. 3.2, formula and s verified at"
            + " usingeurocodes.com, numbers by arithmetic")
    @CsvSource(textBlock = """
            NORMAL,  1, 0.342
            NORMAL,  2, 0.504
            NORMAL,  3, 0.598
            NORMAL,  7, 0.779
            NORMAL, 14, 0.902
            NORMAL, 28, 1.000
            NORMAL, 56, 1.076
            NORMAL, 90, 1.117
            RAPID,   3, 0.663
            RAPID,   7, 0.819
            SLOW,    3, 0.458
            SLOW,    7, 0.684
            """)
    void share_with_age(Cement cement, double days, double share) {
        assertThat(Strength.share(days, cement)).isCloseTo(share, within(0.001));
    }

    @ParameterizedTest(name = "{0} of the strength: {1} d")
    @DisplayName("ST-03: days to a share of the 28-day strength, EN normal cement; memory: algebra on ST-01")
    @CsvSource(textBlock = """
            0.50, 1.97
            0.70, 4.75
            """)
    void days_to_a_share(double share, double days) {
        assertThat(Strength.daysTo(share, Cement.NORMAL)).isCloseTo(days, within(0.01));
    }

    @ParameterizedTest(name = "{0} °C: {1}")
    @DisplayName("ST-04: temperature-adjusted age of a day; EN 1992-1-1 B.10 and CEB-FIP MC 90, 4000 K and 293 K"
            + " verified in the Model Code text, 13.65 from memory")
    @CsvSource(textBlock = """
             5, 0.478
            10, 0.616
            20, 0.998
            30, 1.566
            """)
    void age_factor(double celsius, double factor) {
        assertThat(Strength.ageFactor(celsius)).isCloseTo(factor, within(0.001));
    }

    @ParameterizedTest(name = "{0} °C: {1} d")
    @DisplayName("ST-05: days to 70 % in the cold, EN normal cement; memory: arithmetic on ST-03 and ST-04")
    @CsvSource(textBlock = """
             5, 9.95
            10, 7.72
            """)
    void days_to_seventy_percent_in_the_cold(double celsius, double days) {
        assertThat(Strength.daysTo(0.7, Cement.NORMAL) / Strength.ageFactor(celsius))
                .isCloseTo(days, within(0.02));
        assertThat(Strength.calendarDaysTo(0.7, Cement.NORMAL, POUR, d -> celsius))
                .as("whole days")
                .isEqualTo((int) Math.ceil(days));
    }

    @Test
    void each_day_counts_with_its_own_temperature() {
        DailyTemperature coldFirst = date -> date.isBefore(POUR.plusDays(4)) ? 5 : 20;
        // 3 days at 5 °C make 1.43 of the 4.75 days, 3.33 more days at 20 °C are needed
        assertThat(Strength.calendarDaysTo(0.7, Cement.NORMAL, POUR, coldFirst)).isEqualTo(3 + 4);
    }

    @Test
    void frost_does_not_count() {
        DailyTemperature frostFirst = date -> date.isBefore(POUR.plusDays(11)) ? -1 : 20;
        assertThat(Strength.calendarDaysTo(0.7, Cement.NORMAL, POUR, frostFirst))
                .isEqualTo(10 + 5);
    }

    @Test
    void what_never_gets_warm_takes_ten_years_and_no_longer() {
        assertThat(Strength.calendarDaysTo(0.7, Cement.SLOW, POUR, d -> -5)).isEqualTo(3650);
    }

    @Test
    void water_that_freezes_at_zero_ages_no_more() {
        assertThat(Strength.ageFactor(0)).isPositive();
        assertThat(Strength.ageFactor(-0.01)).isZero();
    }

    @ParameterizedTest
    @EnumSource
    void days_to_a_share_undo_the_share(Cement cement) {
        for (int percent = 1; percent <= 100; percent++) {
            double days = Strength.daysTo(percent / 100.0, cement);
            assertThat(Strength.share(days, cement)).isCloseTo(percent / 100.0, within(1e-12));
        }
        assertThat(Strength.daysTo(1, cement)).isEqualTo(28);
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @ValueSource(doubles = {0, -1, Double.NaN})
        void an_age_that_is_not_over_zero(double days) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Strength.share(days, Cement.NORMAL))
                    .withMessage("ageDays [" + days + "] must be over 0");
        }

        @ParameterizedTest
        @ValueSource(doubles = {0, -0.1, 1.01, Double.NaN})
        void a_share_that_is_none(double share) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Strength.daysTo(share, Cement.NORMAL))
                    .withMessage("share [" + share + "] must be over 0 and at most 1");
        }
    }
}
