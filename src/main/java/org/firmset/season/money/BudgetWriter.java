package org.firmset.season.money;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.firmset.homestead.Stage;
import org.firmset.measure.Cash;
import org.firmset.season.PlannedSeason;
import org.firmset.spend.Baseline;
import org.firmset.spend.LineKind;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptCosts;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** Today's budget: what was paid and is on order as it was, what is coming as it is planned, and the reserve apart. */
final class BudgetWriter {
    private final Books books;
    private final List<Coming> coming;
    private final Map<String, LocalDate> finishes = new HashMap<>();
    private final List<Baseline.Item> items = new ArrayList<>();

    BudgetWriter(Books books, List<Coming> coming) {
        this.books = books;
        this.coming = coming;
        PlannedSeason season = books.season();
        if (season != null) {
            season.report().stages().forEach(s -> finishes.put(s.key(), s.finish()));
        }
        for (Stage stage : books.homestead().stages()) {
            if (stage.progress() != null && stage.progress().finishedOn() != null) {
                finishes.put(stage.key(), stage.progress().finishedOn());
            }
        }
    }

    Baseline write() {
        books.receipts().forEach(this::bought);
        for (Coming next : coming) {
            boolean packs = next.purpose() == Purpose.PACKS;
            items.add(new Baseline.Item(
                    next.subproject(),
                    next.stage(),
                    next.kind(),
                    packs ? next.what() : null,
                    next.quantity(),
                    next.expected(),
                    next.on(),
                    finish(next.stage())));
        }
        Baseline whole = new Baseline(books.today(), books.currency(), items, List.of()).together();
        return new Baseline(whole.on(), whole.currency(), whole.items(), reserves(whole));
    }

    private @Nullable LocalDate finish(@Nullable String stage) {
        return stage == null ? null : finishes.get(stage);
    }

    private void bought(Receipt receipt) {
        List<ReceiptCosts.Cost> costs = ReceiptCosts.of(receipt);
        Money fuel = costs.stream()
                .filter(c -> c.kind() == LineKind.FUEL)
                .map(ReceiptCosts.Cost::amount)
                .reduce(books.cents(0), Money::add);
        for (ReceiptCosts.Cost cost : costs) {
            if (cost.kind() != LineKind.DEPOSIT) {
                items.add(new Baseline.Item(
                        cost.subproject(),
                        cost.stage(),
                        cost.kind(),
                        cost.kind() == LineKind.MATERIAL ? cost.material() : null,
                        quantity(cost, fuel),
                        cost.amount(),
                        receipt.date(),
                        finish(cost.stage())));
            }
        }
    }

    /** Packs of a material; a receipt with fuel counts as one drive; nothing else is counted. */
    private static BigDecimal quantity(ReceiptCosts.Cost cost, Money fuel) {
        if (cost.kind() == LineKind.MATERIAL && cost.material() != null) {
            return cost.quantity();
        }
        return cost.kind() == LineKind.FUEL && !fuel.isZero()
                ? Cash.amountOf(cost.amount()).divide(Cash.amountOf(fuel), MathContext.DECIMAL32)
                : BigDecimal.ZERO;
    }

    private List<Baseline.Reserve> reserves(Baseline whole) {
        BigDecimal percent = books.homestead().budgetingOrPlain().reservePercent();
        if (percent.signum() == 0) {
            return List.of();
        }
        return books.homestead().subprojects().stream()
                .map(s -> new Baseline.Reserve(
                        s.key(),
                        Cash.of(
                                Cash.amountOf(whole.of(s.key()))
                                        .multiply(percent)
                                        .movePointLeft(2)
                                        .setScale(2, RoundingMode.HALF_EVEN),
                                books.currency())))
                .toList();
    }
}
