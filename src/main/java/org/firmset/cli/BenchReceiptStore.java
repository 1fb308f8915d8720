package org.firmset.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Stream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.store.Homesteads;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptFilter;
import org.firmset.spend.Selected;
import org.firmset.spend.store.KeptReceipt;
import org.firmset.spend.store.ReceiptBook;
import org.firmset.spend.table.ImportPreview;
import org.firmset.spend.table.ReceiptImport;
import org.firmset.spend.table.SpendTable;
import org.firmset.spend.table.TableReader;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.flyway.autoconfigure.FlywayAutoConfiguration;
import org.springframework.boot.hibernate.autoconfigure.HibernateJpaAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;
import org.springframework.boot.persistence.autoconfigure.EntityScan;
import org.springframework.boot.transaction.autoconfigure.TransactionAutoConfiguration;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;

/** How long receipts take into a database of their own and out of it again. */
final class BenchReceiptStore {
    private static final int TIMES = 3;

    private final PrintStream out;
    private final Homestead homestead;

    BenchReceiptStore(PrintStream out, Homestead homestead) {
        this.out = out;
        this.homestead = homestead;
    }

    private record Times(double importing, double listing, long peakMebibytes) {}

    /** @param files tables of receipts of the homestead, by their number of lines */
    void run(List<byte[]> files, int[] lines) {
        Path folder = temporary();
        try (ConfigurableApplicationContext parts = new SpringApplicationBuilder(Parts.class)
                .web(WebApplicationType.NONE)
                .run("--FIRMSET_HOME=" + folder, "--FIRMSET_DB_URL=" + url(folder))) {
            measure(parts, files.getFirst());
            out.printf("%nInto an H2 database in a file, and out of it as the page of receipts needs them:%n%n");
            out.println("| lines | from bytes into the database ms | list and sums ms | peak heap MiB |");
            out.println("|---|---|---|---|");
            for (int i = 0; i < lines.length; i++) {
                row(lines[i], parts, files.get(i));
            }
        } finally {
            remove(folder);
        }
        out.printf("%nMedians of %d; of the heap the most of them.%n", TIMES);
    }

    private void row(int lines, ConfigurableApplicationContext parts, byte[] file) {
        List<Times> all = new ArrayList<>();
        for (int i = 0; i < TIMES; i++) {
            all.add(measure(parts, file));
        }
        out.printf(
                Locale.ROOT,
                "| %d | %s | %s | %d |%n",
                lines,
                Median.text("%.0f", all.stream().map(Times::importing)),
                Median.text("%.0f", all.stream().map(Times::listing)),
                all.stream().mapToLong(Times::peakMebibytes).max().orElseThrow());
    }

    private Times measure(ConfigurableApplicationContext parts, byte[] file) {
        Homesteads homesteads = parts.getBean(Homesteads.class);
        ReceiptBook book = parts.getBean(ReceiptBook.class);
        UUID place = homesteads.add(homestead).id();
        PeakHeap.setBack();
        long start = System.nanoTime();
        List<Receipt> receipts = take(book, place, file);
        long taken = System.nanoTime();
        List<KeptReceipt> all = book.all(place);
        Selected sum = all.stream()
                .flatMap(k -> Selected.of(k.receipt(), ReceiptFilter.ALL).stream())
                .reduce(Selected.none(homestead.currency()), Selected::plus);
        long listed = System.nanoTime();
        long peak = PeakHeap.mebibytes();
        if (all.size() != receipts.size() || !sum.spent().equals(BenchSpend.sum(receipts))) {
            throw new IllegalStateException("what came out of the database is not what went in");
        }
        homesteads.remove(place);
        return new Times((taken - start) / 1e6, (listed - taken) / 1e6, peak);
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

    private static String url(Path folder) {
        return "jdbc:h2:file:" + folder.resolve("bench")
                + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH";
    }

    private static Path temporary() {
        try {
            return Files.createTempDirectory("firmset-bench");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void remove(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The stores without pages and planner. No component, or the program itself would find it. */
    @ImportAutoConfiguration({
        DataSourceAutoConfiguration.class,
        FlywayAutoConfiguration.class,
        HibernateJpaAutoConfiguration.class,
        TransactionAutoConfiguration.class
    })
    @EntityScan({"org.firmset.homestead.store", "org.firmset.spend.store"})
    @ComponentScan({"org.firmset.homestead.store", "org.firmset.spend.store"})
    static class Parts {
        @Bean
        Clock clock() {
            return Clock.systemDefaultZone();
        }
    }
}
