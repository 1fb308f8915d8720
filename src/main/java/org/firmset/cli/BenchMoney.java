package org.firmset.cli;

import java.io.PrintStream;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.plan.Effort;
import org.firmset.plan.Style;
import org.firmset.season.money.Books;
import org.firmset.season.money.BudgetWords;
import org.firmset.season.money.Course;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.money.MoneyWords;
import org.firmset.season.money.Purchases;
import org.firmset.season.money.ThingWords;
import org.firmset.season.money.TimeWords;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.PlannedSeason;
import org.firmset.spend.Receipt;

/** How long it takes to reckon and tell all that the page of money shows, of the demo with its plan. */
final class BenchMoney {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final int TIMES = 5;

    private final PrintStream out;
    private final Homestead demo = SeedHomesteads.demo(TODAY);
    private final PlannedSeason season;

    BenchMoney(PrintStream out) {
        this.out = out;
        var result = new SeasonPlanner().plan(demo, TODAY, Style.SOONEST, Effort.NORMAL);
        season = ((SeasonPlanner.Result.Planned) result).season();
    }

    void run(List<List<Receipt>> all) {
        out.println("\n| lines | money of the demo reckoned and told ms |\n|---|---|");
        for (List<Receipt> receipts : all) {
            List<Double> times = IntStream.range(0, TIMES)
                    .mapToObj(i -> millis(() -> Purchases.of(demo.currency(), receipts)))
                    .toList();
            int lines = receipts.stream().mapToInt(r -> r.lines().size()).sum();
            out.printf("| %d | %s |%n", lines, Median.text("%.0f", times.stream()));
        }
    }

    /**
     * How long the page takes from receipts to words.
     *
     * @param purchases takes the receipts apart
     */
    double millis(Supplier<Purchases> purchases) {
        long start = System.nanoTime();
        MoneyReport report = MoneyReport.of(new Books(demo, season, purchases.get(), TODAY));
        if (rowsTold(report) == 0) {
            throw new IllegalStateException("nothing was told of the receipts");
        }
        return (System.nanoTime() - start) / 1e6;
    }

    private int rowsTold(MoneyReport report) {
        MoneyWords words = new MoneyWords(report);
        BudgetWords budget = new BudgetWords(report, report.budget());
        TimeWords times = new TimeWords(report);
        ThingWords things = new ThingWords(report);
        return words.overview().rows().size()
                + words.bearers().stream()
                        .mapToInt(k -> words.drill(k).rows().size())
                        .sum()
                + budget.differences().table().rows().size()
                + (int) demo.subprojects().stream()
                        .map(s -> budget.verdict(s.key()))
                        .count()
                + budget.terms().rows().size()
                + times.course(Course.of(report, report.budget())).rows().size()
                + times.cash().rows().size()
                + times.months().rows().size()
                + things.prices().rows().size()
                + things.leftOver().rows().size();
    }
}
