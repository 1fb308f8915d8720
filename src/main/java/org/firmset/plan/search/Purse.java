package org.firmset.plan.search;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.firmset.plan.SpendingLimit;
import org.jspecify.annotations.Nullable;

/** What a half-made plan spends in each calendar month, against the limit if there is one. In cents. */
final class Purse {
    private final @Nullable SpendingLimit limit;
    private final int[] monthOfDay;
    private final long[] spent;
    private boolean open;

    Purse(Model model) {
        limit = model.problem.spending();
        monthOfDay = new int[model.dayCount()];
        List<YearMonth> months = new ArrayList<>();
        for (int d = 0; d < monthOfDay.length; d++) {
            YearMonth month = YearMonth.from(model.days.get(d).date());
            if (months.isEmpty() || !months.getLast().equals(month)) {
                months.add(month);
            }
            monthOfDay[d] = months.size() - 1;
        }
        spent = new long[months.size()];
    }

    /** Without a limit nothing is ever asked of the purse, and what it holds need not be reckoned. */
    boolean isLimited() {
        return limit != null;
    }

    void clear() {
        Arrays.fill(spent, 0);
        open = false;
    }

    /** While open, a limit that may be broken is not looked at. */
    void open(boolean isOpen) {
        open = isOpen && limit != null && !limit.hard();
    }

    boolean isSoft() {
        return limit != null && !limit.hard();
    }

    void spend(int day, long cents) {
        spent[monthOfDay[day]] += cents;
    }

    int monthOf(int day) {
        return monthOfDay[day];
    }

    int monthCount() {
        return spent.length;
    }

    /** What is left to spend in the month of a day; under zero when too much is spent. */
    long left(int day) {
        return limit == null || open ? Long.MAX_VALUE : limit.centsAMonth() - spent[monthOfDay[day]];
    }

    /** @param besides for each month what is to be paid that was not booked */
    boolean holds(long[] besides) {
        return open || limit == null || over(besides) == 0;
    }

    /** Over all months what is spent above the limit. */
    long over(long[] besides) {
        long sum = 0;
        for (int m = 0; m < spent.length && limit != null; m++) {
            sum += Math.max(0, spent[m] + besides[m] - limit.centsAMonth());
        }
        return sum;
    }
}
