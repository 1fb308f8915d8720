package org.firmset.plan.search;

import java.util.Arrays;
import org.firmset.plan.DayPower;

/** How much of a stage a full battery allows on a day that has nothing else to do. No plan does more on it. */
final class AloneOnBattery {
    private static final int UNKNOWN = -1;

    private final Model model;
    /** For each stage and day; empty for stages that draw nothing. */
    private final int[][] known;

    AloneOnBattery(Model model) {
        this.model = model;
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
        return lasts(s, day, most) ? most : Halving.last(0, most, quarters -> lasts(s, day, quarters));
    }

    private boolean lasts(int s, int day, int quarters) {
        Draws draws = new Draws(model.days.get(day).people());
        draws.take(model.stage(s).wattHoursPerHour(), quarters);
        long[] byHour = new long[DayPower.HOURS];
        BatteryHours of = model.batteryHours[day];
        int drawn = draws.byHour(byHour, DayPower.HOURS - of.from);
        return of.with(byHour, drawn).after(start(day, of)) >= 0;
    }

    /** Every morning but the first of a trip is taken as full. */
    private long start(int day, BatteryHours of) {
        return model.isFirstDay(day) ? Battery.start(model.trip(model.tripOfDay[day]), of.full()) : of.full();
    }
}
