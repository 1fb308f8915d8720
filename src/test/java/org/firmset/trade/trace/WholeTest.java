package org.firmset.trade.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WholeTest {
    @ParameterizedTest(name = "{0}: up {1}, down {2}")
    @CsvSource(textBlock = """
            0,          0,    0
            42,         42,   42
            42.5,       43,   42
            42.00004,   42,   42
            42.00005,   43,   42
            41.99996,   42,   42
            41.99995,   42,   41
            0.0000009,  0,    0
            0.0000011,  1,    0
            -1.5,       -1,   -2
            -42.00004,  -42,  -42
            -41.99996,  -42,  -42
            5000.0009,  5000, 5000
            5000.0011,  5001, 5000
            4999.9991,  5000, 5000
            4999.9989,  5000, 4999
            """)
    void a_millionth_part_is_forgiven_and_never_more_than_a_thousandth(double value, long up, long down) {
        assertThat(Whole.up(value)).isEqualTo(up);
        assertThat(Whole.down(value)).isEqualTo(down);
    }

    @Test
    void sums_of_binary_fractions_do_not_round_up_to_one_more() {
        assertThat(Whole.up(0.1 + 0.2 + 0.7)).isEqualTo(1);
        assertThat(Whole.up(20 * 1.05)).isEqualTo(21);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void what_is_no_number_is_refused(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Whole.up(value))
                .withMessage("value [" + value + "] must be a finite number");
        assertThatIllegalArgumentException().isThrownBy(() -> Whole.down(value));
    }
}
