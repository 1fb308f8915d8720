package org.firmset.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.firmset.measure.Dimension;
import org.firmset.measure.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
            degC, CELSIUS
            °C,   CELSIUS
            C,    CELSIUS
            degF, FAHRENHEIT
            °F,   FAHRENHEIT
            F,    FAHRENHEIT
            """)
    void spellings_of_the_units(String written, Scale scale) {
        assertThat(Scale.of(written)).contains(scale);
    }

    @Test
    void other_units_are_none() {
        assertThat(Scale.of("K")).isEmpty();
    }

    @Test
    void a_temperature_is_what_the_reader_of_quantities_makes_of_it() {
        for (int tenths = -760; tenths <= 1400; tenths++) {
            BigDecimal number = BigDecimal.valueOf(tenths, 1);
            for (Scale scale : Scale.values()) {
                String text = number.toPlainString() + " " + scale.symbol();
                assertThat(scale.celsius(number))
                        .as(text)
                        .isEqualTo(Units.parse(Dimension.TEMPERATURE, text).amount());
            }
        }
    }
}
