package org.firmset.spend.table;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.firmset.spend.RandomReceipts;
import org.firmset.spend.Receipt;
import org.junit.jupiter.api.Test;

/** What is written as a table comes back the same. */
class RoundTripTest {
    private static final Ledger LEDGER = Ledger.empty(RandomReceipts.KEYS, "USD");

    @Test
    void ten_thousand_random_receipts_come_back_the_same() {
        RandomReceipts random = new RandomReceipts(RandomReceipts.SEED);
        for (int i = 0; i < 100; i++) {
            List<Receipt> receipts = random.many(100);
            ImportPreview preview = preview(ReceiptExport.write(receipts));
            assertThat(preview.faults())
                    .as("seed %d, table %d", RandomReceipts.SEED, i)
                    .isEmpty();
            assertThat(preview.receipts())
                    .as("seed %d, table %d", RandomReceipts.SEED, i)
                    .isEqualTo(receipts);
        }
    }

    @Test
    void each_receipt_alone_comes_back_the_same() {
        for (Receipt receipt : new RandomReceipts(RandomReceipts.SEED + 2).many(1_000)) {
            ImportPreview preview = preview(ReceiptExport.write(List.of(receipt)));
            assertThat(preview.faults())
                    .as("seed %d, %s", RandomReceipts.SEED + 2, receipt)
                    .isEmpty();
            assertThat(preview.receipts()).containsExactly(receipt);
        }
    }

    @Test
    void lines_end_with_CRLF_and_no_cell_begins_like_a_formula() throws Exception {
        String table = ReceiptExport.write(new RandomReceipts(RandomReceipts.SEED + 3).many(500));
        assertThat(table).startsWith("Receipt,Date,").endsWith("\r\n");
        int cells = 0;
        try (CSVParser parser = CSVParser.parse(new StringReader(table), CSVFormat.RFC4180)) {
            for (CSVRecord row : parser) {
                for (String cell : row) {
                    assertThat(cell).doesNotStartWith("=").doesNotStartWith("+");
                    assertThat(cell).doesNotStartWith("-").doesNotStartWith("@");
                    cells++;
                }
            }
        }
        assertThat(cells).isGreaterThan(500 * ReceiptExport.HEADINGS.size());
    }

    @Test
    void our_own_headings_are_all_known() {
        SpendTable table = TableReader.read(ReceiptExport.write(List.of()).getBytes(UTF_8))
                .table()
                .orElseThrow();
        ColumnMatch match = ReceiptImport.guess(table, "USD");
        assertThat(match.columns()).hasSize(ReceiptExport.HEADINGS.size()).hasSize(Role.values().length);
    }

    private static ImportPreview preview(String text) {
        TableReader.Read read = TableReader.read(text.getBytes(UTF_8));
        assertThat(read.faults()).isEmpty();
        SpendTable table = read.table().orElseThrow();
        return ReceiptImport.preview(table, ReceiptImport.guess(table, "USD"), LEDGER);
    }
}
