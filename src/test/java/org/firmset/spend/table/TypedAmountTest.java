package org.firmset.spend.table;

import static org.assertj.core.api.Assertions.assertThat;

import org.firmset.measure.Cash;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sums of money by themselves, as they are typed into fields. */
class TypedAmountTest {
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
                    900; 900.00
                    1,234; 1234.00
                    1,23; 1.23
                    900.50; 900.50
                    900,50; 900.50
                    1,200; 1200.00
                    1,234,567.50; 1234567.50
                    1.234,50; 1234.50
                    $900; 900.00
                    900 USD; 900.00
                    0; 0.00""")
    void an_amount_is_read_as_people_write_it(String typed, String amount) {
        assertThat(Numbers.amount(typed, "USD")).contains(Cash.parse(amount + " USD"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "-1", "900.505", "nine", "900 EUR", "1e3", "1,2345", "1.234", "9999999999"})
    void what_is_no_amount_is_not_guessed(String typed) {
        assertThat(Numbers.amount(typed, "USD")).isEmpty();
    }
}
