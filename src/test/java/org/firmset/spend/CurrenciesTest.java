package org.firmset.spend;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Amounts are kept to the hundredth in every currency, whatever its smallest coin is. */
class CurrenciesTest {
    private static final List<BigDecimal> THREE = List.of(BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ONE);

    private static ReceiptLine line(Money amount) {
        return new ReceiptLine(
                LineKind.OTHER,
                "Thing",
                null,
                BigDecimal.ONE,
                null,
                amount,
                List.of(Share.all("water", null), Share.all("shop", null), Share.all("cabin", null)));
    }

    private static Receipt order(String currency) {
        return new Receipt(
                "r-1",
                LocalDate.of(2026, 10, 1),
                "Yard",
                ReceiptState.ORDERED,
                List.of(line(Cash.ofCents(1001, currency)), line(Cash.ofCents(2000, currency))),
                Cash.ofCents(100, currency),
                Cash.ofCents(50, currency),
                Cash.ofCents(1000, currency),
                null,
                null);
    }

    @ParameterizedTest
    @ValueSource(strings = {"USD", "JPY", "KWD", "TND", "CLF", "XAU", "XXX"})
    void an_order_of_any_currency_is_shared_to_the_hundredth(String currency) {
        Receipt order = order(currency);
        Selected all = Selected.of(order, ReceiptFilter.ALL).orElseThrow();
        assertThat(all.spentCents()).isEqualTo(1000);
        assertThat(all.committedCents()).isEqualTo(3051 - 1000);
        Forecast forecast = Forecast.of(currency, List.of(order), List.of(), List.of());
        assertThat(forecast.whole().expected()).isEqualTo(Cash.ofCents(3051, currency));
    }

    @Test
    void whole_amounts_of_a_currency_without_cents_stay_whole() {
        assertThat(Allocation.split(Money.of(100, "JPY"), THREE))
                .containsExactly(Money.of(34, "JPY"), Money.of(33, "JPY"), Money.of(33, "JPY"));
    }
}
