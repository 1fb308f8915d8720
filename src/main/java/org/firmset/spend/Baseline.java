package org.firmset.spend;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.firmset.homestead.Homestead;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * What everything was to cost and when it was to be finished, as agreed on one day and kept.
 *
 * @param on the day
 */
public record Baseline(LocalDate on, String currency, List<Item> items) {
    public Baseline {
        items = List.copyOf(items);
    }

    /**
     * @param stage null for what belongs to the subproject as a whole
     * @param finish when it was to be finished; null when that was not planned
     */
    public record Item(
            String subproject,
            @Nullable String stage,
            Money amount,
            @Nullable LocalDate finish) {}

    /** The budgets of the subprojects as they are on this day, without dates. */
    public static Baseline of(Homestead homestead, LocalDate on) {
        return new Baseline(
                on,
                homestead.currency(),
                homestead.subprojects().stream()
                        .map(s -> new Item(s.key(), null, s.budget(), null))
                        .toList());
    }

    /** What a subproject was to cost. */
    public Money of(String subproject) {
        return sum(items.stream().filter(i -> i.subproject().equals(subproject)).toList());
    }

    public Money whole() {
        return sum(items);
    }

    /**
     * Worth of work by a day.
     *
     * @param finished when each finished stage was really finished
     * @param actual what the finished work cost by then
     */
    public EarnedValue on(LocalDate day, Map<String, LocalDate> finished, Money actual) {
        List<Item> planned = items.stream()
                .filter(i -> i.finish() != null && !i.finish().isAfter(day))
                .toList();
        List<Item> earned = items.stream().filter(i -> isBy(day, finished, i)).toList();
        return new EarnedValue(sum(planned), sum(earned), actual, whole());
    }

    private static boolean isBy(LocalDate day, Map<String, LocalDate> finished, Item item) {
        LocalDate on = item.stage() == null ? null : finished.get(item.stage());
        return on != null && !on.isAfter(day);
    }

    private Money sum(List<Item> some) {
        return Cash.ofCents(some.stream().mapToLong(i -> Cash.cents(i.amount())).sum(), currency);
    }
}
