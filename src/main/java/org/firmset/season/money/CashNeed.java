package org.firmset.season.money;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * What must be there by the end of one trip, from the end of the one before on.
 *
 * @param trip null for what comes after the last trip
 * @param byPurpose only what is not nothing
 * @param sum of it
 * @param together with all trips before
 */
public record CashNeed(MoneyReport.@Nullable Leg trip, Map<Purpose, Money> byPurpose, Money sum, Money together) {

    /** One for each trip of the plan, and one more when something is to be paid after the last. */
    public static List<CashNeed> of(MoneyReport report) {
        List<CashNeed> needs = new ArrayList<>();
        List<Payment> open = new ArrayList<>(report.payments());
        for (MoneyReport.Leg trip : report.made()) {
            needs.add(next(report, needs, trip, taken(open, trip.last())));
        }
        if (!open.isEmpty()) {
            needs.add(next(report, needs, null, open));
        }
        return needs;
    }

    private static List<Payment> taken(List<Payment> open, LocalDate last) {
        List<Payment> due = open.stream().filter(p -> !p.on().isAfter(last)).toList();
        open.removeAll(due);
        return due;
    }

    private static CashNeed next(
            MoneyReport report, List<CashNeed> before, MoneyReport.@Nullable Leg trip, List<Payment> due) {
        Money none = report.budget().sum(item -> false);
        Map<Purpose, Money> byPurpose = new EnumMap<>(Purpose.class);
        due.forEach(p -> byPurpose.merge(p.purpose(), p.amount(), Money::add));
        byPurpose.values().removeIf(Money::isZero);
        Money sum = due.stream().map(Payment::amount).reduce(none, Money::add);
        Money so = before.isEmpty() ? none : before.getLast().together();
        return new CashNeed(trip, byPurpose, sum, so.add(sum));
    }
}
