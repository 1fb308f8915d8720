package org.firmset.cli;

import java.io.PrintStream;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.plan.Effort;
import org.firmset.plan.Style;
import org.firmset.season.PlannedSeason;
import org.firmset.season.SeasonPlanner;
import org.firmset.season.money.Books;
import org.firmset.season.money.BudgetWords;
import org.firmset.season.money.Course;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.money.MoneyWords;
import org.firmset.season.money.ThingWords;
import org.firmset.season.money.TimeWords;
import org.firmset.spend.Receipt;

/** How long it takes to reckon and tell all that the page of money shows, of the demo with its plan. */
final class BenchMoney {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final int TIMES = 5;

    private final PrintStream out;

    BenchMoney(PrintStream out) {
        this.out = out;
    }

    void run(List<List<Receipt>> all) {
        Homestead demo = SeedHomesteads.demo(TODAY);
        var result = new SeasonPlanner().plan(demo, TODAY, Style.SOONEST, Effort.NORMAL);
        PlannedSeason season = ((SeasonPlanner.Result.Planned) result).season();
        out.println("\n| lines | money of the demo reckoned and told ms |\n|---|---|");
        for (List<Receipt> receipts : all) {
            Books books = new Books(demo, season, receipts, TODAY);
            List<Double> times =
                    IntStream.range(0, TIMES).mapToObj(i -> millis(books)).toList();
            int lines = receipts.stream().mapToInt(r -> r.lines().size()).sum();
            out.printf("| %d | %s |%n", lines, Median.text("%.0f", times.stream()));
        }
    }

    private static double millis(Books books) {
        long start = System.nanoTime();
        MoneyReport report = MoneyReport.of(books);
        MoneyWords words = new MoneyWords(report);
        TimeWords times = new TimeWords(report);
        int rows = words.overview().rows().size()
                + words.bearers().stream()
                        .mapToInt(k -> words.drill(k).rows().size())
                        .sum()
                + new BudgetWords(report, report.budget()).terms().rows().size()
                + times.course(Course.of(report, report.budget())).rows().size()
                + times.cash().rows().size()
                + times.months().rows().size()
                + new ThingWords(report).prices().rows().size();
        if (rows == 0) {
            throw new IllegalStateException(
                    "nothing was told of " + books.receipts().size() + " receipts");
        }
        return (System.nanoTime() - start) / 1e6;
    }
}
