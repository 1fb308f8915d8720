package org.firmset.season.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.SpendingLimit;
import org.firmset.measure.Cash;
import org.firmset.plan.Effort;
import org.firmset.plan.Style;
import org.firmset.season.TwoWeekendsFile;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.PlannedSeason;
import org.firmset.spend.Baseline;
import org.firmset.spend.LineKind;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.firmset.spend.Share;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Five sheets for 120.00 ordered on 26 February with 30.00 paid down, at the homestead of docs/two-weekends.md: without
 * them its trips take 293.80 until 9 May and 418.00 until 23 May, the sheets among the second.
 */
class RestOfOrdersTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final LocalDate ORDERED_ON = LocalDate.of(2027, 2, 26);
    private static final LocalDate SECOND = LocalDate.of(2027, 5, 22);
    private static final Homestead PLACE = TwoWeekendsFile.read();
    private static final PlannedSeason SEASON = season();

    private static PlannedSeason season() {
        var planned = new SeasonPlanner().plan(PLACE, TODAY, Style.SOONEST, new Effort(300, 1));
        return ((SeasonPlanner.Result.Planned) planned).season();
    }

    private static MoneyReport report(Homestead homestead, Receipt receipt) {
        return MoneyReport.of(new Books(homestead, SEASON, List.of(receipt), TODAY));
    }

    private static Receipt sheets(ReceiptState state, LocalDate on, @Nullable LocalDate restOn) {
        ReceiptLine line = new ReceiptLine(
                LineKind.MATERIAL,
                "Sheets",
                "roof-sheet",
                new BigDecimal("5"),
                null,
                eur("120.00"),
                List.of(Share.all("wood-store", "roof")));
        return new Receipt(
                "o",
                on,
                "Building yard",
                state,
                List.of(line),
                eur("0"),
                eur("0"),
                restOn == null && state.isPaid() ? eur("0") : eur("30.00"),
                restOn,
                null,
                null);
    }

    private static Money eur(String amount) {
        return Cash.of(new BigDecimal(amount), "EUR");
    }

    private static List<Payment> rests(MoneyReport report) {
        return report.payments().stream()
                .filter(p -> p.purpose() == Purpose.REST_OF_ORDER)
                .toList();
    }

    @Test
    void the_rest_is_due_on_the_day_that_was_agreed_on_and_not_when_the_packs_come() {
        LocalDate agreed = LocalDate.of(2027, 4, 15);
        MoneyReport report = report(PLACE, sheets(ReceiptState.ORDERED, ORDERED_ON, agreed));
        assertThat(rests(report))
                .containsExactly(new Payment(agreed, Purpose.REST_OF_ORDER, "Building yard", eur("90.00")));
        assertThat(rests(report(PLACE, sheets(ReceiptState.ORDERED, ORDERED_ON, null))))
                .extracting(Payment::on)
                .containsExactly(SECOND);
        // 293.80 + 90; 418 - 120
        assertThat(CashNeed.of(report)).extracting(CashNeed::sum).containsExactly(eur("383.80"), eur("298.00"));
        assertThat(MonthMoney.of(report))
                .containsExactly(
                        new MonthMoney(YearMonth.of(2027, 2), eur("30.00"), eur("0.00")),
                        new MonthMoney(YearMonth.of(2027, 4), eur("0.00"), eur("90.00")),
                        new MonthMoney(YearMonth.of(2027, 5), eur("0.00"), eur("591.80")));
        assertThat(Course.of(report).ahead())
                .startsWith(new Course.Point(TODAY, eur("30.00")), new Course.Point(agreed, eur("120.00")))
                .endsWith(new Course.Point(SECOND, eur("711.80")));
    }

    /** Of 120.00 and 591.80 the second is over 591.79. */
    @Test
    void a_month_is_held_against_the_limit_with_the_rests_that_are_due_in_it() {
        Homestead limited = PLACE.withSpendingLimit(new SpendingLimit(eur("591.79"), false));
        Receipt april = sheets(ReceiptState.ORDERED, ORDERED_ON, LocalDate.of(2027, 4, 15));
        assertThat(new TimeWords(report(limited, april)).affordable())
                .startsWith("Over €591.79 a month: May 2027 by €0.01.");
        Receipt may = sheets(ReceiptState.ORDERED, ORDERED_ON, LocalDate.of(2027, 5, 1));
        assertThat(new TimeWords(report(limited, may)).affordable())
                .startsWith("Over €591.79 a month: May 2027 by €90.01.");
    }

    @Test
    void a_rest_that_should_have_been_paid_is_due_today() {
        MoneyReport report = report(PLACE, sheets(ReceiptState.ORDERED, ORDERED_ON, TODAY.minusDays(1)));
        assertThat(rests(report)).extracting(Payment::on).containsExactly(TODAY);
    }

    @Test
    void once_it_is_paid_the_deposit_counts_on_the_day_of_the_order_and_the_rest_on_its_own() {
        LocalDate first = LocalDate.of(2027, 1, 10);
        LocalDate rest = LocalDate.of(2027, 2, 20);
        MoneyReport report = report(PLACE, sheets(ReceiptState.PAID, first, rest));
        assertThat(report.paid()).containsExactly(entry(first, eur("30.00")), entry(rest, eur("90.00")));
        assertThat(rests(report)).isEmpty();
        assertThat(MonthMoney.of(report))
                .extracting(MonthMoney::month, MonthMoney::spent)
                .contains(tuple(YearMonth.of(2027, 1), eur("30.00")), tuple(YearMonth.of(2027, 2), eur("90.00")));
        assertThat(Course.of(report).real())
                .containsExactly(
                        new Course.Point(first, eur("30.00")),
                        new Course.Point(rest, eur("120.00")),
                        new Course.Point(TODAY, eur("120.00")));
    }

    /** Without the order the whole is 711.80; taken for here and used up, five sheets would be bought again. */
    @Test
    void what_is_paid_ahead_is_spent_and_not_bought_again_while_it_is_to_come() {
        for (LocalDate rest : Arrays.asList(null, TODAY)) {
            MoneyReport ahead = report(PLACE, sheets(ReceiptState.PAID_AHEAD, ORDERED_ON, rest));
            assertThat(ahead.forecast().whole().spent()).isEqualTo(eur("120.00"));
            assertThat(ahead.forecast().whole().committed()).isEqualTo(eur("0.00"));
            assertThat(ahead.forecast().whole().expected()).isEqualTo(eur("711.80"));
            assertThat(rests(ahead)).isEmpty();
            assertThat(ahead.coming()).noneMatch(c -> c.what().equals("roof-sheet"));
        }
        assertThat(report(PLACE, sheets(ReceiptState.PAID_AHEAD, ORDERED_ON, TODAY))
                        .paid())
                .containsExactly(entry(ORDERED_ON, eur("30.00")), entry(TODAY, eur("90.00")));
        MoneyReport here = report(PLACE, sheets(ReceiptState.PAID, ORDERED_ON, null));
        assertThat(here.forecast().whole().expected()).isEqualTo(eur("831.80"));
    }

    /** So the course of a kept budget has steps where the money really goes. */
    @Test
    void todays_budget_has_the_deposit_and_the_rest_on_their_days_and_the_packs_once() {
        LocalDate rest = LocalDate.of(2027, 4, 15);
        for (ReceiptState state : List.of(ReceiptState.ORDERED, ReceiptState.PAID_AHEAD, ReceiptState.PAID)) {
            Baseline budget = report(PLACE, sheets(state, ORDERED_ON, rest)).budget();
            assertThat(budget.items().stream().filter(i -> "roof-sheet".equals(i.material())))
                    .as(state.words())
                    .extracting(Baseline.Item::due, i -> i.quantity().intValueExact(), Baseline.Item::amount)
                    .contains(tuple(ORDERED_ON, 5, eur("30.00")), tuple(rest, 0, eur("90.00")));
        }
        Baseline without =
                report(PLACE, sheets(ReceiptState.ORDERED, ORDERED_ON, null)).budget();
        assertThat(without.items().stream().filter(i -> "roof-sheet".equals(i.material())))
                .extracting(Baseline.Item::due, i -> i.quantity().intValueExact(), Baseline.Item::amount)
                .containsExactly(tuple(ORDERED_ON, 5, eur("120.00")));
    }

    /** Receipts of old may be dated so; new ones are refused. */
    @Test
    void what_says_it_is_paid_counts_today_at_the_latest() {
        MoneyReport report = report(PLACE, sheets(ReceiptState.PAID, TODAY.plusDays(10), null));
        assertThat(report.paid()).containsExactly(entry(TODAY, eur("120.00")));
        assertThat(Course.of(report).real()).containsExactly(new Course.Point(TODAY, eur("120.00")));
        assertThat(Course.of(report).ahead().getLast().sum())
                .isEqualTo(report.forecast().whole().expected());
    }
}
