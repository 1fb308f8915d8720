package org.firmset.spend.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;
import org.firmset.homestead.file.Fault;
import org.firmset.spend.RandomReceipts;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptRules;
import org.junit.jupiter.api.Test;

/** Tables that were spoiled at random: each is refused in words, or all that it brings is sound. */
class SpoiledTableTest {
    private static final int TABLES = 2_000;
    private static final Ledger LEDGER = Ledger.empty(RandomReceipts.KEYS, "USD");
    private static final ReceiptRules RULES = new ReceiptRules(RandomReceipts.KEYS, "USD");
    private static final List<String> BITS = List.of(
            "\"",
            ",",
            ";",
            "\t",
            "\r",
            "\n",
            "\r\n\r\n",
            "\0",
            "\ufeff",
            "1e9",
            "-",
            "--1",
            "()",
            "NaN",
            "99999999999999999999",
            "0.000000001",
            "1,234",
            "1.234,5",
            "31/02/2026",
            "0000-01-01",
            "9999-12-31",
            "+20226-10-17",
            "=HYPERLINK(1)",
            "'",
            "<script>",
            "\u0661\u0662",
            "\u2212",
            "x".repeat(600));
    private static final List<Charset> CHARSETS = List.of(
            StandardCharsets.UTF_8,
            StandardCharsets.UTF_16LE,
            StandardCharsets.UTF_16,
            StandardCharsets.ISO_8859_1,
            Charset.forName("windows-1252"));

    @Test
    void is_refused_in_words_or_brings_only_what_is_sound() {
        SplittableRandom dice = new SplittableRandom(RandomReceipts.SEED);
        int taken = 0;
        int refused = 0;
        for (int i = 0; i < TABLES; i++) {
            String what = "seed %d, table %d".formatted(RandomReceipts.SEED, i);
            TableReader.Read read = TableReader.read(bytes(spoiled(dice), dice));
            assertThat(read.table().isPresent())
                    .as(what)
                    .isEqualTo(read.faults().isEmpty());
            List<Fault> faults = read.faults();
            if (read.table().isPresent()) {
                SpendTable table = read.table().get();
                ImportPreview preview = ReceiptImport.preview(table, ReceiptImport.guess(table, "USD"), LEDGER);
                faults = preview.faults();
                taken += preview.all().isPresent() ? 1 : 0;
                preview.all().ifPresent(all -> all.forEach(r -> isSound(r, what)));
            }
            refused += faults.isEmpty() ? 0 : 1;
            assertThat(faults).as(what).hasSizeLessThanOrEqualTo(Fault.MOST);
            assertThat(faults)
                    .as(what)
                    .allMatch(f -> !f.line().isBlank() && f.line().length() < 2_000);
        }
        assertThat(taken).isGreaterThan(TABLES / 20);
        assertThat(refused).isGreaterThan(TABLES / 2);
    }

    private static void isSound(Receipt receipt, String what) {
        assertThat(RULES.faults(receipt, "")).as(what).isEmpty();
    }

    private static String spoiled(SplittableRandom dice) {
        StringBuilder table =
                new StringBuilder(ReceiptExport.write(new RandomReceipts(dice.nextLong()).many(1 + dice.nextInt(4))));
        int times = dice.nextInt(4);
        for (int i = 0; i < times; i++) {
            int from = dice.nextInt(table.length());
            int to = Math.min(table.length(), from + dice.nextInt(12));
            table.replace(from, to, BITS.get(dice.nextInt(BITS.size())));
        }
        return table.toString();
    }

    private static byte[] bytes(String table, SplittableRandom dice) {
        return table.getBytes(CHARSETS.get(dice.nextInt(4) == 0 ? dice.nextInt(CHARSETS.size()) : 0));
    }
}
