package org.firmset.spend;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.javamoney.moneta.Money;
import org.junit.jupiter.api.Test;

/** Every figure of the forecast is the sum of what its filter lets through. */
class SelectedTest {
    private static final List<Receipt> RECEIPTS = new RandomReceipts(RandomReceipts.SEED).many(400);
    private static final Forecast FORECAST = Forecast.of("USD", RECEIPTS, List.of(), List.of());

    private static Selected sum(ReceiptFilter filter) {
        return RECEIPTS.stream()
                .flatMap(r -> Selected.of(r, filter).stream())
                .reduce(Selected.none("USD"), Selected::plus);
    }

    @Test
    void everything_is_the_whole_forecast_and_its_deposits() {
        Selected all = sum(ReceiptFilter.ALL);
        assertThat(all.spent()).isEqualTo(FORECAST.whole().spent());
        assertThat(all.committed()).isEqualTo(FORECAST.whole().committed());
        assertThat(all.heldBack()).isEqualTo(FORECAST.heldBack());
    }

    @Test
    void each_row_of_the_forecast_is_a_filter() {
        assertThat(FORECAST.rows()).hasSizeGreaterThan(5).allSatisfy(row -> {
            Selected part = sum(new ReceiptFilter(
                    key(row.of().subproject()),
                    key(row.of().stage()),
                    null,
                    row.of().kind(),
                    null));
            assertThat(part.spent()).isEqualTo(row.spent());
            assertThat(part.committed()).isEqualTo(row.committed());
        });
        FORECAST.bySubproject()
                .forEach((key, row) ->
                        assertThat(sum(ReceiptFilter.ofSubproject(key)).spent()).isEqualTo(row.spent()));
    }

    private static String key(@org.jspecify.annotations.Nullable String key) {
        return key == null ? ReceiptFilter.NOBODY : key;
    }

    @Test
    void months_suppliers_kinds_and_states_split_the_whole_without_rest() {
        Money whole = sum(ReceiptFilter.ALL).spent();
        assertThat(RECEIPTS.stream()
                        .flatMap(r -> Stream.concat(Stream.of(r.date()), r.restPaidOn().stream()))
                        .map(YearMonth::from)
                        .distinct()
                        .map(m -> sum(new ReceiptFilter(null, null, null, null, m))
                                .spent())
                        .reduce(whole.subtract(whole), Money::add))
                .isEqualTo(whole);
        assertThat(RECEIPTS.stream()
                        .map(Receipt::supplier)
                        .distinct()
                        .map(s -> sum(new ReceiptFilter(null, null, s, null, null))
                                .spent())
                        .reduce(whole.subtract(whole), Money::add))
                .isEqualTo(whole);
        assertThat(Arrays.stream(LineKind.values())
                        .map(k -> sum(new ReceiptFilter(null, null, null, k, null))
                                .spent())
                        .reduce(whole.subtract(whole), Money::add))
                .isEqualTo(whole);
        assertThat(Arrays.stream(ReceiptState.values())
                        .map(s -> sum(ReceiptFilter.ALL.withState(s)).spent())
                        .reduce(whole.subtract(whole), Money::add))
                .isEqualTo(whole);
        Selected orders = sum(ReceiptFilter.ALL.withState(ReceiptState.ORDERED));
        assertThat(orders.committed()).isEqualTo(FORECAST.whole().committed());
    }

    @Test
    void a_receipt_without_a_part_that_is_asked_for_is_left_out() {
        Receipt first = RECEIPTS.getFirst();
        assertThat(Selected.of(first, new ReceiptFilter("moat", null, null, null, null)))
                .isEmpty();
        assertThat(Selected.of(
                        first,
                        new ReceiptFilter(
                                null,
                                null,
                                null,
                                null,
                                YearMonth.from(first.date()).minusMonths(1))))
                .isEmpty();
    }
}
