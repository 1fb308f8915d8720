package org.firmset.season.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.StockLot;
import org.firmset.homestead.file.HomesteadFile;
import org.firmset.homestead.file.Reading;
import org.firmset.measure.Cash;
import org.firmset.plan.Effort;
import org.firmset.plan.Style;
import org.firmset.season.TwoWeekendsFile;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.PlannedSeason;
import org.firmset.spend.Forecast;
import org.firmset.spend.LineKind;
import org.firmset.spend.PriceBook;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.firmset.spend.Share;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Receipts that are rare and right, in currencies that are rare too: what is made of them still adds up. */
class OddReceiptsTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final LocalDate DAY = LocalDate.of(2027, 2, 10);
    private static final Homestead PLACE = TwoWeekendsFile.read();

    private static MoneyReport report(Homestead homestead, Receipt... receipts) {
        var planned = new SeasonPlanner().plan(homestead, TODAY, Style.SOONEST, new Effort(300, 1));
        PlannedSeason season = ((SeasonPlanner.Result.Planned) planned).season();
        return MoneyReport.of(new Books(homestead, season, List.of(receipts), TODAY));
    }

    private static Receipt receipt(String currency, ReceiptState state, LocalDate on, ReceiptLine line) {
        Money none = Cash.ofCents(0, currency);
        return new Receipt("r-" + on, on, "Yard", state, List.of(line), none, none, none, null, null);
    }

    private static ReceiptLine line(
            LineKind kind, @Nullable String material, String quantity, Money amount, Share... shares) {
        return new ReceiptLine(kind, "Thing", material, new BigDecimal(quantity), null, amount, List.of(shares));
    }

    private static Money eur(String amount) {
        return Cash.parse(amount + " EUR");
    }

    private static Money sum(MoneyReport report, Stream<Money> amounts) {
        return amounts.reduce(Cash.ofCents(0, report.currency()), Money::add);
    }

    private static Homestead in(String currency) {
        String text = HomesteadFile.write(PLACE).replace("EUR", currency);
        return ((Reading.Accepted) HomesteadFile.read(text.getBytes(java.nio.charset.StandardCharsets.UTF_8)))
                .homestead();
    }

    /** Yen have no cents and dinars have thousandths; plans and taxes come to hundredths in both. */
    @ParameterizedTest
    @ValueSource(strings = {"JPY", "KWD", "TND", "CLF"})
    void sums_of_a_plan_and_its_receipts_add_up_in_any_currency(String currency) {
        Money amount = Cash.parse("10.01 " + currency);
        Share[] shares = {
            Share.all("wood-store", "dig"), Share.all("wood-store", "posts"), Share.all("wood-store", null)
        };
        MoneyReport report = report(
                in(currency), receipt(currency, ReceiptState.PAID, DAY, line(LineKind.FEE, null, "1", amount, shares)));
        Forecast.Row whole = report.forecast().whole();
        assertThat(whole.spent()).isEqualTo(amount);
        assertThat(sum(report, report.payments().stream().map(Payment::amount))).isEqualTo(whole.toBuy());
        assertThat(sum(report, MonthMoney.of(report).stream().map(MonthMoney::sum)))
                .isEqualTo(whole.expected());
        assertThat(whole.expected()).isEqualTo(Cash.parse("721.81 " + currency));
    }

    /** The pallet of the gravel comes back; it is no gravel and says nothing of its price. */
    @Test
    void a_refundable_deposit_that_names_a_material_is_no_pack_of_it() {
        ReceiptLine pallets = new ReceiptLine(
                LineKind.DEPOSIT, "Pallets", "gravel-25", new BigDecimal("24"), eur("0.50"), eur("12.00"), List.of());
        for (ReceiptState state : List.of(ReceiptState.ORDERED, ReceiptState.PAID_AHEAD, ReceiptState.PAID)) {
            Receipt receipt = receipt("EUR", state, DAY, pallets);
            MoneyReport report = report(PLACE, receipt);
            assertThat(report.forecast().whole().expected()).as(state.words()).isEqualTo(eur("711.80"));
            assertThat(report.forecast().whole().low())
                    .isEqualTo(report.forecast().whole().toBuy());
            MoneyReport without = MoneyReport.of(new Books(PLACE, null, List.of(receipt), TODAY));
            assertThat(without.forecast().whole().expected()).as(state.words()).isEqualTo(eur("591.80"));
            assertThat(PriceBook.quotes(receipt)).isEmpty();
            assertThat(Purchases.of("EUR", List.of(receipt)).packs()).isEmpty();
        }
    }

    /** Eight for 80 and four for 60; six went back for 90: all four and two of the eight. */
    @Test
    void what_goes_back_is_taken_out_of_as_many_lots_as_it_was_bought_in() {
        Homestead stocked = Changed.with(PLACE, "stock", List.of(new StockLot("post", 6, DAY)));
        MoneyReport report = report(
                stocked,
                receipt("EUR", ReceiptState.PAID, DAY, line(LineKind.MATERIAL, "post", "8", eur("80.00"))),
                receipt("EUR", ReceiptState.PAID, DAY.plusDays(1), line(LineKind.MATERIAL, "post", "4", eur("60.00"))),
                receipt(
                        "EUR",
                        ReceiptState.RETURNED,
                        DAY.plusDays(2),
                        line(LineKind.MATERIAL, "post", "-6", eur("-90.00"))));
        LeftOver posts = report.leftOver().getFirst();
        assertThat(posts.onSite()).isEqualTo(6);
        assertThat(posts.withoutReceipt()).isZero();
        // 80 less a third of 90
        assertThat(posts.worth()).isEqualTo(eur("50.00"));
    }

    @Test
    void more_given_back_than_a_lot_cost_leaves_its_packs_there_for_nothing() {
        Homestead stocked = Changed.with(PLACE, "stock", List.of(new StockLot("post", 9, DAY)));
        MoneyReport report = report(
                stocked,
                receipt("EUR", ReceiptState.PAID, DAY, line(LineKind.MATERIAL, "post", "10", eur("10.00"))),
                receipt(
                        "EUR",
                        ReceiptState.RETURNED,
                        DAY.plusDays(2),
                        line(LineKind.MATERIAL, "post", "-1", eur("-15.00"))));
        assertThat(report.leftOver().getFirst().worth()).isEqualTo(eur("0.00"));
        assertThat(report.leftOver().getFirst().withoutReceipt()).isZero();
    }

    /** Who bore it is gone from the homestead; its receipts are in the whole, so they must stand somewhere. */
    @Test
    void a_subproject_that_is_gone_stands_among_the_others_and_all_make_the_whole() {
        MoneyReport report = report(
                PLACE,
                receipt(
                        "EUR",
                        ReceiptState.PAID,
                        DAY,
                        line(LineKind.FEE, null, "1", eur("12.00"), Share.all("moat", "moat-dig"))),
                receipt("EUR", ReceiptState.PAID, DAY.plusDays(1), line(LineKind.FEE, null, "1", eur("3.00"))));
        MoneyWords words = new MoneyWords(report);
        assertThat(words.bearers()).containsExactly("wood-store", "moat", null);
        assertThat(sum(report, words.standings().stream().map(s -> s.row().expected())))
                .isEqualTo(words.together().row().expected());
        MoneyWords.Standing gone = words.standings().get(1);
        assertThat(gone.name()).isEqualTo("moat (no longer there)");
        assertThat(gone.row().spent()).isEqualTo(eur("12.00"));
        assertThat(words.drill("moat").rows().getFirst().getFirst()).isEqualTo("moat-dig (no longer there)");
    }
}
