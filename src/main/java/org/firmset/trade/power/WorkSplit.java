package org.firmset.trade.power;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/**
 * How many pieces of some work, such as bags to mix, the battery allows on each day: as many as early as can be, so that the
 * floor holds on all days given. Work done early leaves room in the battery for the sun that follows, so early never
 * wastes more.
 *
 * @param units for each day
 * @param left what does not fit
 */
public record WorkSplit(List<Integer> units, int left) {
    public WorkSplit {
        units = List.copyOf(units);
    }

    /**
     * Work in pieces.
     *
     * @param tool what it takes
     * @param minutesPerUnit over 0 to 1440
     * @param from when a day's work begins
     * @param mostMinutes how long a day's work may be, not beyond midnight
     */
    public record Work(Tool tool, double minutesPerUnit, LocalTime from, int mostMinutes) {
        public Work {
            Must.lieWithin("minutesPerUnit", minutesPerUnit, 0.01, 24 * 60);
            Must.lieWithin("mostMinutes", mostMinutes, 0, 24 * 60 - PowerBlock.minute(from));
        }

        /** How many fit into a day's time. */
        int most() {
            return (int) Math.floor(mostMinutes / minutesPerUnit + 1e-9);
        }

        /** Minutes are rounded up to whole ones. */
        PowerBlock block(int units) {
            return new PowerBlock(tool, from, (int) Math.min(mostMinutes, Math.ceil(units * minutesPerUnit - 1e-9)));
        }
    }

    /**
     * Splits work over days; none fits when the floor is broken without it.
     *
     * @param days as for {@link ChargeCurve#of}, with all that is drawn besides
     * @param units 0 or more
     */
    public static WorkSplit of(PowerSystem system, List<PowerDay> days, double startPercent, Work work, int units) {
        Must.lieWithin("units", units, 0, 1e6);
        ChargeCurve.requireInARow(days);
        List<PowerDay> planned = new ArrayList<>(days);
        List<Integer> split = new ArrayList<>();
        int left = units;
        for (int day = 0; day < days.size(); day++) {
            int fits = most(system, planned, startPercent, work, day, Math.min(left, work.most()));
            planned.set(day, days.get(day).with(work.block(fits)));
            split.add(fits);
            left -= fits;
        }
        return new WorkSplit(split, left);
    }

    /** More work never leaves more charge, so the most that fits is found by halving. */
    private static int most(
            PowerSystem system, List<PowerDay> days, double startPercent, Work work, int day, int highest) {
        List<PowerDay> tried = new ArrayList<>(days);
        int low = 0;
        int high = highest;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            tried.set(day, days.get(day).with(work.block(middle)));
            if (BatteryRun.holds(system, tried, startPercent)) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }
}
