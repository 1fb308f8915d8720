package org.firmset.trade.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.firmset.measure.Dimension;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.measure.UnitsFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Fractions of an inch as people write them, which these calculators need, and as tapes are marked. */
class FractionsTest {
    private static double inches(String text) {
        return Units.in(Units.parse(Dimension.LENGTH, text), "in", 9).doubleValue();
    }

    @ParameterizedTest(name = "{0}: {1} in")
    @CsvSource(delimiter = '|', textBlock = """
            7 5/8 in        | 7.625
            7 5/8in         | 7.625
            7 5/8"          | 7.625
            5/8 in          | 0.625
            -7 5/8 in       | -7.625
            +7 5/8 in       | 7.625
            12 ft 6 1/2 in  | 150.5
            9' 4 3/4"       | 112.75
            1 1/2 ft        | 18
            0 1/2 in        | 0.5
            1/3 in          | 0.333333333
            2 4/3 in        | 3.333333333
            """)
    void are_read(String text, double inches) {
        assertThat(inches(text)).isCloseTo(inches, within(1e-7));
    }

    @Test
    void go_with_every_unit() {
        assertThat(Units.parse(Dimension.VOLUME, "1 1/2 L").value()).isEqualByComparingTo(new BigDecimal("0.0015"));
        assertThat(Units.parse(Dimension.MASS, "1/2 kg").value()).isEqualByComparingTo(new BigDecimal("0.5"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"7 5/8", "7 5/ in", "7/ in", "5/8/2 in", "1/1234 in", "7 5 in", "-1/2 in"})
    void that_are_none_are_refused(String text) {
        assertThatExceptionOfType(UnitsFault.class)
                .isThrownBy(() -> Units.parse(Dimension.LENGTH, text))
                .withMessageStartingWith("'" + text + "' is not a number with its unit");
    }

    @Test
    void by_nothing_are_refused() {
        assertThatExceptionOfType(UnitsFault.class)
                .isThrownBy(() -> Units.parse(Dimension.LENGTH, "7 5/0 in"))
                .withMessageStartingWith("'7 5/0 in' divides by nothing");
    }

    @Test
    void what_is_shown_reads_back() {
        for (int sixteenths = 0; sixteenths <= 400; sixteenths++) {
            String shown = Show.amount(Amount.length(sixteenths / 16.0 * 0.0254), UnitSystem.US);
            assertThat(inches(shown)).as(shown).isCloseTo(sixteenths / 16.0, within(1e-7));
        }
    }
}
