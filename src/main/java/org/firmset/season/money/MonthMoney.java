package org.firmset.season.money;

import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.firmset.homestead.SpendingLimit;
import org.javamoney.moneta.Money;

/**
 * The money of one month.
 *
 * @param spent what receipts tell
 * @param coming what is to be paid by the plan
 */
public record MonthMoney(YearMonth month, Money spent, Money coming) {

    /** Months in which anything is paid, in order. */
    public static List<MonthMoney> of(MoneyReport report) {
        Money none = report.budget().sum(item -> false);
        Map<YearMonth, MonthMoney> months = new TreeMap<>();
        report.paid().forEach((day, amount) -> add(months, new MonthMoney(YearMonth.from(day), amount, none)));
        report.payments().forEach(p -> add(months, new MonthMoney(YearMonth.from(p.on()), none, p.amount())));
        return List.copyOf(months.values());
    }

    private static void add(Map<YearMonth, MonthMoney> months, MonthMoney more) {
        months.merge(more.month, more, (a, b) -> new MonthMoney(a.month, a.spent.add(b.spent), a.coming.add(b.coming)));
    }

    public Money sum() {
        return spent.add(coming);
    }

    /** By how much it is over what may be spent; zero or less when it is not. */
    public Money over(SpendingLimit limit) {
        return sum().subtract(limit.aMonth());
    }
}
