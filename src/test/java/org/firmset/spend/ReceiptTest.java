package org.firmset.spend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.firmset.homestead.file.Fault;
import org.firmset.measure.Cash;
import org.firmset.spend.ReceiptCosts.Cost;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Receipts add up, are taken apart to the cent, and say what is wrong with them. */
class ReceiptTest {
    private static final ReceiptRules RULES = new ReceiptRules(RandomReceipts.KEYS, "USD");
    private static final ReceiptLine BARS = line("12", "11.90", "142.80", Share.all("water", null));
    private static final ReceiptLine BAGS = line("4", "6.98", "27.92", Share.all("cabin", "cabin-holes"));

    @Test
    void costs_of_ten_thousand_random_receipts_add_up_to_the_cent() {
        for (Receipt receipt : new RandomReceipts(RandomReceipts.SEED).many(10_000)) {
            assertThat(RULES.faults(receipt, ""))
                    .as("seed %d, %s", RandomReceipts.SEED, receipt)
                    .isEmpty();
            long sum = ReceiptCosts.of(receipt).stream()
                    .mapToLong(c -> Cash.cents(c.amount()))
                    .sum();
            assertThat(sum).as("seed %d, %s", RandomReceipts.SEED, receipt).isEqualTo(Cash.cents(receipt.sum()));
            assertThat(receipt.paid().add(receipt.committed())).isEqualTo(receipt.sum());
        }
    }

    @Test
    void no_line_of_a_random_receipt_is_two_cents_off_its_exact_share_of_tax_and_discount() {
        for (Receipt receipt : new RandomReceipts(RandomReceipts.SEED + 1).many(10_000)) {
            double lines = receipt.lines().stream()
                    .mapToDouble(l -> l.amount().getNumber().doubleValue())
                    .sum();
            if (lines == 0) {
                continue;
            }
            double factor = receipt.sum().getNumber().doubleValue() / lines;
            List<Money> costs = ReceiptCosts.ofLines(receipt);
            for (int i = 0; i < costs.size(); i++) {
                double exact = receipt.lines().get(i).amount().getNumber().doubleValue() * factor;
                // tax and discount are two shares of less than a cent each
                assertThat(Math.abs(costs.get(i).getNumber().doubleValue() - exact))
                        .as("seed %d, line %d of %s", RandomReceipts.SEED + 1, i, receipt)
                        .isLessThan(0.02 + 1e-6);
            }
        }
    }

    @Test
    void tax_and_discount_go_over_the_lines_by_their_amounts() {
        // 170.72 in all: 142.80 bears 83.65 %
        Receipt receipt = receipt(ReceiptState.PAID, "10.00", "5.00", "0", "175.72", BARS, BAGS);
        assertThat(RULES.faults(receipt, "")).isEmpty();
        assertThat(ReceiptCosts.of(receipt))
                .extracting(Cost::subproject, c -> Cash.text(c.amount()))
                .containsExactly(tuple("water", "146.98 USD"), tuple("cabin", "28.74 USD"));
    }

    @Test
    void of_an_order_only_what_was_paid_down_is_paid() {
        Receipt receipt = receipt(ReceiptState.ORDERED, "0", "0", "50.00", null, BARS);
        assertThat(receipt.paid()).isEqualTo(Cash.parse("50.00 USD"));
        assertThat(receipt.committed()).isEqualTo(Cash.parse("92.80 USD"));
    }

    @Nested
    class Refused {
        @Test
        void a_negative_quantity_that_is_no_return() {
            assertThat(lines(line("-1", null, "5.00")))
                    .contains("/lines/0/quantity [-1] is negative though nothing is returned");
        }

        @Test
        void a_return_with_positive_numbers() {
            assertThat(lines(receipt(ReceiptState.RETURNED, "1.00", "0", "0", null, line("1", null, "5.00"))))
                    .contains("/lines/0/quantity [1] is not negative in a return")
                    .contains("/lines/0/amount [5.00 USD] is not negative in a return")
                    .contains("/tax [1.00 USD] is not negative in a return");
        }

        @Test
        void no_quantity_and_no_text() {
            ReceiptLine line = new ReceiptLine(
                    LineKind.OTHER, " ", null, BigDecimal.ZERO, null, Cash.parse("1.00 USD"), List.of());
            assertThat(lines(line)).contains("/quantity [0] is no quantity").contains("/text says nothing");
        }

        @Test
        void an_amount_that_is_not_quantity_times_price() {
            assertThat(lines(line("12", "11.90", "142.90"))).contains("is not 12 x 11.90 USD = 142.80 USD");
        }

        @Test
        void a_total_that_does_not_add_up() {
            assertThat(lines(receipt(ReceiptState.PAID, "0", "0", "0", "170.82", BARS, BAGS)))
                    .contains("/total [170.82 USD] is not what lines, discount and tax come to: 170.72 USD")
                    .contains("the difference of 0.10 USD");
        }

        @Test
        void a_discount_over_the_lines() {
            assertThat(lines(receipt(ReceiptState.PAID, "0", "142.81", "0", null, BARS)))
                    .contains("/discount [142.81 USD] is more than the lines, $142.80");
        }

        @Test
        void a_deposit_on_something_paid_or_over_the_order() {
            assertThat(lines(receipt(ReceiptState.PAID, "0", "0", "1.00", null, BARS)))
                    .contains("/deposit [1.00 USD] is paid down on something that is not on order");
            assertThat(lines(receipt(ReceiptState.ORDERED, "0", "0", "142.81", null, BARS)))
                    .contains("/deposit [142.81 USD] is not between nothing and the whole order");
        }

        @Test
        void unknown_subprojects_stages_and_materials_with_those_there_are() {
            assertThat(lines(line("1", null, "5.00", Share.all("barn", null))))
                    .contains("[barn] is no subproject of the homestead. Write one of cabin, shop, water.");
            assertThat(lines(line("1", null, "5.00", Share.all("cabin", "cabin-roof"))))
                    .contains("[cabin-roof] is no stage of the homestead. Write one of cabin-holes, cabin-piers.");
            assertThat(lines(line("1", null, "5.00", Share.all("cabin", "shop-base"))))
                    .contains("[shop-base] is a stage of 'shop', not of 'cabin'. Write 'shop' before it.");
            ReceiptLine unknown = new ReceiptLine(
                    LineKind.MATERIAL, "Bag", "lime", BigDecimal.ONE, null, Cash.parse("1.00 USD"), List.of());
            assertThat(lines(unknown)).contains("[lime] is no material of the homestead");
        }

        @Test
        void a_share_of_nothing_and_another_currency() {
            Share none = new Share("cabin", null, BigDecimal.ZERO);
            assertThat(lines(line("1", null, "5.00", none))).contains("/shares/0/weight [0] is no share above zero");
            ReceiptLine euros =
                    new ReceiptLine(LineKind.OTHER, "x", null, BigDecimal.ONE, null, Cash.parse("1.00 EUR"), List.of());
            assertThat(lines(euros)).contains("[1.00 EUR] is not in the homestead's currency");
        }

        /** Limits of the homestead file: a kept budget names the days of receipts and must be read again. */
        @Test
        void days_that_cannot_be_meant() {
            Receipt receipt = receipt(ReceiptState.PAID, "0", "0", "0", null, BARS);
            assertThat(lines(receipt.withDate(LocalDate.of(206, 10, 1))))
                    .contains("/date [0206-10-01] is not between 1990-01-01 and 2199-12-31");
            assertThat(lines(receipt.withDate(LocalDate.of(20226, 10, 1)))).contains("/date [+20226-10-01] is not");
            assertThat(lines(receipt.withDate(LocalDate.of(1990, 1, 1)))).isEmpty();
            assertThat(lines(receipt.withDate(LocalDate.of(2199, 12, 31)))).isEmpty();
        }

        /** Packs are added up as whole numbers. */
        @Test
        void quantities_that_were_run_together() {
            assertThat(lines(line("1000001", null, "5.00"))).contains("/quantity [1000001] is more than 1000000");
            assertThat(lines(line("1000000", null, "5.00"))).isEmpty();
        }

        /** A table that is written must come back. */
        @Test
        void texts_that_a_table_could_not_bring_back() {
            String longest = "x".repeat(500);
            assertThat(lines(named(longest, longest))).isEmpty();
            assertThat(lines(named(longest + "y", "Spade")))
                    .contains("/supplier")
                    .contains("is longer than 500");
            assertThat(lines(named("Yard", longest + "y")))
                    .contains("/lines/0/text")
                    .contains("is longer than 500");
            assertThat(lines(named("Yard\0", "Spade"))).contains("/supplier").contains("holds a sign that is no text");
        }

        private static Receipt named(String supplier, String text) {
            Receipt receipt = receipt(ReceiptState.PAID, "0", "0", "0", null, BARS);
            ReceiptLine line = new ReceiptLine(
                    LineKind.OTHER, text, null, BigDecimal.ONE, null, Cash.parse("1.00 USD"), List.of());
            return new Receipt(
                    receipt.key(),
                    receipt.date(),
                    supplier,
                    receipt.state(),
                    List.of(line),
                    receipt.tax(),
                    receipt.discount(),
                    receipt.deposit(),
                    null,
                    null);
        }

        @Test
        void no_lines_and_no_supplier() {
            Receipt receipt = new Receipt(
                    "r",
                    LocalDate.of(2026, 10, 1),
                    " ",
                    ReceiptState.PAID,
                    List.of(),
                    usd("0"),
                    usd("0"),
                    usd("0"),
                    null,
                    null);
            assertThat(lines(receipt)).contains("/supplier names nobody").contains("/lines holds no line");
        }
    }

    private static String lines(ReceiptLine line) {
        return lines(receipt(ReceiptState.PAID, "0", "0", "0", null, line));
    }

    private static String lines(Receipt receipt) {
        return String.join(
                "\n", RULES.faults(receipt, "").stream().map(Fault::line).toList());
    }

    private static Receipt receipt(
            ReceiptState state,
            String tax,
            String discount,
            String deposit,
            @Nullable String total,
            ReceiptLine... lines) {
        return new Receipt(
                "r",
                LocalDate.of(2026, 10, 24),
                "Building yard in town",
                state,
                List.of(lines),
                usd(tax),
                usd(discount),
                usd(deposit),
                total == null ? null : usd(total),
                null);
    }

    private static ReceiptLine line(String quantity, @Nullable String price, String amount, Share... shares) {
        return new ReceiptLine(
                LineKind.MATERIAL,
                "Thing",
                null,
                new BigDecimal(quantity),
                price == null ? null : usd(price),
                usd(amount),
                List.of(shares));
    }

    private static Money usd(String amount) {
        return Cash.of(new BigDecimal(amount), "USD");
    }
}
