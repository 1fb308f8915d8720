package org.firmset.plan.search;

import org.firmset.plan.DayPower;
import org.firmset.plan.PowerSupply;

/**
 * The hours of a site day without work, in quarters of a watt-hour: as such, and taken together before and after the work, so that
 * only the hours in which work draws must be looked at one by one.
 */
final class BatteryHours {
    private static final int QUARTERS = 4;
    /** More than any battery and sun can cover; keeps sums of draws within whole numbers. */
    private static final long MOST_DRAW = Long.MAX_VALUE / 100_000;

    final int from;
    /** The hour the day begins at. */
    private final int start;

    private final long full;
    private final long floor;
    private final boolean charges;
    private final PowerSupply supply;
    /** What sun brings more than is drawn besides work. */
    private final long[] left = new long[DayPower.HOURS];

    private final long[] generator = new long[DayPower.HOURS];
    private final Stretch before;
    /** From each hour to midnight. */
    private final Stretch[] after = new Stretch[DayPower.HOURS + 1];

    /** @param first whether it is the first day of a trip, which begins when work may */
    BatteryHours(PowerSupply supply, DayPower day, boolean first) {
        this.supply = supply;
        from = day.workFromHour();
        start = first ? from : 0;
        full = QUARTERS * supply.capacityWattHours();
        floor = QUARTERS * day.floorWattHours();
        charges = day.charges();
        for (int h = 0; h < left.length; h++) {
            left[h] = QUARTERS * (day.sunWatts().get(h) - day.baseWatts());
        }
        generate(generator, supply.generator().wattHoursPerDay());
        after[DayPower.HOURS] = Stretch.NOTHING;
        for (int h = DayPower.HOURS - 1; h >= 0; h--) {
            after[h] = hour(h, 0).then(after[h + 1]);
        }
        Stretch morning = Stretch.NOTHING;
        for (int h = start; h < from; h++) {
            morning = morning.then(hour(h, 0));
        }
        before = morning;
    }

    private void generate(long[] hours, long wattHours) {
        long rest = wattHours;
        for (int h = Math.max(start, supply.generator().fromHour()); h < hours.length; h++) {
            long now = Math.min(rest, supply.generator().watts());
            hours[h] = QUARTERS * now;
            rest -= now;
        }
    }

    /** The day with all that the generator gives. @param draws of the work in each hour from {@link #from} on */
    Stretch with(long[] draws, int hours) {
        Stretch day = before;
        for (int i = 0; i < hours; i++) {
            day = day.then(hour(from + i, draws[i]));
        }
        return day.then(after[from + hours]);
    }

    private Stretch hour(int hour, long draw) {
        return draw > MOST_DRAW
                ? new Stretch(Stretch.NEVER, 0, Stretch.NEVER)
                : stretch(effect(left[hour] + generator[hour] - draw));
    }

    private Stretch stretch(long gain) {
        return full < floor
                ? new Stretch(Stretch.NEVER, 0, Stretch.NEVER)
                : new Stretch(Math.max(floor, floor - gain), gain, full);
    }

    /** What an hour's net flow makes of the charge; rounded against the battery. */
    private long effect(long net) {
        if (net < 0) {
            return -Math.ceilDiv(-net * 100, supply.dischargePercent());
        }
        return charges ? net * supply.chargePercent() / 100 : 0;
    }

    /** The day hour by hour with so much from the generator. */
    Stretch with(long[] draws, int hours, long generatorWattHours) {
        long[] given = new long[DayPower.HOURS];
        generate(given, generatorWattHours);
        Stretch day = Stretch.NOTHING;
        for (int h = start; h < DayPower.HOURS; h++) {
            int i = h - from;
            long draw = i >= 0 && i < hours ? draws[i] : 0;
            day = day.then(stretch(effect(left[h] + given[h] - draw)));
        }
        return day;
    }

    /** The most that can be in it. */
    long full() {
        return full;
    }
}
