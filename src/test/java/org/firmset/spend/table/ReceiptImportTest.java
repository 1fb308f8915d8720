package org.firmset.spend.table;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.firmset.homestead.file.Fault;
import org.firmset.measure.Cash;
import org.firmset.spend.LineKind;
import org.firmset.spend.RandomReceipts;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables of others become receipts, or say line by line why not. */
class ReceiptImportTest {
    private static final Ledger EMPTY = Ledger.empty(RandomReceipts.KEYS, "USD");

    @Test
    void a_table_with_semicolons_decimal_commas_and_points_in_its_dates() {
        List<Receipt> receipts = receipts("""
                Datum;Lieferant;Artikel;Menge;Einzelpreis;Betrag;MwSt
                17.10.2026;Yard;Bars;12;11,90;142,80;8,57
                05.11.2026;Yard;Rock;1,5;1.250,00;1.875,00;0
                """);
        assertThat(receipts).extracting(Receipt::date).containsExactly(day(10, 17), day(11, 5));
        assertThat(receipts.getLast().sum()).isEqualTo(Cash.parse("1875.00 USD"));
        assertThat(receipts.getLast().lines().getFirst().quantity()).isEqualByComparingTo("1.5");
    }

    @Test
    void a_statement_without_known_headings_is_matched_by_its_contents() {
        List<Receipt> receipts = receipts("a,b,c,d\n10/17/2026,Yard,Bars,\"$1,142.80\"\n10/24/2026,Shop,Bags,27.92\n");
        assertThat(receipts).extracting(Receipt::supplier).containsExactly("Yard", "Shop");
        assertThat(receipts.getFirst().lines().getFirst().text()).isEqualTo("Bars");
        assertThat(receipts.getFirst().sum()).isEqualTo(Cash.parse("1142.80 USD"));
    }

    @ParameterizedTest
    @CsvSource({
        "'-12.40', RETURNED, -12.40 USD",
        "'(12.40)', RETURNED, -12.40 USD",
        "'12.40-', RETURNED, -12.40 USD",
        "'\u221212.40', RETURNED, -12.40 USD",
        "'USD 1 234.50', PAID, 1234.50 USD",
        "\"$1'234.50\", PAID, 1234.50 USD",
        "'1,234,567.5', PAID, 1234567.50 USD",
        "'.50', PAID, 0.50 USD"
    })
    void amounts_as_people_write_them(String written, ReceiptState state, String sum) {
        Receipt receipt = receipts("Date,Shop,Amount\n2026-10-17,Yard,\"" + written.replace("\"", "") + "\"\n")
                .getFirst();
        assertThat(receipt.state()).isEqualTo(state);
        assertThat(receipt.sum()).isEqualTo(Cash.parse(sum));
    }

    @Test
    void one_clear_date_settles_the_whole_column() {
        assertThat(receipts("Date,Shop,Amount\n3/4/2026,a,1.00\n10/24/2026,b,1.00\n")
                        .getFirst()
                        .date())
                .isEqualTo(day(3, 4));
        assertThat(receipts("Date,Shop,Amount\n3/4/26,a,1.00\n24/10/26,b,1.00\n")
                        .getFirst()
                        .date())
                .isEqualTo(day(4, 3));
        assertThat(receipts("Date,Shop,Amount\n2026-04-03T12:31,a,1.00\n")
                        .getFirst()
                        .date())
                .isEqualTo(day(4, 3));
        assertThat(receipts("Date,Shop,Amount\n5/5/2026,a,1.00\n").getFirst().date())
                .isEqualTo(day(5, 5));
    }

    @Test
    void one_clear_number_settles_the_whole_column() {
        assertThat(receipts("Date,Shop,Amount\n2026-10-17,a,\"1,234\"\n2026-10-18,b,2.50\n")
                        .getFirst()
                        .sum())
                .isEqualTo(Cash.parse("1234.00 USD"));
    }

    @Test
    void rows_with_the_same_number_become_one_receipt() {
        List<Receipt> receipts = receipts("Invoice no,Date,Shop,Amount,Tax,Shares\n"
                + "7,2026-10-17,Yard,10.00,0.60,water/water-track 2; shop\n7,2026-10-17,Yard,5.00,0.30,\n");
        assertThat(receipts).hasSize(1);
        assertThat(receipts.getFirst().sum()).isEqualTo(Cash.parse("15.90 USD"));
        assertThat(receipts.getFirst().lines().getFirst().shares()).hasSize(2);
    }

    @Test
    void a_row_that_names_a_material_is_packs_of_it_unless_it_says_otherwise() {
        assertThat(receipts("Date,Supplier,Material,Kind,Amount\n2026-10-17,Yard,rebar-4,,10.00\n"
                        + "2026-10-17,Yard,rebar-4,refundable deposit,5.00\n2026-10-17,Yard,,,7.00\n"))
                .flatExtracting(Receipt::lines)
                .extracting(ReceiptLine::kind)
                .containsExactly(LineKind.MATERIAL, LineKind.DEPOSIT, LineKind.OTHER);
    }

    @Test
    void the_day_of_a_rest_is_read_in_the_order_of_all_dates_and_makes_no_other_column_its_own() {
        List<Receipt> receipts = receipts("Date,Shop,State,Paid down,Balance due on,Amount\n"
                + "3/4/2026,Yard,ordered,10.00,24/10/2026,100.00\n5/4/2026,Yard,paid,,,7.00\n");
        assertThat(receipts).extracting(Receipt::date).containsExactly(day(4, 3), day(4, 5));
        assertThat(receipts).extracting(Receipt::restOn).containsExactly(day(10, 24), null);
        assertThat(receipts.getFirst().committed()).isEqualTo(Cash.parse("90.00 USD"));
    }

    @Test
    void what_is_dated_after_the_day_of_the_import_is_refused_line_by_line() {
        SpendTable table = table("Date,Shop,State,Amount,Rest on\n2026-10-17,Yard,paid,1.00,\n"
                + "2026-10-18,Yard,paid,2.00,\n2026-10-17,Yard,ordered,3.00,2026-12-01\n");
        ImportPreview preview = ReceiptImport.preview(table, ReceiptImport.guess(table, "USD"), EMPTY.on(day(10, 17)));
        assertThat(preview.faults())
                .extracting(Fault::pointer, Fault::problem)
                .containsExactly(tuple("line 3, date", "is still to come: today is 2026-10-17"));
        assertThat(ReceiptImport.preview(table, ReceiptImport.guess(table, "USD"), EMPTY.on(day(10, 18)))
                        .all()
                        .orElseThrow())
                .hasSize(3);
    }

    @Test
    void duplicates_are_told_by_date_supplier_and_sum_and_by_the_same_file() {
        String text = "Date,Shop,Amount\n2026-10-17,Yard,10.00\n2026-10-18,Yard,10.00\n2026-10-18,YARD,10.00\n";
        SpendTable table = table(text);
        KnownReceipt known = KnownReceipt.of(
                receipts("Date,Shop,Amount\n2026-10-17,yard,10.00\n").getFirst());
        Ledger ledger =
                new Ledger(RandomReceipts.KEYS, "USD", List.of(known), Map.of(table.file(), Instant.EPOCH), null);
        ImportPreview preview = ReceiptImport.preview(table, ReceiptImport.guess(table, "USD"), ledger);
        assertThat(preview.sameFile()).isTrue();
        assertThat(preview.duplicates()).extracting(Duplicate::index).containsExactly(0, 2);
        assertThat(preview.duplicates().getFirst().known()).isEqualTo(known);
        assertThat(preview.all().orElseThrow()).hasSize(3);
        assertThat(preview.fresh().orElseThrow()).extracting(Receipt::date).containsExactly(day(10, 18));
    }

    @Test
    void a_match_can_be_changed_written_down_and_read_again() {
        SpendTable table = table("x,y,z,w\n3/4/2026,Yard,\"1,234\",Bars\n");
        ColumnMatch match = ReceiptImport.guess(table, "USD")
                .with(Role.AMOUNT, Integer.valueOf(2))
                .with(DateOrder.DAY_FIRST)
                .with(Role.AMOUNT, DecimalMark.POINT)
                .withOutNegative(true);
        assertThat(match.text()).isEqualTo("date=0;supplier=1;text=3;amount=2/point;dates=day-first;out=negative");
        assertThat(ColumnMatch.parse(match.text())).isEqualTo(match);
        Receipt receipt = ReceiptImport.preview(table, match.withOutNegative(false), EMPTY)
                .all()
                .orElseThrow()
                .getFirst();
        assertThat(receipt.date()).isEqualTo(day(4, 3));
        assertThat(receipt.sum()).isEqualTo(Cash.parse("1234.00 USD"));
        assertThatThrownBy(() -> ColumnMatch.parse("date=0;;x")).hasMessageContaining("[]");
    }

    @Nested
    class Refused {
        @Test
        void dates_that_can_be_read_in_two_ways() {
            assertThat(lines("Date,Shop,Amount\n3/4/2026,a,1.00\n"))
                    .contains("line 2, column 'Date' [3/4/2026] can be month-first or day-first")
                    .contains("Say which it is");
        }

        @Test
        void dates_in_two_orders() {
            assertThat(lines("Date,Shop,Amount\n10/24/2026,a,1.00\n24/10/2026,b,1.00\n"))
                    .contains(
                            "line 3, column 'Date' [24/10/2026] is no date in the order of those above it (month-first)");
        }

        @Test
        void no_dates_and_days_that_do_not_exist() {
            assertThat(lines("Date,Shop,Amount\n2026-10-17,a,1.00\n2026-02-30,a,1.00\n,a,1.00\n"))
                    .contains("line 3, column 'Date' [2026-02-30] is no date")
                    .contains("line 4, column 'Date' holds no date");
        }

        @Test
        void numbers_that_can_be_thousands_or_decimals() {
            assertThat(lines("Date,Shop,Amount\n2026-10-17,a,\"1,234\"\n"))
                    .contains("line 2, column 'Amount' [1,234] can be thousands or decimals");
        }

        @Test
        void numbers_with_two_marks_in_one_column() {
            assertThat(lines("Date;Shop;Amount\n2026-10-17;a;1,50\n2026-10-17;a;1.50\n"))
                    .contains(
                            "line 3, column 'Amount' [1.50] has its decimals behind another mark than '1,50' in line 2");
        }

        @Test
        void amounts_of_another_currency_too_fine_missing_or_none() {
            assertThat(
                            lines(
                                    "Date,Shop,Amount\n2026-10-17,a,1.00 EUR\n2026-10-17,a,1.0001\n2026-10-17,a,\n2026-10-17,a,x\n"))
                    .contains("[1.00 EUR] is no number here. Write it such as 1240.50, in USD.")
                    .contains("[1.0001] is finer than a cent")
                    .contains("line 4, column 'Amount' holds no amount")
                    .contains("line 5, column 'Amount' [x] is no number here");
        }

        @Test
        void groups_of_thousands_that_are_none() {
            assertThat(lines("Date,Shop,Amount\n2026-10-17,a,\"1,23,456.00\"\n"))
                    .contains("is no number here");
        }

        @Test
        void tables_without_dates_or_amounts() {
            assertThat(lines("a,b\nx,y\n"))
                    .contains("line 1 [date] is in no column. Say which column holds the dates.")
                    .contains("line 1 [amount] is in no column");
        }

        @Test
        void statements_in_which_all_is_negative() {
            String statement = "Date,Payee,Amount\n2026-10-17,a,-1.00\n2026-10-18,b,-2.00\n";
            assertThat(lines(statement))
                    .contains("column 'Amount' holds nothing but negative amounts")
                    .contains("Say that money out is written with a minus");
            SpendTable table = table(statement);
            assertThat(ReceiptImport.preview(
                                    table, ReceiptImport.guess(table, "USD").withOutNegative(true), EMPTY)
                            .all()
                            .orElseThrow())
                    .extracting(Receipt::state)
                    .containsOnly(ReceiptState.PAID);
        }

        @Test
        void a_fault_of_a_line_stands_at_its_row() {
            assertThat(lines("Receipt,Date,Shop,Amount,Quantity\n7,2026-10-17,a,1.00,1\n7,2026-10-17,a,2.00,-1\n"))
                    .contains("line 3, quantity [-1] is negative though nothing is returned");
        }

        @Test
        void unknown_words_subprojects_and_shares() {
            assertThat(
                            lines(
                                    "Date,Shop,Amount,Kind,Shares\n2026-10-17,a,1.00,grocery,barn\n2026-10-17,a,1.00,,to Bob\n"))
                    .contains("[grocery] is no kind of a purchase. Write one of material, tool, fee")
                    .contains("line 2, shares [barn] is no subproject")
                    .contains("[to Bob] does not say who bears it");
        }

        @Test
        void receipts_whose_rows_disagree() {
            assertThat(lines("Receipt,Date,Shop,Amount\n7,2026-10-17,a,1.00\n7,2026-10-18,a,1.00\n"))
                    .contains("line 3 [7] is the receipt of line 2 with another date, supplier or state");
        }

        @Test
        void all_of_a_table_for_one_wrong_line() {
            SpendTable table = table("Date,Shop,Amount\n2026-10-17,a,1.00\n2026-10-17,a,x\n");
            ImportPreview preview = ReceiptImport.preview(table, ReceiptImport.guess(table, "USD"), EMPTY);
            assertThat(preview.all()).isEmpty();
            assertThat(preview.fresh()).isEmpty();
        }

        @Test
        void a_rest_that_is_no_day_or_one_before_its_order() {
            assertThat(lines("Date,Shop,Amount,Rest on\n2026-10-17,Yard,1.00,soon\n"))
                    .contains("line 2, column 'Rest on' [soon] is no date. Write it such as 2026-10-17.");
            assertThat(lines("Date,Shop,Amount,Rest on\n2026-10-17,Yard,1.00,2026-10-16\n"))
                    .contains("line 2, rest on [2026-10-16] is before the receipt's own date");
        }

        @Test
        void no_more_than_fifty_faults_are_told() {
            SpendTable table = table("Date,Shop,Amount\n" + "2026-10-17,a,x\n".repeat(500));
            assertThat(ReceiptImport.preview(table, ReceiptImport.guess(table, "USD"), EMPTY)
                            .faults())
                    .hasSize(Fault.MOST);
        }

        private String lines(String text) {
            SpendTable table = table(text);
            ImportPreview preview = ReceiptImport.preview(table, ReceiptImport.guess(table, "USD"), EMPTY);
            return String.join("\n", preview.faults().stream().map(Fault::line).toList());
        }
    }

    private static List<Receipt> receipts(String text) {
        SpendTable table = table(text);
        ImportPreview preview = ReceiptImport.preview(table, ReceiptImport.guess(table, "USD"), EMPTY);
        assertThat(preview.faults()).isEmpty();
        return preview.all().orElseThrow();
    }

    private static SpendTable table(String text) {
        return TableReader.read(text.getBytes(UTF_8)).table().orElseThrow();
    }

    private static LocalDate day(int month, int day) {
        return LocalDate.of(2026, month, day);
    }
}
