package org.firmset.plan.check;

import java.time.LocalDate;
import org.firmset.plan.Problems;
import org.firmset.plan.Schedules;

/**
 * 400 stages, 400 site days and 2000 waits: one half of the stages works on every day of the first 200, the other half,
 * which waits for the first, on every day of the last 200. Every hammer is in use, and May takes the last cent.
 */
final class Great {
    private static final int HALF = 200;
    private static final int DAYS_OF_A_TRIP = 10;
    private static final int MOST_TRIPS_A_MONTH = 4;

    private Great() {}

    static Problems problem() {
        Problems problem = Problems.problem()
                .material("nails", m -> m.grams(1).millilitres(1).dry())
                .tool("hammer", HALF)
                .spending(MOST_TRIPS_A_MONTH * (10_000 + HALF * DAYS_OF_A_TRIP * 500), true);
        for (int day = 0; day < 2 * HALF; day += DAYS_OF_A_TRIP) {
            problem.trip(
                    "t" + day, date(day), DAYS_OF_A_TRIP, t -> t.quarters(HALF).sun(1, 1));
        }
        for (int stage = 0; stage < 2 * HALF; stage++) {
            problem.stage(
                    "s" + stage, HALF, s -> s.draws(4).needs("nails", HALF).uses("hammer", 1));
        }
        for (int from = 0; from < HALF; from++) {
            for (int i = 0; i < 10; i++) {
                problem.wait("s" + from, "s" + (HALF + (from + i) % HALF), 1);
            }
        }
        return problem;
    }

    static Schedules schedule() {
        Schedules schedule = Schedules.schedule();
        for (int day = 0; day < 2 * HALF; day++) {
            for (int stage = 0; stage < HALF; stage++) {
                schedule.block("s" + (day < HALF ? stage : HALF + stage), date(day), 1);
            }
            if (day % DAYS_OF_A_TRIP == 0) {
                schedule.arrival("t" + day, date(day), Schedules.load("nails", "bed", HALF * DAYS_OF_A_TRIP));
            }
        }
        return schedule;
    }

    private static String date(int day) {
        LocalDate date = Problems.STATUS_DATE.plusDays(day);
        return date.toString();
    }
}
