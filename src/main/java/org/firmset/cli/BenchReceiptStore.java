package org.firmset.cli;

import java.io.PrintStream;
import java.io.Writer;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.store.Homesteads;
import org.firmset.season.money.Purchases;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptFilter;
import org.firmset.spend.Selected;
import org.firmset.spend.store.ReceiptBook;
import org.firmset.spend.table.ImportPreview;
import org.firmset.spend.table.ReceiptExport;
import org.firmset.spend.table.ReceiptImport;
import org.firmset.spend.table.SpendTable;
import org.firmset.spend.table.TableReader;

/** How long receipts take into a database of their own and out of it again. */
final class BenchReceiptStore {
    private static final int TIMES = 3;

    private static final int SHOWN = 200;

    private final PrintStream out;
    private final Homestead homestead;
    private final BenchMoney money;

    BenchReceiptStore(PrintStream out, Homestead homestead, BenchMoney money) {
        this.out = out;
        this.homestead = homestead;
        this.money = money;
    }

    private record Times(double importing, double listing, double reckoning) {}

    /** What the page of receipts keeps of each. */
    private record Listed(UUID id, LocalDate date, Selected part) {}

    /** @param files tables of receipts of the homestead, by their number of lines */
    void run(List<byte[]> files, int[] lines) {
        try (BenchDatabase database = BenchDatabase.open("")) {
            measure(database.homesteads(), database.book(), files.getFirst());
            out.printf("%nInto an H2 database in a file, and out of it as the pages need them:%n%n");
            out.println("| lines | from bytes into the database ms | page Receipts: list and sums ms"
                    + " | page Spend: read, reckoned, told ms |");
            out.println("|---|---|---|---|");
            for (int i = 0; i < lines.length; i++) {
                times(lines[i], database.homesteads(), database.book(), files.get(i));
            }
            out.printf("%nMedians of %d.%n", TIMES);
        }
        // its own cache of pages, up to 64 MiB for each GiB of heap, would hide what receipts need
        try (BenchDatabase database = BenchDatabase.open(";CACHE_SIZE=2048")) {
            out.printf("%nMiB of heap that cannot be let go of, the database's cache held to 2 MiB:%n%n");
            out.println("| lines | at rest | while the table comes in | page Receipts | export | page Spend |");
            out.println("|---|---|---|---|---|---|");
            for (int i = 0; i < lines.length; i++) {
                memory(lines[i], database.homesteads(), database.book(), files.get(i));
            }
        }
    }

    private void times(int lines, Homesteads homesteads, ReceiptBook book, byte[] file) {
        List<Times> all = new ArrayList<>();
        for (int i = 0; i < TIMES; i++) {
            all.add(measure(homesteads, book, file));
        }
        out.printf(
                Locale.ROOT,
                "| %d | %s | %s | %s |%n",
                lines,
                Median.text("%.0f", all.stream().map(Times::importing)),
                Median.text("%.0f", all.stream().map(Times::listing)),
                Median.text("%.0f", all.stream().map(Times::reckoning)));
    }

    private Times measure(Homesteads homesteads, ReceiptBook book, byte[] file) {
        UUID place = homesteads.add(homestead).id();
        long start = System.nanoTime();
        List<Receipt> receipts = take(book, place, file);
        long taken = System.nanoTime();
        List<Listed> listed = list(book, place);
        long read = System.nanoTime();
        double reckoned = money.millis(() -> purchases(book, place));
        Selected sum = listed.stream().map(Listed::part).reduce(Selected.none(homestead.currency()), Selected::plus);
        if (listed.size() != receipts.size() || !sum.spent().equals(BenchSpend.sum(receipts))) {
            throw new IllegalStateException("what came out of the database is not what went in");
        }
        homesteads.remove(place);
        return new Times((taken - start) / 1e6, (read - taken) / 1e6, reckoned);
    }

    private void memory(int lines, Homesteads homesteads, ReceiptBook book, byte[] file) {
        UUID place = homesteads.add(homestead).id();
        long before = LiveHeap.mebibytesNow();
        long taking = LiveHeap.mebibytes(() -> take(book, place, file));
        long listing = LiveHeap.mebibytes(() -> list(book, place));
        long exporting = LiveHeap.mebibytes(() -> export(book, place));
        long reckoning = LiveHeap.mebibytes(() -> money.millis(() -> purchases(book, place)));
        out.printf("| %d | %d | %d | %d | %d | %d |%n", lines, before, taking, listing, exporting, reckoning);
        homesteads.remove(place);
    }

    private static List<Listed> list(ReceiptBook book, UUID place) {
        List<Listed> listed = new ArrayList<>();
        book.each(
                place,
                kept -> Selected.of(kept.receipt(), ReceiptFilter.ALL)
                        .ifPresent(part ->
                                listed.add(new Listed(kept.id(), kept.receipt().date(), part))));
        book.some(place, listed.reversed().stream().limit(SHOWN).map(Listed::id).toList());
        return listed;
    }

    private Purchases purchases(ReceiptBook book, UUID place) {
        Purchases.Writer purchases = new Purchases.Writer(homestead.currency());
        book.each(place, kept -> purchases.add(kept.receipt()));
        return purchases.done();
    }

    private static void export(ReceiptBook book, UUID place) {
        ReceiptExport export = new ReceiptExport(Writer.nullWriter());
        book.eachAtLeisure(place, kept -> export.add(kept.receipt()));
    }

    private static List<Receipt> take(ReceiptBook book, UUID place, byte[] file) {
        SpendTable table = TableReader.read(file).table().orElseThrow();
        var ledger = book.ledger(place);
        ImportPreview preview = ReceiptImport.preview(table, ReceiptImport.guess(table, ledger.currency()), ledger);
        List<Receipt> receipts = preview.all().orElseThrow();
        if (!(book.takeAll(place, receipts, table.file()) instanceof ReceiptBook.Outcome.Stored)) {
            throw new IllegalStateException("the receipts were not taken");
        }
        return receipts;
    }
}
