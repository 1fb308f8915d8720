package org.firmset.trade.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.trade.trace.Term.term;

import java.time.LocalDate;
import org.firmset.measure.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShowTest {
    private static String us(Amount amount) {
        return Show.amount(amount, UnitSystem.US);
    }

    @ParameterizedTest(name = "{0} in: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            0        | 0 in
            0.03     | 0 in
            0.032    | 1/16 in
            0.0625   | 1/16 in
            0.125    | 1/8 in
            0.25     | 1/4 in
            0.5      | 1/2 in
            0.4375   | 7/16 in
            1        | 1 in
            1.5      | 1 1/2 in
            11.96    | 11 15/16 in
            11.97    | 1 ft
            12       | 1 ft
            12.25    | 1 ft 1/4 in
            13       | 1 ft 1 in
            112.75   | 9 ft 4 3/4 in
            -0.5     | -1/2 in
            -12      | -1 ft
            -13.5    | -1 ft 1 1/2 in
            14400    | 1,200 ft
            """)
    void lengths_in_feet_and_inches_to_a_sixteenth(double inches, String shown) {
        assertThat(us(Amount.length(inches * 0.0254))).isEqualTo(shown);
    }

    @ParameterizedTest(name = "{0} kg: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            0          | 0 kg
            0.00012345 | 0.0001234 kg
            0.123451   | 0.1235 kg
            1.00001    | 1 kg
            12.3449    | 12.34 kg
            123.449    | 123.4 kg
            1234.49    | 1,234 kg
            123456.7   | 123,457 kg
            1000       | 1,000 kg
            -12.3451   | -12.35 kg
            """)
    void quantities_to_four_digits_but_whole_numbers_whole(double kilograms, String shown) {
        assertThat(Show.amount(Amount.mass(kilograms), UnitSystem.METRIC)).isEqualTo(shown);
    }

    @ParameterizedTest(name = "{0} degC: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            -5     | 23 °F   | -5 °C
            4.44   | 40 °F   | 4.4 °C
            0      | 32 °F   | 0 °C
            100    | 212 °F  | 100 °C
            """)
    void temperatures_to_a_tenth(double celsius, String us, String metric) {
        assertThat(us(Amount.temperature(celsius))).isEqualTo(us);
        assertThat(Show.amount(Amount.temperature(celsius), UnitSystem.METRIC)).isEqualTo(metric);
    }

    @ParameterizedTest(name = "{0} bags: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            42.4     | 43 bags (42.4)
            42       | 42 bags
            41.996   | 42 bags
            41.994   | 42 bags (41.99)
            0.5      | 1 bag (0.5)
            1        | 1 bag
            0        | 0 bags
            1234.5   | 1,235 bags (1,234)
            """)
    void packs_show_what_is_rounded(double exact, String shown) {
        assertThat(us(Amount.packs(exact, "bags"))).isEqualTo(shown);
    }

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource(delimiter = '|', emptyValue = "", textBlock = """
            1    | bags     | 1 bag
            2    | bags     | 2 bags
            0    | bags     | 0 bags
            1    | boxes    | 1 box
            1    | trenches | 1 trench
            1    | brushes  | 1 brush
            1    | glass    | 1 glass
            1234 | ''       | 1,234
            -1   | days     | -1 days
            """)
    void counts(long number, String noun, String shown) {
        assertThat(us(Amount.count(number, noun))).isEqualTo(shown);
    }

    @ParameterizedTest(name = "{0} to {1} decimals: {3}")
    @CsvSource(delimiter = '|', emptyValue = "", textBlock = """
            1.5     | 2 | h   | 1.5 h
            1.0     | 2 | h   | 1 h
            100     | 0 | ''  | 100
            1234.56 | 1 | Wh  | 1,234.6 Wh
            -0.001  | 2 | h   | 0 h
            -0.5    | 1 | h   | -0.5 h
            0.4     | 0 | min | 0 min
            1000000 | 0 | ''  | 1,000,000
            """)
    void numbers_without_needless_zeros(double value, int decimals, String unit, String shown) {
        assertThat(us(Amount.number(value, decimals, unit))).isEqualTo(shown);
    }

    @Test
    void dates_and_words() {
        assertThat(us(Amount.on(LocalDate.of(2027, 7, 3)))).isEqualTo("Sat 3 Jul 2027");
        assertThat(us(Amount.word("NORMAL cement"))).isEqualTo("NORMAL cement");
    }

    @Test
    void symbols_of_a_formula() {
        Line line = Line.step("mass", "Mass", Amount.mass(1))
                .by("M = n m", term("n", "bags", Amount.count(2, "")), term("m", "mass of a bag", Amount.mass(0.5)));
        assertThat(Show.terms(line, UnitSystem.METRIC)).isEqualTo("n: bags, 2; m: mass of a bag, 0.5 kg");
        assertThat(Show.terms(Line.step("mass", "Mass", Amount.mass(1)), UnitSystem.US))
                .isEmpty();
    }
}
