package org.firmset.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.javamoney.moneta.Money;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CashTest {
    @ParameterizedTest(name = "{0}: {1} cents, {2}")
    @CsvSource(textBlock = """
            12.40 USD,              1240, 12.40 USD
            12.4 USD,               1240, 12.40 USD
            12USD,                  1200, 12.00 USD
            ' 0 EUR ',                 0, 0.00 EUR
            -3.05 EUR,              -305, -3.05 EUR
            999999999999.99 USD, 99999999999999, 999999999999.99 USD
            """)
    void reads_and_writes_amounts(String text, long cents, String written) {
        Money money = Cash.parse(text);
        assertThat(Cash.cents(money)).isEqualTo(cents);
        assertThat(Cash.text(money)).isEqualTo(written);
        assertThat(Cash.ofCents(cents, money.getCurrency().getCurrencyCode())).isEqualTo(money);
    }

    @ParameterizedTest(name = "{0} cents {1}: {2}")
    @CsvSource(textBlock = """
            124000,  USD, '$1,240.00'
            -5,      USD, '-$0.05'
            0,       USD, '$0.00'
            124000,  EUR, '€1,240.00'
            124000,  CHF, '1,240.00 CHF'
            -124000, CHF, '-1,240.00 CHF'
            """)
    void shows_amounts_as_people_read_them(long cents, String currency, String shown) {
        assertThat(Cash.show(cents, currency)).isEqualTo(shown);
    }

    @Test
    void what_is_written_reads_back_the_same() {
        long seed = Long.getLong("firmset.seed", 2027);
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 1000; i++) {
            Money money = Cash.ofCents(random.nextLong(-99_999_999_999_999L, 100_000_000_000_000L), "USD");
            assertThat(Cash.parse(Cash.text(money)))
                    .as("seed %d, number %d", seed, i)
                    .isEqualTo(money);
        }
    }

    @Nested
    class Refusals {
        @ParameterizedTest(name = "{0}")
        @CsvSource(textBlock = """
                12.40
                USD
                12.405 USD
                '1,240.00 USD'
                $12
                12.40 usd
                12.40 DOLLARS
                1e5 USD
                1234567890123 USD
                """)
        void what_is_no_amount(String text) {
            assertThatExceptionOfType(UnitsFault.class)
                    .isThrownBy(() -> Cash.parse(text))
                    .withMessage("'" + text + "' is not an amount of money; write it such as '12.40 USD'");
        }

        @Test
        void a_currency_that_is_none() {
            assertThatExceptionOfType(UnitsFault.class)
                    .isThrownBy(() -> Cash.parse("12.40 QQQ"))
                    .withMessage("'QQQ' is not a currency; write its ISO 4217 code such as 'USD'");
        }

        @Test
        void parts_of_a_cent() {
            assertThatExceptionOfType(ArithmeticException.class)
                    .isThrownBy(() -> Cash.of(new BigDecimal("0.005"), "USD"));
        }
    }
}
