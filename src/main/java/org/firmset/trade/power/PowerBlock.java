package org.firmset.trade.power;

import java.time.LocalTime;

/**
 * A tool at work for part of a day.
 *
 * @param from to the minute
 * @param minutes 0 to what is left of the day
 */
public record PowerBlock(Tool tool, LocalTime from, int minutes) {
    private static final int DAY_MINUTES = 24 * 60;

    public PowerBlock {
        Must.lieWithin("minutes", minutes, 0, DAY_MINUTES - minute(from));
    }

    int fromMinute() {
        return minute(from);
    }

    int toMinute() {
        return minute(from) + minutes;
    }

    /** Whether the tool is at work in the minute that begins so many minutes after midnight. */
    boolean holds(int minute) {
        return fromMinute() <= minute && minute < toMinute();
    }

    static int minute(LocalTime time) {
        return time.toSecondOfDay() / 60;
    }
}
