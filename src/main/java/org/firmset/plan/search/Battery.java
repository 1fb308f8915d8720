package org.firmset.plan.search;

import java.util.Arrays;
import org.firmset.plan.DayPower;
import org.firmset.plan.Trip;

/**
 * What a half-made plan takes out of the battery, hour by hour, in quarters of a watt-hour. What the mornings find and what the
 * evenings must leave is kept as far as it was asked for, so that going from day to day, as the planner does, needs no walk
 * over the whole trip for each question; and of a day only the hours in which work draws are looked at one by one.
 */
final class Battery {
    private static final int QUARTERS = 4;
    /** In place of a charge: the floor did not hold before. */
    private static final long GONE = -1;
    /** In place of a day: none of the trip draws. */
    private static final int NONE = -1;

    private final Model model;
    private final boolean used;
    private final BatteryHours[] hours;
    private final Draws[] draws;
    private final long[] scratch = new long[DayPower.HOURS];
    /** With all that the generator gives. Energy made too early is lost at worst, so it is tried on every day. */
    private final long[] thereInTheMorning;
    /** So that the rest of the trip can be done with all that the generator gives; nothing where no later day draws. */
    private final long[] neededInTheEvening;

    private final int[] lastKnownMorning;
    private final int[] firstKnownEvening;
    private final int[] lastDrawingDay;

    Battery(Model model) {
        this.model = model;
        hours = model.batteryHours;
        used = hours.length > 0;
        int days = model.dayCount();
        draws = new Draws[hours.length];
        for (int d = 0; d < draws.length; d++) {
            draws[d] = new Draws(model.days.get(d).people());
        }
        thereInTheMorning = new long[days];
        neededInTheEvening = new long[days];
        lastKnownMorning = new int[model.tripCount()];
        firstKnownEvening = new int[model.tripCount()];
        lastDrawingDay = new int[model.tripCount()];
        for (int t = 0; t < lastKnownMorning.length && used; t++) {
            int first = model.firstDayOfTrip[t];
            thereInTheMorning[first] = start(model.trip(t), hours[first].full());
        }
        clear();
    }

    /** What is in it when a trip begins. */
    static long start(Trip trip, long full) {
        return trip.startWattHours() >= full / QUARTERS ? full : QUARTERS * trip.startWattHours();
    }

    void clear() {
        for (Draws of : draws) {
            of.clear();
        }
        System.arraycopy(model.firstDayOfTrip, 0, lastKnownMorning, 0, lastKnownMorning.length);
        Arrays.fill(lastDrawingDay, NONE);
        for (int t = 0; t < firstKnownEvening.length; t++) {
            forgetEvenings(t);
        }
    }

    /** Of evenings only this is known: where no later day draws nothing is needed. */
    private void forgetEvenings(int trip) {
        int last = Math.max(lastDrawingDay[trip], model.firstDayOfTrip[trip]);
        Arrays.fill(neededInTheEvening, last, model.lastDayOfTrip[trip] + 1, 0);
        firstKnownEvening[trip] = last;
    }

    /** @param quarters of the stage's labour; below zero to give them back */
    void take(int s, int day, int quarters) {
        long rate = model.stage(s).wattHoursPerHour();
        if (rate == 0 || quarters == 0) {
            return;
        }
        draws[day].take(rate, quarters);
        int trip = model.tripOfDay[day];
        lastKnownMorning[trip] = Math.min(lastKnownMorning[trip], day);
        int before = lastDrawingDay[trip];
        lastDrawingDay[trip] = lastDrawing(trip, Math.max(day, before));
        if (before == lastDrawingDay[trip]) {
            firstKnownEvening[trip] = Math.max(firstKnownEvening[trip], day);
        } else {
            forgetEvenings(trip);
        }
    }

    private int lastDrawing(int trip, int from) {
        int day = from;
        while (day >= model.firstDayOfTrip[trip] && draws[day].areNone()) {
            day--;
        }
        return day < model.firstDayOfTrip[trip] ? NONE : day;
    }

    /** Whether the battery holds its floor when more of a stage is done on a day, with all that is planned of its trip. */
    boolean lasts(int s, int day, int quarters) {
        long rate = model.stage(s).wattHoursPerHour();
        if (rate == 0) {
            return true;
        }
        if (quarters > 0) {
            draws[day].take(rate, quarters);
        }
        boolean lasts = holds(day);
        if (quarters > 0) {
            draws[day].take(rate, -quarters);
        }
        return lasts;
    }

    /** Whether the battery holds its floor on the trip of a day. */
    boolean lasts(int day) {
        return !used || lastDrawingDay[model.tripOfDay[day]] < day || holds(day);
    }

    private boolean holds(int day) {
        long there = thereInTheMorning(day);
        if (there == GONE) {
            return false;
        }
        long needed = neededInTheEvening(day);
        return needed < Stretch.NEVER && day(day).after(there) >= needed;
    }

    private Stretch day(int day) {
        BatteryHours of = hours[day];
        return of.with(scratch, draws[day].byHour(scratch, DayPower.HOURS - of.from));
    }

    private long thereInTheMorning(int day) {
        int trip = model.tripOfDay[day];
        for (int d = lastKnownMorning[trip]; d < day; d++) {
            thereInTheMorning[d + 1] = thereInTheMorning[d] == GONE ? GONE : day(d).after(thereInTheMorning[d]);
        }
        lastKnownMorning[trip] = Math.max(lastKnownMorning[trip], day);
        return thereInTheMorning[day];
    }

    private long neededInTheEvening(int day) {
        int trip = model.tripOfDay[day];
        for (int d = firstKnownEvening[trip]; d > day; d--) {
            long after = neededInTheEvening[d];
            neededInTheEvening[d - 1] = after >= Stretch.NEVER ? Stretch.NEVER : day(d).before(after);
        }
        firstKnownEvening[trip] = Math.min(firstKnownEvening[trip], day);
        return neededInTheEvening[day];
    }

    boolean hasGenerator() {
        return model.problem.site().generatorWattHoursPerDay() > 0;
    }

    /** Energy in Wh the generator gives on each day so that the battery lasts: as late and as little as can be. */
    long[] generatorUse() {
        long[] result = new long[model.dayCount()];
        for (int t = 0; t < model.tripCount(); t++) {
            int first = model.firstDayOfTrip[t];
            long charge = thereInTheMorning[first];
            for (int d = first; d <= lastDrawingDay[t]; d++) {
                long needed = neededInTheEvening(d);
                result[d] = leastGenerated(d, charge, needed);
                charge = generated(d, result[d]).after(charge);
            }
        }
        return result;
    }

    private long leastGenerated(int day, long charge, long needed) {
        if (generated(day, 0).after(charge) >= needed) {
            return 0;
        }
        long low = 0;
        long high = model.problem.site().generatorWattHoursPerDay();
        while (high - low > 1) {
            long middle = (low + high) >>> 1;
            if (generated(day, middle).after(charge) >= needed) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private Stretch generated(int day, long wattHours) {
        BatteryHours of = hours[day];
        int drawn = draws[day].byHour(scratch, DayPower.HOURS - of.from);
        return of.with(scratch, drawn, wattHours);
    }
}
