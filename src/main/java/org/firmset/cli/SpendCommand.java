package org.firmset.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.SpendingLimit;
import org.firmset.homestead.file.Reading;
import org.firmset.measure.Cash;
import org.firmset.measure.UnitsFault;
import org.firmset.plan.Effort;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.firmset.season.ask.Compared;
import org.firmset.season.ask.Comparing;
import org.firmset.season.money.Books;
import org.firmset.season.money.BudgetDocument;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.PlannedSeason;
import org.firmset.spend.Baseline;
import org.firmset.spend.Keys;
import org.firmset.spend.Receipt;
import org.firmset.spend.table.ImportPreview;
import org.firmset.spend.table.Ledger;
import org.firmset.spend.table.ReceiptImport;
import org.firmset.spend.table.SpendTable;
import org.firmset.spend.table.TableReader;

/** firmset spend FILE: where the money of a homestead went, what comes when, and where it will end. */
final class SpendCommand {
    private static final Set<String> OPTIONS =
            Set.of("receipts", "budget", "against", "rise", "a-month", "style", "date", "proof");
    private static final String FIRM = "--firm";
    private static final String TO_SCREEN = "-";

    private final PrintStream out;
    private final PrintStream err;
    private final PlanCommand plans;

    SpendCommand(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
        plans = new PlanCommand(out, err);
    }

    int run(List<String> arguments) {
        List<String> rest = new ArrayList<>(arguments);
        boolean firm = rest.remove(FIRM);
        Options options = new Options(rest, OPTIONS);
        Path file = Path.of(options.onlyWord("homestead file"));
        return switch (PlanCommand.read(file)) {
            case Reading.Refused refused -> plans.refuse(file, refused.faults());
            case Reading.Accepted accepted -> planned(accepted.homestead(), options, firm);
        };
    }

    private int planned(Homestead homestead, Options options, boolean firm) {
        LocalDate today = options.value("date").map(PlanCommand::date).orElseGet(LocalDate::now);
        Style style = options.value("style").map(PlanCommand::style).orElse(Style.SOONEST);
        Effort effort = options.value("proof").map(PlanCommand::effort).orElse(Effort.THOROUGH);
        Optional<BigDecimal> rise = options.value("rise").map(SpendCommand::percent);
        Optional<SpendingLimit> limit = options.value("a-month").map(text -> limit(text, homestead, firm));
        Optional<Baseline> against = options.value("against").flatMap(file -> budget(file, homestead.currency()));
        List<Receipt> receipts = new ArrayList<>();
        if (options.value("receipts").isPresent()
                && !read(Path.of(options.value("receipts").get()), homestead, today, receipts)) {
            return Commands.REFUSED;
        }
        return switch (new SeasonPlanner().plan(homestead, today, style, effort)) {
            case SeasonPlanner.Result.NoPlan noPlan -> plans.noPlan(noPlan.obstacles());
            case SeasonPlanner.Result.Planned planned -> {
                MoneyReport report = MoneyReport.of(new Books(homestead, planned.season(), receipts, today));
                String budget = options.value("budget").orElse("");
                if (!budget.equals(TO_SCREEN)) {
                    new SpendPrinter(out, report).print(against, rise);
                    limit.ifPresent(l -> withLimit(new Books(homestead, planned.season(), receipts, today), l));
                }
                int written = write(report, budget);
                // what was asked for was not all told
                yield options.value("against").isPresent() && against.isEmpty() ? Commands.REFUSED : written;
            }
        };
    }

    private void withLimit(Books books, SpendingLimit limit) {
        out.println();
        PlannedSeason season = Objects.requireNonNull(books.season());
        switch (Comparing.withLimit(books.homestead(), season, limit, new Stop())) {
            case Compared.Nothing nothing -> out.println(nothing.why());
            case Compared.Plans found -> {
                found.limited()
                        .map(p -> new Books(p.homestead(), p.season(), books.purchases(), books.today()))
                        .ifPresent(other -> new SpendPrinter(out, MoneyReport.of(other)).printMonths());
                new SideBySidePrinter(out).print(found);
            }
        }
    }

    private int write(MoneyReport report, String file) {
        if (file.isEmpty()) {
            return Commands.DONE;
        }
        String json = BudgetDocument.write(report.budget());
        if (file.equals(TO_SCREEN)) {
            out.print(json);
            return Commands.DONE;
        }
        try {
            Files.writeString(Path.of(file), json);
        } catch (IOException e) {
            throw new NotUnderstood("the file " + file + " cannot be written; is the folder there?");
        }
        return Commands.DONE;
    }

    /** Empty when it is a budget that cannot be read, which is told. */
    private Optional<Baseline> budget(String file, String currency) {
        return switch (document(file)) {
            case BudgetDocument.Whole(Baseline budget) -> {
                if (!budget.isAllIn(currency)) {
                    throw new NotUnderstood(
                            "the budget " + file + " is not all in " + currency + ", the homestead's currency");
                }
                yield Optional.of(budget);
            }
            case BudgetDocument.Unreadable unreadable -> {
                err.println("firmset: " + unreadable.told("the budget " + file));
                yield Optional.empty();
            }
            case BudgetDocument.NoBudget no ->
                throw new NotUnderstood(
                        "the file " + file + " is no budget; write one with 'firmset spend FILE --budget OUT'");
        };
    }

    private static BudgetDocument document(String file) {
        try {
            return BudgetDocument.read(Files.readAllBytes(Path.of(file)));
        } catch (IOException e) {
            throw new NotUnderstood("the file " + file + " cannot be read; is the path right?");
        }
    }

    private static BigDecimal percent(String text) {
        if (!text.matches("-?\\d{1,4}(\\.\\d{1,3})?")) {
            throw new NotUnderstood("'" + text + "' are no percent; write a number such as 8 or -2.5");
        }
        return new BigDecimal(text);
    }

    private static SpendingLimit limit(String text, Homestead homestead, boolean firm) {
        String whole = text.matches("[\\d.]+") ? text + " " + homestead.currency() : text;
        try {
            var amount = Cash.parse(whole);
            if (amount.isNegative() || !amount.getCurrency().getCurrencyCode().equals(homestead.currency())) {
                throw new NotUnderstood("'--a-month " + text + "' must be zero or more, in " + homestead.currency());
            }
            return new SpendingLimit(amount, firm);
        } catch (UnitsFault e) {
            throw new NotUnderstood("'--a-month': " + e.getMessage());
        }
    }

    /** Whether all of them were taken; otherwise their faults are told. */
    private boolean read(Path file, Homestead homestead, LocalDate today, List<Receipt> receipts) {
        try {
            var reading = TableReader.read(file);
            if (reading.table().isEmpty()) {
                plans.refuse(file, reading.faults());
                return false;
            }
            SpendTable table = reading.table().get();
            ImportPreview preview = ReceiptImport.preview(
                    table,
                    ReceiptImport.guess(table, homestead.currency()),
                    Ledger.empty(Keys.of(homestead), homestead.currency()).on(today));
            preview.all().ifPresent(receipts::addAll);
            if (!preview.faults().isEmpty()) {
                plans.refuse(file, preview.faults());
            } else if (preview.all().isEmpty()) {
                err.println("Not all columns of " + file + " are clear; take it in on the page of receipts instead.");
            }
            return preview.all().isPresent();
        } catch (IOException e) {
            throw new NotUnderstood("the file " + file + " cannot be read; is the path right?");
        }
    }
}
