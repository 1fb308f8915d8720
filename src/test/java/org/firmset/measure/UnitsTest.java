package org.firmset.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitsTest {
    @ParameterizedTest(name = "{0}: {1} is {2}")
    @CsvSource(textBlock = """
            MASS,        80 lb,          36.2873896 kg
            MASS,        1 oz,           0.028349523 kg
            MASS,        1 ton,          907.18474 kg
            MASS,        2.5 t,          2500 kg
            MASS,        5 lb 8 oz,      2.494758035 kg
            MASS,        500 g,          0.5 kg
            VOLUME,      1 gal,          0.003785412 m3
            VOLUME,      1000 gal,       3.785411784 m3
            VOLUME,      4 qt,           0.003785412 m3
            VOLUME,      1 ft3,          0.028316847 m3
            VOLUME,      1000000 ft3,    28316.846592 m3
            VOLUME,      27 ft3,         0.764554858 m3
            VOLUME,      1 yd3,          0.764554858 m3
            VOLUME,      20 L,           0.02 m3
            VOLUME,      20 l,           0.02 m3
            VOLUME,      1 m³,           1 m3
            LENGTH,      1 ft,           0.3048 m
            LENGTH,      12 ft 6 in,     3.81 m
            LENGTH,      12' 6",         3.81 m
            LENGTH,      1 mi,           1609.344 m
            LENGTH,      3.8m,           3.8 m
            LENGTH,      600 mm,         0.6 m
            ENERGY,      2.4 kWh,        2400 Wh
            ENERGY,      3.6 MJ,         1000 Wh
            POWER,       0.9 kW,         900 W
            POWER,       1 hp,           745.699871582 W
            TEMPERATURE, 40 degF,        4.444444444 degC
            TEMPERATURE, -40 °F,         -40 degC
            TEMPERATURE, 4.5 °C,         4.5 degC
            TEMPERATURE, 273.15 K,       0 degC
            """)
    void reads_quantities_as_people_write_them(Dimension dimension, String text, String stored) {
        assertThat(Units.parse(dimension, text)).hasToString(stored);
    }

    @ParameterizedTest(name = "{0} {1} is {2} {3} exactly")
    @CsvSource(textBlock = """
            MASS,   36.2873896,  80,                 lb
            LENGTH, 3.048,       10.000000000000,    ft
            VOLUME, 3.785411784, 1000.00000000,      gal
            LENGTH, 1609.344,    1.0000000000,       mi
            """)
    void converts_exactly(Dimension dimension, BigDecimal stored, BigDecimal value, String symbol) {
        assertThat(Units.in(dimension.of(stored), symbol, 9)).isEqualByComparingTo(value);
    }

    @Test
    void one_gallon_is_exact_to_the_nine_decimals_that_are_kept() {
        assertThat(new BigDecimal("0.003785411784").subtract(value("1 gal")).abs())
                .isLessThanOrEqualTo(new BigDecimal("0.0000000005"));
    }

    private static BigDecimal value(String volume) {
        return Units.parse(Dimension.VOLUME, volume).value();
    }

    @Test
    void a_quantity_is_the_same_however_it_was_written() {
        assertThat(Units.parse(Dimension.LENGTH, "1.50 m")).isEqualTo(Units.parse(Dimension.LENGTH, "150 cm"));
        assertThat(Units.parse(Dimension.MASS, "1000 kg")).isEqualTo(Units.parse(Dimension.MASS, "1 t"));
        assertThat(Units.parse(Dimension.MASS, "0.000 kg")).isEqualTo(Units.parse(Dimension.MASS, "0 lb"));
    }

    @ParameterizedTest(name = "{0} {1} in {2}: {3}")
    @CsvSource(textBlock = """
            MASS,        80 lb,     METRIC, 36 kg
            MASS,        80 lb,     US,     80 lb
            MASS,        1234 kg,   METRIC, '1,234 kg'
            VOLUME,      0.6 ft3,   METRIC, 17 L
            VOLUME,      0.6 ft3,   US,     0.6 ft3
            VOLUME,      2.04 m3,   METRIC, 2.04 m3
            LENGTH,      10 ft,     METRIC, 3.05 m
            LENGTH,      10 ft,     US,     10.0 ft
            LENGTH,      100 mi,    US,     100 mi
            LENGTH,      100 mi,    METRIC, 161 km
            ENERGY,      999 Wh,    US,     999 Wh
            ENERGY,      2400 Wh,   METRIC, 2.4 kWh
            POWER,       1 kW,      US,     '1,000 W'
            TEMPERATURE, 40 degF,   US,     40 °F
            TEMPERATURE, 40 degF,   METRIC, 4 °C
            """)
    void shows_quantities_in_the_units_of_the_reader(
            Dimension dimension, String text, UnitSystem system, String shown) {
        assertThat(Units.show(Units.parse(dimension, text), system)).isEqualTo(shown);
    }

    @ParameterizedTest
    @EnumSource
    void what_may_be_edited_reads_back_the_same(Dimension dimension) {
        long seed = Long.getLong("firmset.seed", 2027);
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 3000; i++) {
            Measured quantity = random(dimension, random);
            for (UnitSystem system : UnitSystem.values()) {
                String text = Units.editable(quantity, system);
                assertThat(Units.parse(dimension, text))
                        .as("%s, seed %d, number %d, written %s", quantity, seed, i, text)
                        .isEqualTo(quantity);
            }
        }
    }

    /** Half of them as people write them, half with all the decimals there can be. */
    private static Measured random(Dimension dimension, SplittableRandom random) {
        if (random.nextBoolean()) {
            var symbols = dimension.units().keySet().stream().toList();
            String symbol = symbols.get(random.nextInt(symbols.size()));
            return Units.parse(
                    dimension, BigDecimal.valueOf(random.nextInt(100_000), random.nextInt(4)) + " " + symbol);
        }
        return dimension.of(BigDecimal.valueOf(random.nextLong(1_000_000_000_000L), random.nextInt(10)));
    }

    @Test
    void people_edit_the_short_form_they_wrote() {
        assertThat(Units.editable(Units.parse(Dimension.MASS, "80 lb"), UnitSystem.US))
                .isEqualTo("80 lb");
        assertThat(Units.editable(Units.parse(Dimension.TEMPERATURE, "40 degF"), UnitSystem.US))
                .isEqualTo("40 °F");
        assertThat(Units.editable(Units.parse(Dimension.LENGTH, "3.8 m"), UnitSystem.METRIC))
                .isEqualTo("3.8 m");
    }

    @ParameterizedTest
    @CsvSource({
        "LENGTH, US, 93 mi, 93 mi",
        "LENGTH, US, 1.5 mi, 1.5 mi",
        "LENGTH, US, 4 in, 4 in",
        "LENGTH, US, 7 5/8 in, 7.625 in",
        "LENGTH, US, 62 in, 62 in",
        "LENGTH, US, 8 ft, 8 ft",
        "LENGTH, US, 12 ft 6 in, 12.5 ft",
        "LENGTH, US, 120 ft, 120 ft",
        "LENGTH, METRIC, 149.5 km, 149.5 km",
        "LENGTH, METRIC, 1200 m, 1.2 km",
        "LENGTH, METRIC, 0.1 m, 0.1 m",
        "LENGTH, METRIC, 93 mi, 149668.992 m",
        "VOLUME, US, 75 ft3, 75 ft3",
        "VOLUME, US, 800 gal, 800 gal",
        "VOLUME, US, 5 gal, 5 gal",
        "VOLUME, US, 20 L, 20 L",
        "VOLUME, US, 1.8 m3, 1.8 m3",
        "VOLUME, METRIC, 0.02 m3, 20 L",
        "VOLUME, METRIC, 22 L, 22 L",
        "VOLUME, METRIC, 1.8 m3, 1.8 m3"
    })
    void sizes_are_edited_in_the_unit_people_measure_them_in(
            Dimension dimension, UnitSystem system, String written, String edited) {
        assertThat(Units.editable(Units.parse(dimension, written), system)).isEqualTo(edited);
    }

    @Nested
    class Refusals {
        @ParameterizedTest(name = "{0}: {1}")
        @CsvSource(textBlock = """
                MASS,        80,          is not a number with its unit
                MASS,        lb,          is not a number with its unit
                MASS,        '',          is not a number with its unit
                MASS,        '1,5 kg',    is not a number with its unit
                MASS,        1e3 kg,      'has the unit ''e3'', which is no unit of mass'
                MASS,        80 ft,       'has the unit ''ft'', which is no unit of mass'
                MASS,        80 stone,    'has the unit ''stone'', which is no unit of mass'
                MASS,        80 kg extra, is not a number with its unit
                LENGTH,      12 ft 6,     is not a number with its unit
                LENGTH,      NaN m,       is not a number with its unit
                LENGTH,      1 m 1 kg,    'has the unit ''kg'', which is no unit of length'
                TEMPERATURE, 4 °C 5 °C,   has more than one temperature in it
                """)
        void say_what_is_wrong_and_what_is_understood(Dimension dimension, String text, String problem) {
            assertThatExceptionOfType(UnitsFault.class)
                    .isThrownBy(() -> Units.parse(dimension, text))
                    .withMessageStartingWith("'" + text + "' " + problem + "; write "
                            + (dimension == Dimension.ENERGY ? "an " : "a ") + dimension.word() + " such as")
                    .withMessageEndingWith("one of the units "
                            + String.join(", ", dimension.units().keySet()));
        }

        @Test
        void a_text_without_end_is_shortened() {
            assertThatExceptionOfType(UnitsFault.class)
                    .isThrownBy(() -> Units.parse(Dimension.MASS, "1".repeat(100_000) + " kg"))
                    .withMessageContaining("is too long")
                    .satisfies(e -> assertThat(e.getMessage()).hasSizeLessThan(250));
        }

        @Test
        void to_show_a_quantity_in_a_unit_of_something_else() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Units.in(Mass.ofKilograms(1), "ft", 0))
                    .withMessageStartingWith("symbol [ft] is no unit of mass; known are [kg, ");
        }
    }
}
