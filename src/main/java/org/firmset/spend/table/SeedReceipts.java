package org.firmset.spend.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.firmset.homestead.Homestead;
import org.firmset.spend.Keys;
import org.firmset.spend.Receipt;

/** Receipts to begin with. */
public final class SeedReceipts {
    private static final int WEEKS_IN_YEAR = 52;
    private static final String DEMO = "/seed-data/juniper-bench-receipts.csv";

    private SeedReceipts() {}

    /**
     * What was bought for the demo so far.
     *
     * @param demo the homestead of the demo
     * @param weeks by how many weeks its dates lie behind those of its file
     */
    public static List<Receipt> demo(Homestead demo, int weeks) {
        SpendTable table = table();
        ImportPreview preview = ReceiptImport.preview(
                table, ReceiptImport.guess(table, demo.currency()), Ledger.empty(Keys.of(demo), demo.currency()));
        return preview
                .all()
                .orElseThrow(() -> new IllegalStateException("The receipts of the demo are not accepted: "
                        + preview.faults().getFirst().line()))
                .stream()
                .map(r -> r.withDate(r.date().plusWeeks(weeks)))
                .toList();
    }

    /** The same, moved back by whole years of 52 weeks until none is after today. */
    public static List<Receipt> demo(Homestead demo, int weeks, LocalDate today) {
        List<Receipt> receipts = demo(demo, weeks);
        return receipts.stream().anyMatch(r -> r.date().isAfter(today))
                ? demo(demo, weeks - WEEKS_IN_YEAR, today)
                : receipts;
    }

    /** The table itself, as it lies in the program. */
    public static SpendTable table() {
        try (InputStream in = Objects.requireNonNull(SeedReceipts.class.getResourceAsStream(DEMO))) {
            return TableReader.read(in).table().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
