package org.firmset.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.PrintStream;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.measure.Cash;
import org.firmset.spend.Forecast;
import org.firmset.spend.Keys;
import org.firmset.spend.LineKind;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.firmset.spend.Share;
import org.firmset.spend.table.ImportPreview;
import org.firmset.spend.table.Ledger;
import org.firmset.spend.table.ReceiptExport;
import org.firmset.spend.table.ReceiptImport;
import org.firmset.spend.table.SpendTable;
import org.firmset.spend.table.TableReader;
import org.javamoney.moneta.Money;

/** firmset bench spend: how long it takes to read tables of receipts, to write them, to add them up and to reckon the money. */
final class BenchSpend {
    private static final String LINES = "500,5000,50000";
    /** Each receipt has five lines. */
    private static final int FEWEST_LINES = 5;

    private static final int MOST_LINES = 100_000;
    private static final int TIMES = 5;
    private static final String CURRENCY = "USD";
    private static final Homestead DEMO = SeedHomesteads.demo(LocalDate.of(2026, 11, 1));
    private static final Keys KEYS = Keys.of(DEMO);
    private static final List<String> MATERIALS =
            DEMO.materials().stream().map(Material::key).toList();

    private final PrintStream out;
    private final int[] lines;

    BenchSpend(PrintStream out, List<String> arguments) {
        this.out = out;
        Options options = new Options(arguments, Set.of("lines"));
        if (!options.words().isEmpty()) {
            throw new NotUnderstood(
                    "'bench spend' takes no word '" + options.words().getFirst()
                            + "'; write nothing behind it, or --lines and numbers such as " + LINES);
        }
        lines = Stream.of(options.value("lines").orElse(LINES).split(",", -1))
                .mapToInt(BenchSpend::lines)
                .toArray();
    }

    private static int lines(String text) {
        int number = text.matches("\\d{1,6}") ? Integer.parseInt(text) : 0;
        if (number < FEWEST_LINES || number > MOST_LINES) {
            throw new NotUnderstood("'" + text + "' is no number of lines; write some from " + FEWEST_LINES + " to "
                    + MOST_LINES + ", such as " + LINES);
        }
        return number;
    }

    private record Times(double reading, double writing, double adding) {}

    int run() {
        // the first tables are slower: classes are loaded
        measure(lines[lines.length / 2]);
        out.println("| lines | MiB | read, matched, checked ms | written ms | forecast ms |");
        out.println("|---|---|---|---|---|");
        for (int some : lines) {
            row(some);
        }
        out.printf("%nMedians of %d; a whole read from bytes to receipts without faults.%n", TIMES);
        BenchMoney money = new BenchMoney(out);
        money.run(Arrays.stream(lines).mapToObj(BenchSpend::receipts).toList());
        new BenchReceiptStore(out, DEMO, money)
                .run(Arrays.stream(lines).mapToObj(n -> bytes(receipts(n))).toList(), lines);
        return Commands.DONE;
    }

    private void row(int lines) {
        List<Times> all = new ArrayList<>();
        for (int i = 0; i < TIMES; i++) {
            all.add(measure(lines));
        }
        out.printf(
                Locale.ROOT,
                "| %d | %.2f | %s | %s | %s |%n",
                lines,
                bytes(receipts(lines)).length / 1048576.0,
                median(all.stream().map(Times::reading)),
                median(all.stream().map(Times::writing)),
                median(all.stream().map(Times::adding)));
    }

    private static String median(Stream<Double> times) {
        return Median.text("%.0f", times);
    }

    private static Times measure(int lines) {
        List<Receipt> receipts = receipts(lines);
        long start = System.nanoTime();
        byte[] file = bytes(receipts);
        long written = System.nanoTime();
        List<Receipt> read = read(file);
        long checked = System.nanoTime();
        Forecast forecast = Forecast.of(CURRENCY, read, List.of(), List.of());
        long added = System.nanoTime();
        if (!read.equals(receipts) || !forecast.whole().expected().equals(sum(receipts))) {
            throw new IllegalStateException(lines + " lines came back otherwise than they were written");
        }
        return new Times(millis(written, checked), millis(start, written), millis(checked, added));
    }

    private static double millis(long from, long to) {
        return (to - from) / 1e6;
    }

    private static byte[] bytes(List<Receipt> receipts) {
        return ReceiptExport.write(receipts).getBytes(UTF_8);
    }

    private static List<Receipt> read(byte[] file) {
        SpendTable table = TableReader.read(file).table().orElseThrow();
        ImportPreview preview =
                ReceiptImport.preview(table, ReceiptImport.guess(table, CURRENCY), Ledger.empty(KEYS, CURRENCY));
        return preview.all().orElseThrow();
    }

    static Money sum(List<Receipt> receipts) {
        return receipts.stream().map(Receipt::sum).reduce(Cash.ofCents(0, CURRENCY), Money::add);
    }

    /** Receipts of five lines each, with a tax; one line in three is of a material of the homestead. */
    private static List<Receipt> receipts(int lines) {
        SplittableRandom random = new SplittableRandom(lines);
        List<Receipt> receipts = new ArrayList<>();
        for (int i = 0; i < lines / 5; i++) {
            List<ReceiptLine> its = Stream.generate(() -> line(random)).limit(5).toList();
            receipts.add(new Receipt(
                    "r" + i,
                    LocalDate.of(2025, 1, 1).plusDays(random.nextInt(365)),
                    "Yard " + random.nextInt(20),
                    ReceiptState.PAID,
                    its,
                    Cash.ofCents(random.nextInt(2_000), CURRENCY),
                    Cash.ofCents(0, CURRENCY),
                    Cash.ofCents(0, CURRENCY),
                    null,
                    null));
        }
        return receipts;
    }

    private static ReceiptLine line(SplittableRandom random) {
        int quantity = 1 + random.nextInt(40);
        int cents = 100 + random.nextInt(20_000);
        return new ReceiptLine(
                LineKind.MATERIAL,
                "Thing, \"size " + random.nextInt(100) + "\"",
                random.nextInt(3) == 0 ? MATERIALS.get(random.nextInt(MATERIALS.size())) : null,
                BigDecimal.valueOf(quantity),
                Cash.ofCents(cents, CURRENCY),
                Cash.ofCents((long) quantity * cents, CURRENCY),
                List.of(new Share("water", "water-wall", BigDecimal.TWO), Share.all("shop", null)));
    }
}
