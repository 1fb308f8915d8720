package org.firmset.spend;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.firmset.measure.Cash;
import org.firmset.spend.PriceBook.Quote;
import org.javamoney.moneta.Money;
import org.junit.jupiter.api.Test;

/** Spent, committed and still to buy make the sum at the finish; prices say how far it may move. */
class ForecastTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 14);
    private static final PriceBook BOOK = new PriceBook(List.of(
            quote("yard", "6.98", 0),
            quote("yard", "6.50", 200),
            quote("masonry", "7.20", 30),
            quote("masonry", "5.00", 900),
            quote("yard", "9.99", -1)));

    @Test
    void spent_committed_and_to_buy_are_told_apart_and_add_up() {
        PriceBook.Range range = BOOK.range("bag", DAY, 365).orElseThrow();
        List<ToBuy> toBuy = List.of(new ToBuy("water", "cap", "bag", 10, range));
        Receipt paid = receipt(ReceiptState.PAID, "0", "water", LineKind.MATERIAL, "100.00");
        Receipt order = receipt(ReceiptState.ORDERED, "40.00", "water", LineKind.MATERIAL, "1890.00");
        Receipt pallet = receipt(ReceiptState.PAID, "0", "water", LineKind.DEPOSIT, "25.00");
        Receipt shop = receipt(ReceiptState.PAID, "0", "shop", LineKind.TOOL, "60.00");
        Forecast forecast = Forecast.of("USD", List.of(paid, order, pallet, shop), toBuy, List.of());
        Forecast.Row water = Objects.requireNonNull(forecast.bySubproject().get("water"));
        assertThat(water.spent()).isEqualTo(usd("140.00"));
        assertThat(water.committed()).isEqualTo(usd("1850.00"));
        assertThat(water.toBuy()).isEqualTo(usd("69.80"));
        assertThat(water.expected()).isEqualTo(usd("2059.80"));
        assertThat(water.lowest()).isEqualTo(usd("2055.00"));
        assertThat(water.highest()).isEqualTo(usd("2062.00"));
        assertThat(forecast.heldBack()).isEqualTo(usd("25.00"));
        assertThat(forecast.whole().expected()).isEqualTo(usd("2119.80"));
    }

    @Test
    void forecasts_of_random_receipts_lose_no_cent() {
        List<Receipt> receipts = new RandomReceipts(RandomReceipts.SEED).many(2_000);
        Forecast forecast = Forecast.of("USD", receipts, List.of(), List.of());
        Money all = receipts.stream().map(Receipt::sum).reduce(usd("0.00"), Money::add);
        Money committed = receipts.stream().map(Receipt::committed).reduce(usd("0.00"), Money::add);
        Money deposits = receipts.stream()
                .flatMap(r -> ReceiptCosts.of(r).stream())
                .filter(c -> c.kind() == LineKind.DEPOSIT)
                .map(ReceiptCosts.Cost::amount)
                .reduce(usd("0.00"), Money::add);
        Money openDeposits = deposits.subtract(forecast.heldBack());
        assertThat(forecast.whole().expected().add(deposits)).isEqualTo(all);
        assertThat(forecast.whole().committed().add(openDeposits)).isEqualTo(committed);
    }

    @Test
    void the_price_to_reckon_with_is_the_cheapest_of_the_latest_ones() {
        PriceBook.Range range = BOOK.range("bag", DAY, 365).orElseThrow();
        assertThat(range.now()).isEqualTo(quote("yard", "6.98", 0));
        assertThat(range.low()).isEqualTo(usd("6.50"));
        assertThat(range.high()).isEqualTo(usd("7.20"));
        assertThat(BOOK.latest("bag", "yard", DAY.minusDays(1))).hasValue(quote("yard", "6.50", 200));
        assertThat(BOOK.range("brick", DAY, 365)).isEmpty();
    }

    @Test
    void a_trend_goes_from_the_first_to_the_last_quote_of_a_supplier() {
        PriceBook.Trend trend = new PriceBook(List.of(quote("yard", "5.00", 365), quote("yard", "5.50", 0)))
                .trend("bag", "yard")
                .orElseThrow();
        assertThat(trend.changePercent()).isEqualByComparingTo("10");
        assertThat(trend.percentAYear().doubleValue()).isBetween(10.0, 10.01);
        assertThat(new PriceBook(List.of(quote("yard", "5.00", 0))).trend("bag", "yard"))
                .isEmpty();
    }

    @Test
    void receipts_tell_prices_but_returns_do_not() {
        List<Receipt> receipts = new RandomReceipts(RandomReceipts.SEED).many(1_500);
        long told = receipts.stream()
                .filter(r -> r.state() != ReceiptState.RETURNED)
                .flatMap(r -> r.lines().stream())
                .filter(l -> l.isPacks() && l.unitPrice() != null)
                .count();
        assertThat(receipts.stream().flatMap(r -> PriceBook.quotes(r).stream())).hasSize((int) told);
        assertThat(told).isGreaterThan(20);
    }

    @Test
    void a_rise_moves_the_finish_by_packs_times_price_times_percent() {
        PriceBook.Range range = BOOK.range("bag", DAY, 365).orElseThrow();
        List<ToBuy> toBuy =
                List.of(new ToBuy("water", "cap", "bag", 67, range), new ToBuy("shop", null, "rock", 9, range));
        // 67 x 6.98 x 8 % = 37.41
        assertThat(Forecast.riseOf("USD", toBuy, Map.of("bag", BigDecimal.valueOf(8))))
                .isEqualTo(usd("37.41"));
    }

    private static Receipt receipt(
            ReceiptState state, String deposit, String subproject, LineKind kind, String amount) {
        ReceiptLine line = new ReceiptLine(
                kind, "Thing", null, BigDecimal.ONE, null, usd(amount), List.of(Share.all(subproject, null)));
        return new Receipt("r", DAY, "Yard", state, List.of(line), usd("0"), usd("0"), usd(deposit), null, null);
    }

    private static Quote quote(String supplier, String amount, int daysAgo) {
        return new Quote(supplier, "bag", usd(amount), DAY.minusDays(daysAgo));
    }

    private static Money usd(String amount) {
        return Cash.of(new BigDecimal(amount), "USD");
    }
}
