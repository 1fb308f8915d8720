package org.firmset.plan.search;

import java.util.Arrays;
import org.firmset.plan.DayPower;
import org.jspecify.annotations.Nullable;

/** How much of a stage a full battery allows on a day that has nothing else to do. No plan does more on it. */
final class AloneOnBattery {
    private static final int UNKNOWN = -1;

    private final Model model;
    private final @Nullable BatteryHours[] hours;
    /** For each stage and day; empty for stages that draw nothing. */
    private final int[][] known;

    AloneOnBattery(Model model) {
        this.model = model;
        hours = new @Nullable BatteryHours[model.dayCount()];
        known = new int[model.stageCount][0];
    }

    /** @param most labour to do at the most; always the same for a stage and a day */
    int most(int s, int day, int most) {
        if (known[s].length == 0) {
            known[s] = new int[model.dayCount()];
            Arrays.fill(known[s], UNKNOWN);
        }
        if (known[s][day] == UNKNOWN) {
            known[s][day] = find(s, day, most);
        }
        return known[s][day];
    }

    private int find(int s, int day, int most) {
        if (lasts(s, day, most)) {
            return most;
        }
        int low = 0;
        int high = most;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (lasts(s, day, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private boolean lasts(int s, int day, int quarters) {
        Draws draws = new Draws(model.days.get(day).people());
        draws.take(model.stage(s).wattHoursPerHour(), quarters);
        long[] byHour = new long[DayPower.HOURS];
        BatteryHours of = hours(day);
        int drawn = draws.byHour(byHour, DayPower.HOURS - of.from);
        return of.with(byHour, drawn).after(start(day, of)) >= 0;
    }

    /** Every morning but the first of a trip is taken as full. */
    private long start(int day, BatteryHours of) {
        return model.isFirstDay(day) ? Battery.start(model.trip(model.tripOfDay[day]), of.full()) : of.full();
    }

    private BatteryHours hours(int day) {
        BatteryHours made = hours[day];
        if (made == null) {
            made = new BatteryHours(
                    model.problem.site().power(), model.days.get(day).power(), model.isFirstDay(day));
            hours[day] = made;
        }
        return made;
    }
}
