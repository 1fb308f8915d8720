package org.firmset.plan.search;

import java.util.Arrays;

/**
 * The labour of a site day that draws, the thirstiest first: what draws most is done first, from the hour on at which work may
 * begin, one block after another by all people who are there, so that the sun refills the battery behind it.
 */
final class Draws {
    private static final int QUARTERS_OF_HOUR = 4;

    private final long perHour;
    private long[] rates = new long[4];
    private int[] quarters = new int[4];
    private int count;

    /** @param people who share the work; none count as one */
    Draws(int people) {
        perHour = (long) QUARTERS_OF_HOUR * Math.max(1, people);
    }

    void clear() {
        count = 0;
    }

    boolean areNone() {
        return count == 0;
    }

    /** @param more quarter-hours; below zero to give them back */
    void take(long rate, int more) {
        int at = 0;
        while (at < count && rates[at] > rate) {
            at++;
        }
        if (at == count || rates[at] != rate) {
            insert(at, rate);
        }
        quarters[at] += more;
        if (quarters[at] == 0) {
            System.arraycopy(rates, at + 1, rates, at, count - at - 1);
            System.arraycopy(quarters, at + 1, quarters, at, count - at - 1);
            count--;
        }
    }

    private void insert(int at, long rate) {
        if (count == rates.length) {
            rates = Arrays.copyOf(rates, 2 * count);
            quarters = Arrays.copyOf(quarters, 2 * count);
        }
        System.arraycopy(rates, at, rates, at + 1, count - at);
        System.arraycopy(quarters, at, quarters, at + 1, count - at);
        rates[at] = rate;
        quarters[at] = 0;
        count++;
    }

    /**
     * Energy drawn hour by hour, in quarters of a watt-hour. What does not fit before midnight counts in the last hour.
     *
     * @param hours where it is written to, as many hours as there are until midnight
     * @return how many hours are drawn in
     */
    int byHour(long[] hours, int most) {
        int hour = -1;
        long room = 0;
        for (int i = 0; i < count; i++) {
            long left = quarters[i];
            while (left > 0) {
                if (room == 0) {
                    hour++;
                    hours[hour] = 0;
                    room = hour == most - 1 ? Long.MAX_VALUE : perHour;
                }
                long now = Math.min(left, room);
                hours[hour] += now * rates[i];
                left -= now;
                room -= now;
            }
        }
        return hour + 1;
    }
}
