package org.firmset.season.money;

import java.math.BigDecimal;
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
        books.purchases().items().forEach(this::bought);
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

    private void bought(PurchasedItem item) {
        PurchasedItem.Of of = item.of();
        items.add(new Baseline.Item(
                of.subproject(),
                of.stage(),
                of.kind(),
                of.material(),
                item.quantity(),
                item.amount(),
                of.on(),
                finish(of.stage())));
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
