package org.firmset.season.day;

import java.time.Duration;
import java.time.LocalTime;
import org.firmset.homestead.DayRoutine;
import org.firmset.trade.climate.Light;

/**
 * The part of a date in which it is light enough to work and late enough in the morning.
 *
 * @param from when work may begin, to the minute
 * @param clock until the last light, or until midnight; nothing when it does not get light
 * @param usable what the meals leave of it
 */
public record UsableLight(LocalTime from, Duration clock, Duration usable) {
    private static final int DAY_MINUTES = 24 * 60;

    /** @param civil first and last light of a date */
    static UsableLight of(Light civil, DayRoutine routine) {
        int earliest = routine.earliestHour() * 60;
        return switch (civil) {
            case Light.Never never -> between(earliest, earliest, routine);
            case Light.Always always -> between(earliest, DAY_MINUTES, routine);
            case Light.Hours hours -> {
                // light that began the evening before, or lasts past midnight, is of no use outside the date
                boolean sameDay = hours.from().toLocalDate().equals(hours.to().toLocalDate());
                int noon = DAY_MINUTES / 2;
                int dawn = minute(hours.from().toLocalTime());
                int dusk = minute(hours.to().toLocalTime());
                yield between(
                        Math.max(earliest, sameDay || dawn < noon ? dawn : 0),
                        sameDay || dusk > noon ? dusk : DAY_MINUTES,
                        routine);
            }
        };
    }

    private static UsableLight between(int from, int to, DayRoutine routine) {
        Duration clock = Duration.ofMinutes(Math.max(0, to - from));
        Duration left = clock.minusMinutes(routine.meals().quarters() * 15L);
        return new UsableLight(LocalTime.ofSecondOfDay(from * 60L), clock, left.isNegative() ? Duration.ZERO : left);
    }

    private static int minute(LocalTime time) {
        return time.toSecondOfDay() / 60;
    }
}
