package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BarSizeTest {
    @ParameterizedTest(name = "{1}: {2} mm, {3} kg/m")
    @DisplayName("RB-01: diameters of ASTM A615 Table 1 and 490 lb/ft3, verified; metric bars by the same density")
    @CsvSource(textBlock = """
            NO_3,  #3,    9.525, 0.5593
            NO_4,  #4,    12.7,  0.9943
            NO_8,  #8,    25.4,  3.9772
            NO_11, #11,   35.814, 7.9070
            MM_8,  8 mm,  8,     0.3945
            MM_16, 16 mm, 16,    1.5781
            MM_20, 20 mm, 20,    2.4659
            """)
    void words_diameter_and_mass(BarSize size, String words, double millimetres, double kilograms) {
        assertThat(size.words()).isEqualTo(words);
        assertThat(size.diameter() * 1000).isCloseTo(millimetres, within(1e-9));
        assertThat(size.kilogramsPerMetre()).isCloseTo(kilograms, within(0.0001));
    }

    @Test
    void section_is_that_of_a_round_bar() {
        assertThat(BarSize.MM_20.section()).isCloseTo(Math.PI * 0.01 * 0.01, within(1e-12));
    }

    @ParameterizedTest(name = "{0}: thin {1}, over no. 6 {2}, thick {3}")
    @CsvSource(textBlock = """
            NO_3,  true,  false, false
            NO_5,  true,  false, false
            NO_6,  false, false, false
            NO_7,  false, true,  false
            NO_8,  false, true,  false
            NO_9,  false, true,  true
            NO_11, false, true,  true
            MM_16, true,  false, false
            MM_20, false, true,  false
            """)
    void classes_of_bend_and_development(BarSize size, boolean thin, boolean overNo6, boolean thick) {
        assertThat(size.isThin()).isEqualTo(thin);
        assertThat(size.isOverNo6()).isEqualTo(overNo6);
        assertThat(size.isThick()).isEqualTo(thick);
    }
}
