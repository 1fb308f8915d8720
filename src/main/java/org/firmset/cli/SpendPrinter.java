package org.firmset.cli;

import java.io.PrintStream;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.firmset.season.money.BudgetWords;
import org.firmset.season.money.Course;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.money.MoneyWords;
import org.firmset.season.money.ThingWords;
import org.firmset.season.money.TimeWords;
import org.firmset.season.words.WordTable;
import org.firmset.spend.Baseline;

/** The money of a homestead as plain text. */
final class SpendPrinter {
    private final PrintStream out;
    private final MoneyReport report;
    private final MoneyWords words;

    SpendPrinter(PrintStream out, MoneyReport report) {
        this.out = out;
        this.report = report;
        words = new MoneyWords(report);
    }

    void print(Optional<Baseline> against, Optional<BigDecimal> rise) {
        ThingWords things = new ThingWords(report);
        TimeWords times = new TimeWords(report);
        out.println(words.verdict());
        words.notes().forEach(out::println);
        table(words.overview());
        words.bearers().forEach(key -> table(words.drill(key)));
        against.ifPresent(this::against);
        out.println();
        out.println(times.next());
        table(times.cash());
        times.soldAgain().ifPresent(out::println);
        printMonths();
        table(times.course(against.map(b -> Course.of(report, b)).orElseGet(() -> Course.of(report))));
        table(things.prices());
        rise.ifPresent(percent -> {
            out.println();
            out.println(things.rise(null, percent));
        });
        lines(things.tools());
        table(things.leftOver());
    }

    private void against(Baseline kept) {
        BudgetWords budget = new BudgetWords(report, kept);
        out.println();
        out.println(budget.verdict());
        report.homestead().subprojects().forEach(s -> out.println(budget.verdict(s.key())));
        table(budget.differences().table());
        lines(budget.worth());
        table(budget.terms());
    }

    private void lines(List<String> lines) {
        if (!lines.isEmpty()) {
            out.println();
            lines.forEach(out::println);
        }
    }

    /** Whether a limit to what a month may take is kept, and what each month takes. */
    void printMonths() {
        TimeWords times = new TimeWords(report);
        out.println();
        out.println(times.affordable());
        table(times.months());
    }

    private void table(WordTable table) {
        if (!table.rows().isEmpty()) {
            out.println();
            out.print(TablePrinter.text(table));
        }
    }
}
