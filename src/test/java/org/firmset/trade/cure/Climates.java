package org.firmset.trade.cure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.firmset.trade.climate.DailyTemperature;
import org.firmset.trade.climate.MonthlyValues;

/** Random places, goals and dates for the property tests; repeat them with -Dfirmset.seed=... */
final class Climates {
    static final long SEED = Long.getLong("firmset.seed", 2027);

    private final SplittableRandom random;

    Climates(int run) {
        random = new SplittableRandom(SEED + run);
    }

    /** A year that rises and falls somehow between deep frost and great heat, with weather of its own on each day. */
    DailyTemperature any() {
        double mean = random.nextDouble(-5, 25);
        double swing = random.nextDouble(0, 20);
        List<Double> months = new ArrayList<>();
        for (int month = 0; month < 12; month++) {
            months.add(mean - swing * Math.cos(2 * Math.PI * month / 12) + random.nextDouble(-2, 2));
        }
        MonthlyValues values = new MonthlyValues(months);
        double weather = random.nextDouble(0, 8);
        long salt = random.nextLong();
        return date -> values.on(date) + weather * new SplittableRandom(salt ^ date.toEpochDay()).nextDouble(-1, 1);
    }

    StrengthGoal goal() {
        return new StrengthGoal(random.nextDouble(0.05, 1), any(StrengthCurve.values()), any(Ageing.values()));
    }

    private <T> T any(T[] values) {
        return List.of(values).get(random.nextInt(values.length));
    }

    LocalDate date() {
        return LocalDate.of(2027, 1, 1).plusDays(random.nextInt(1000));
    }

    double number(double from, double to) {
        return random.nextDouble(from, to);
    }

    int whole(int below) {
        return random.nextInt(below);
    }
}
