package org.firmset.season.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.firmset.measure.Cash;
import org.firmset.season.result.PlannedSeason;
import org.firmset.spend.Baseline;
import org.firmset.spend.FinishedWork;
import org.javamoney.moneta.Money;

/** Today's budget: what was paid and is on order as it was, what is coming as it is planned, and the reserve apart. */
final class BudgetWriter {
    private final Books books;
    private final List<Coming> coming;
    private final Map<String, LocalDate> finishes = new HashMap<>();
    private final List<Baseline.Item> items = new ArrayList<>();
    private final Map<Thing, Bought> bought = new HashMap<>();

    BudgetWriter(Books books, List<Coming> coming) {
        this.books = books;
        this.coming = coming;
        PlannedSeason season = books.season();
        if (season != null) {
            season.report().stages().forEach(s -> finishes.put(s.key(), s.finish()));
        }
        finishes.putAll(FinishedWork.of(books.homestead()));
    }

    /** What of the written budget stands on receipts. */
    Map<Thing, Bought> bought() {
        return Map.copyOf(bought);
    }

    Baseline write() {
        books.purchases().items().forEach(this::bought);
        for (Coming next : coming) {
            items.add(item(Thing.of(next), next.quantity(), next.expected(), next.on()));
        }
        Baseline whole = new Baseline(books.today(), books.currency(), items, List.of()).together();
        return new Baseline(whole.on(), whole.currency(), whole.items(), reserves(whole));
    }

    private Baseline.Item item(Thing thing, BigDecimal quantity, Money amount, LocalDate due) {
        String stage = thing.stage();
        return new Baseline.Item(
                thing.subproject(),
                stage,
                thing.kind(),
                thing.material(),
                quantity,
                amount,
                due,
                stage == null ? null : finishes.get(stage));
    }

    private void bought(PurchasedItem item) {
        items.add(item(item.thing(), item.bought().quantity(), item.bought().amount(), item.on()));
        bought.merge(item.thing(), item.bought(), Bought::plus);
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
