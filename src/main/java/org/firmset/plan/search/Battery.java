package org.firmset.plan.search;

import java.util.Arrays;

/**
 * What a half-made plan takes out of the battery on each site day, in Wh. Every trip starts with the battery full. What the
 * mornings find and what the evenings must leave is kept as far as it was asked for, so that going from day to day, as the
 * planner does, needs no walk over the whole trip for each question.
 */
final class Battery {
    /** In place of a charge: the battery was empty before. */
    private static final long GONE = -1;
    /** In place of a charge: no battery holds so much. */
    private static final long NEVER = Long.MAX_VALUE;

    private final Model model;
    private final long usable;
    private final long generatorPerDay;
    private final boolean used;
    private final long[] use;
    /** With all that the generator gives. Energy made too early is lost at worst, so it is tried on every day. */
    private final long[] thereInTheMorning;
    /** So that the rest of the trip can be done with all that the generator gives. */
    private final long[] neededInTheEvening;

    private final int[] lastKnownMorning;
    private final int[] firstKnownEvening;

    Battery(Model model) {
        this.model = model;
        usable = model.problem.site().usableWattHours();
        generatorPerDay = model.problem.site().generatorWattHoursPerDay();
        used = model.problem.stages().stream().anyMatch(s -> s.wattHoursPerHour() > 0);
        use = new long[model.dayCount()];
        thereInTheMorning = new long[model.dayCount()];
        neededInTheEvening = new long[model.dayCount()];
        lastKnownMorning = new int[model.tripCount()];
        firstKnownEvening = new int[model.tripCount()];
        // what every trip begins and ends with; nothing else writes there
        Arrays.fill(thereInTheMorning, usable);
        clear();
    }

    void clear() {
        Arrays.fill(use, 0);
        System.arraycopy(model.firstDayOfTrip, 0, lastKnownMorning, 0, lastKnownMorning.length);
        System.arraycopy(model.lastDayOfTrip, 0, firstKnownEvening, 0, firstKnownEvening.length);
    }

    /** @param wattHours below zero to give them back */
    void take(int day, long wattHours) {
        if (wattHours != 0) {
            use[day] += wattHours;
            int trip = model.tripOfDay[day];
            lastKnownMorning[trip] = Math.min(lastKnownMorning[trip], day);
            firstKnownEvening[trip] = Math.max(firstKnownEvening[trip], day);
        }
    }

    /** Whether the trip's battery stays above its floor when {@code more} Wh are taken on a day. */
    boolean lasts(int day, long more) {
        if (!used) {
            return true;
        }
        long there = thereInTheMorning(day);
        long needed = neededInTheEvening(day);
        return there != GONE && needed <= usable && there + generatorPerDay - shortOfSun(day) - more >= needed;
    }

    private long thereInTheMorning(int day) {
        int trip = model.tripOfDay[day];
        for (int d = lastKnownMorning[trip]; d < day; d++) {
            long left = thereInTheMorning[d] + generatorPerDay - shortOfSun(d);
            thereInTheMorning[d + 1] = thereInTheMorning[d] == GONE || left < 0 ? GONE : Math.min(left, usable);
        }
        lastKnownMorning[trip] = Math.max(lastKnownMorning[trip], day);
        return thereInTheMorning[day];
    }

    private long neededInTheEvening(int day) {
        int trip = model.tripOfDay[day];
        for (int d = firstKnownEvening[trip]; d > day; d--) {
            neededInTheEvening[d - 1] = neededInTheEvening[d] > usable
                    ? NEVER
                    : Math.max(0, neededInTheEvening[d] + shortOfSun(d) - generatorPerDay);
        }
        firstKnownEvening[trip] = Math.min(firstKnownEvening[trip], day);
        return neededInTheEvening[day];
    }

    /** What a day takes out of the battery; below zero when the sun gives more than is used. */
    private long shortOfSun(int day) {
        return use[day] - model.days.get(day).harvestWattHours();
    }

    boolean hasGenerator() {
        return generatorPerDay > 0;
    }

    /** Energy the generator gives on each day so that the battery lasts: as late and as little as can be. */
    long[] generatorUse() {
        long[] neededInTheMorning = new long[model.dayCount() + 1];
        long[] result = new long[model.dayCount()];
        for (int t = 0; t < model.tripCount(); t++) {
            int last = model.lastDayOfTrip[t];
            neededInTheMorning[last + 1] = 0;
            for (int d = last; d > model.firstDayOfTrip[t]; d--) {
                neededInTheMorning[d] = Math.max(0, neededInTheMorning[d + 1] + shortOfSun(d) - generatorPerDay);
            }
            long charge = usable;
            for (int d = model.firstDayOfTrip[t]; d <= last; d++) {
                charge -= shortOfSun(d);
                result[d] = Math.max(0, neededInTheMorning[d + 1] - charge);
                charge = Math.min(charge + result[d], usable);
            }
        }
        return result;
    }
}
