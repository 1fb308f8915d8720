package org.firmset.spend;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.firmset.homestead.Homestead;
import org.firmset.measure.Cash;
import org.firmset.measure.Described;
import org.firmset.measure.Measured;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** What everything was to cost and when it was to be finished, as agreed on one day and kept. */
@Described("A budget as it was agreed on one day and kept.")
public record Baseline(
        @Described("The day.") LocalDate on,

        @Described("ISO 4217 code of the one currency of all amounts.")
        String currency,

        @Described("What was to be paid, with what was paid by then.")
        List<Item> items,

        @Described("What was kept back for what nobody foresees; in no other sum.")
        List<Reserve> reserves) {
    private static final String LEAST = "-10000000000";

    public Baseline {
        items = List.copyOf(items);
        reserves = List.copyOf(reserves);
    }

    @Described("One thing that was to be paid.")
    public record Item(
            @Described("Key of the subproject; left out when nobody bears it yet.") @Nullable
            String subproject,

            @Described("Key of the stage; left out for the subproject as a whole.") @Nullable
            String stage,

            @Described("What it is for.") LineKind kind,

            @Described("Key of the material; left out for anything else.") @Nullable
            String material,

            @Described("How many packs, drives or the like; 0 when they are not counted.")
            BigDecimal quantity,

            @Described(value = "All of it; negative for what went back.", least = LEAST)
            Money amount,

            @Described("When it was to be paid; left out when that was not planned.") @Nullable
            LocalDate due,

            @Described("When its stage was to be finished; left out when that was not planned.") @Nullable
            LocalDate finish) {
        public Item {
            quantity = Measured.normal(quantity);
        }

        private Item of() {
            return new Item(subproject, stage, kind, material, BigDecimal.ZERO, amount.subtract(amount), due, finish);
        }

        private Item plus(Item other) {
            return new Item(
                    subproject,
                    stage,
                    kind,
                    material,
                    quantity.add(other.quantity),
                    amount.add(other.amount),
                    due,
                    finish);
        }
    }

    @Described("What was kept back for one subproject.")
    public record Reserve(
            @Described("Key of the subproject.") String subproject,

            @Described(value = "The reserve.", least = LEAST)
            Money amount) {}

    /** The budgets of the subprojects as they are on this day, without dates. */
    public static Baseline of(Homestead homestead, LocalDate on) {
        return new Baseline(
                on,
                homestead.currency(),
                homestead.subprojects().stream()
                        .map(s ->
                                new Item(s.key(), null, LineKind.OTHER, null, BigDecimal.ZERO, s.budget(), null, null))
                        .toList(),
                List.of());
    }

    /** The same with items that differ in nothing but quantity and amount put together, in the order of the first. */
    public Baseline together() {
        Map<Item, Item> sums = new LinkedHashMap<>();
        items.forEach(item -> sums.merge(item.of(), item, Item::plus));
        return new Baseline(on, currency, List.copyOf(sums.values()), reserves);
    }

    /** What a subproject was to cost, without its reserve. */
    public Money of(String subproject) {
        return sum(item -> subproject.equals(item.subproject()));
    }

    /** What was kept back for a subproject. */
    public Money reserveOf(String subproject) {
        return Cash.ofCents(
                reserves.stream()
                        .filter(r -> r.subproject().equals(subproject))
                        .mapToLong(r -> Cash.cents(r.amount()))
                        .sum(),
                currency);
    }

    /** Amounts of another currency cannot be set against those of a homestead. */
    public boolean isAllIn(String code) {
        return currency.equals(code)
                && Stream.concat(
                                items.stream().map(Item::amount),
                                reserves.stream().map(Reserve::amount))
                        .allMatch(
                                amount -> amount.getCurrency().getCurrencyCode().equals(code));
    }

    public Money whole() {
        return sum(item -> true);
    }

    /**
     * Worth of work by a day.
     *
     * @param finished when each finished stage was really finished
     * @param actual what the finished work cost by then
     */
    public EarnedValue on(LocalDate day, Map<String, LocalDate> finished, Money actual) {
        Money planned = sum(i -> i.finish() != null && !i.finish().isAfter(day));
        Money earned = sum(i -> isBy(day, finished, i));
        return new EarnedValue(planned, earned, actual, whole());
    }

    private static boolean isBy(LocalDate day, Map<String, LocalDate> finished, Item item) {
        LocalDate on = item.stage() == null ? null : finished.get(item.stage());
        return on != null && !on.isAfter(day);
    }

    /** The sum of some items. */
    public Money sum(Predicate<Item> wanted) {
        return Cash.ofCents(
                items.stream()
                        .filter(wanted)
                        .mapToLong(i -> Cash.cents(i.amount()))
                        .sum(),
                currency);
    }
}
