package org.firmset.season.money;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.firmset.season.words.Dates;
import org.firmset.season.words.WordTable;
import org.firmset.spend.Baseline;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** How what differs from a kept budget came about: what was to be, what it is now and of which parts. */
public final class MadeWords {
    private final MoneyReport report;
    private final Baseline kept;
    private final ComingWords comingWords;

    public MadeWords(MoneyReport report, Baseline kept) {
        this.report = report;
        this.kept = kept;
        comingWords = new ComingWords(report);
    }

    /** One amount. @param ofReceipts the receipts of the thing add up to it */
    public record Part(String name, @Nullable BigDecimal quantity, Money amount, boolean ofReceipts) {}

    /** What was to be first, what it is in all last. */
    public List<Part> parts(BudgetDifference one) {
        List<Part> parts = new ArrayList<>();
        parts.add(new Part(
                "In the budget of " + Dates.date(kept.on()),
                one.kept().quantity(),
                one.kept().amount(),
                false));
        report.bought(one.thing()).ifPresent(b -> bought(b, parts));
        ahead(one.thing()).forEach((name, side) -> parts.add(new Part(name, side.quantity(), side.amount(), false)));
        parts.add(new Part("Now in all", one.now().quantity(), one.now().amount(), false));
        return parts;
    }

    private static void bought(Bought bought, List<Part> parts) {
        if (bought.committed().isZero()) {
            parts.add(new Part("Spent so far", bought.quantity(), bought.spent(), true));
        } else {
            parts.add(new Part("Bought and on order", bought.quantity(), bought.amount(), false));
            parts.add(new Part("of it spent so far", null, bought.spent(), true));
            parts.add(new Part("of it on order, still to pay", null, bought.committed(), true));
        }
    }

    private Map<String, BudgetDifference.Side> ahead(Thing thing) {
        Map<String, BudgetDifference.Side> parts = new LinkedHashMap<>();
        report.coming().stream()
                .filter(c -> thing.equals(Thing.of(c)))
                .forEach(c -> parts.merge(
                        ahead(c), new BudgetDifference.Side(c.quantity(), c.expected()), BudgetDifference.Side::plus));
        return parts;
    }

    private String ahead(Coming coming) {
        return coming.purpose() == Purpose.PACKS ? "Still to buy" : "Still to pay: " + comingWords.words(coming);
    }

    /** The rows of {@link #parts} in words. */
    public WordTable table(BudgetDifference one) {
        return new WordTable(
                "How it came about",
                List.of("What", "How many", "Each, tax included", "Amount"),
                parts(one).stream().map(p -> row(one.thing(), p)).toList());
    }

    private List<String> row(Thing thing, Part part) {
        BigDecimal quantity = Objects.requireNonNullElse(part.quantity(), BigDecimal.ZERO);
        return List.of(
                part.name(),
                Counts.show(thing.kind(), quantity),
                Counts.each(report, part.amount(), quantity),
                report.show(part.amount()));
    }

    private static String count(Thing thing, BigDecimal quantity) {
        return Counts.show(thing.kind(), quantity);
    }

    /** The figures of a difference, each with the sum it is; they lead from what was to be to what it is. */
    public List<String> sums(BudgetDifference one) {
        Money was = one.kept().amount();
        Money is = one.now().amount();
        if (!one.difference().scope().isZero()) {
            return List.of("%s: %s now less %s in the budget is %s."
                    .formatted(
                            was.isZero() ? "New" : is.isZero() ? "Gone" : "More went back than came",
                            report.show(is),
                            report.show(was),
                            MoneyWords.overUnder(one.difference().scope())));
        }
        if (one.kept().quantity().signum() == 0 && one.now().quantity().signum() == 0) {
            return List.of("It is not counted, so all of the change is by price: %s now less %s in the budget is %s."
                    .formatted(
                            report.show(is),
                            report.show(was),
                            MoneyWords.overUnder(one.difference().price())));
        }
        return List.of(byQuantity(one), byPrice(one));
    }

    private String byQuantity(BudgetDifference one) {
        BigDecimal before = one.kept().counted();
        BigDecimal after = one.now().counted();
        BigDecimal more = after.subtract(before);
        if (more.signum() == 0) {
            return "By quantity: as many as in the budget.";
        }
        return "By quantity: %s %s, at %s for %s as budgeted, is %s."
                .formatted(
                        count(one.thing(), more.abs()),
                        more.signum() > 0 ? "more" : "less",
                        report.show(one.kept().amount()),
                        count(one.thing(), before),
                        MoneyWords.overUnder(one.difference().quantity()));
    }

    private String byPrice(BudgetDifference one) {
        Money asBudgeted = one.kept().amount().add(one.difference().quantity());
        String count = count(one.thing(), one.now().counted());
        return one.difference().price().isZero()
                ? "By price: %s come to %s, as they would have by the budget.".formatted(count, report.show(asBudgeted))
                : "By price: %s by the budget would come to %s and come to %s: %s."
                        .formatted(
                                count,
                                report.show(asBudgeted),
                                report.show(one.now().amount()),
                                MoneyWords.overUnder(one.difference().price()));
    }
}
