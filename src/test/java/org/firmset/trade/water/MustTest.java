package org.firmset.trade.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MustTest {
    @Test
    void what_is_allowed_comes_back() {
        assertThat(Must.beOver0("x", Double.MIN_VALUE)).isEqualTo(Double.MIN_VALUE);
        assertThat(Must.be0OrMore("x", 0)).isZero();
        assertThat(Must.be0OrMore("x", 2)).isEqualTo(2);
        assertThat(Must.lie("x", 1, 1, 2)).isEqualTo(1);
        assertThat(Must.lie("x", 2, 1, 2)).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN})
    void what_is_not_over_0_is_refused(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Must.beOver0("x", value))
                .withMessage("x [" + value + "] must be over 0");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-Double.MIN_VALUE, Double.NaN})
    void what_is_under_0_is_refused(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Must.be0OrMore("x", value))
                .withMessage("x [" + value + "] must be 0 or more");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.999, 2.001, Double.NaN})
    void what_lies_outside_is_refused(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Must.lie("x", value, 1, 2))
                .withMessage("x [" + value + "] must be from 1.0 to 2.0");
    }
}
