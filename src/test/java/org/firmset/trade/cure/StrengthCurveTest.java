package org.firmset.trade.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class StrengthCurveTest {
    @ParameterizedTest(name = "{0}, {1} d: {2}")
    @DisplayName("t / (a + b t) with (4, 0.85) and (2.3, 0.92); ACI 209R-92 Eq. 2-1 from memory, numbers by arithmetic")
    @CsvSource(textBlock = """
            ACI_TYPE_I,   1, 0.2062
            ACI_TYPE_I,  28, 1.0072
            ACI_TYPE_III, 1, 0.3106
            ACI_TYPE_III, 7, 0.8009
            ACI_TYPE_III, 28, 0.9979
            """)
    void share_by_aci(StrengthCurve curve, double days, double share) {
        assertThat(curve.share(days)).isCloseTo(share, within(0.0001));
    }

    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvSource(textBlock = """
            EN_1992, RAPID,  EN_RAPID
            EN_1992, NORMAL, EN_NORMAL
            EN_1992, SLOW,   EN_SLOW
            ACI_209, NORMAL, ACI_TYPE_I
            ACI_209, RAPID,  ACI_TYPE_III
            """)
    void each_method_has_its_curve_for_a_cement(StrengthMethod method, Cement cement, StrengthCurve curve) {
        assertThat(StrengthCurve.of(method, cement)).contains(curve);
        assertThat(curve.method()).isEqualTo(method);
        assertThat(curve.cement()).isEqualTo(cement);
    }

    @Test
    void aci_has_none_for_slow_cement() {
        assertThat(StrengthCurve.of(StrengthMethod.ACI_209, Cement.SLOW)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void days_to_a_share_undo_the_share(StrengthCurve curve) {
        for (int percent = 1; percent <= 100; percent++) {
            assertThat(curve.share(curve.daysTo(percent / 100.0)))
                    .as("%s, %d %%", curve, percent)
                    .isCloseTo(percent / 100.0, within(1e-12));
        }
    }

    @ParameterizedTest
    @EnumSource
    void share_grows_with_age(StrengthCurve curve) {
        for (int hours = 1; hours < 24 * 100; hours++) {
            assertThat(curve.share((hours + 1) / 24.0))
                    .as("%s after %d h", curve, hours + 1)
                    .isGreaterThan(curve.share(hours / 24.0));
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_higher_share_is_never_there_sooner(StrengthCurve curve) {
        for (int permille = 1; permille < 1000; permille++) {
            assertThat(curve.daysTo((permille + 1) / 1000.0))
                    .as("%s, %d permille", curve, permille + 1)
                    .isGreaterThan(curve.daysTo(permille / 1000.0));
        }
    }

    @Test
    void formulas_name_their_letters() {
        assertThat(StrengthCurve.EN_NORMAL.shareFormula()).isEqualTo("r = exp(s (1 - sqrt(28 / t)))");
        assertThat(StrengthCurve.EN_NORMAL.daysFormula()).isEqualTo("t = 28 / (1 - ln(r) / s)^2");
        assertThat(StrengthCurve.EN_NORMAL.constants()).extracting("symbol").containsExactly("s");
        assertThat(StrengthCurve.ACI_TYPE_I.shareFormula()).isEqualTo("r = t / (a + b t)");
        assertThat(StrengthCurve.ACI_TYPE_I.daysFormula()).isEqualTo("t = a r / (1 - b r)");
        assertThat(StrengthCurve.ACI_TYPE_I.constants()).extracting("symbol").containsExactly("a", "b");
    }

    @Test
    void each_curve_names_its_source() {
        assertThat(StrengthCurve.EN_SLOW.source()).isSameAs(Sources.EN_STRENGTH);
        assertThat(StrengthCurve.ACI_TYPE_III.source()).isSameAs(Sources.ACI_STRENGTH);
        assertThat(StrengthMethod.EN_1992.words()).isEqualTo("EN 1992-1-1");
        assertThat(StrengthMethod.ACI_209.words()).isEqualTo("ACI 209R");
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @ValueSource(doubles = {0, -1, Double.NaN})
        void an_age_that_is_not_over_zero(double days) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> StrengthCurve.ACI_TYPE_I.share(days))
                    .withMessage("ageDays [" + days + "] must be over 0");
        }

        @ParameterizedTest
        @ValueSource(doubles = {0, -0.1, 1.01, Double.NaN})
        void a_share_that_is_none(double share) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> StrengthCurve.ACI_TYPE_I.daysTo(share))
                    .withMessage("share [" + share + "] must be over 0 and at most 1");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new StrengthGoal(share, StrengthCurve.EN_NORMAL, Ageing.EN_1992))
                    .withMessage("share [" + share + "] must be over 0 and at most 1");
        }
    }
}
