package org.firmset.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Random choices that depend on nothing but the seed. */
final class Dice {
    private final SplittableRandom random;

    Dice(long seed) {
        random = new SplittableRandom(seed);
    }

    /** Both ends included. */
    int between(int least, int most) {
        return random.nextInt(least, most + 1);
    }

    boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    /** Some of a list, at least one, in a random order. */
    <T> List<T> some(List<T> of, int most) {
        List<T> left = new ArrayList<>(of);
        List<T> result = new ArrayList<>();
        int count = between(1, Math.min(most, of.size()));
        while (result.size() < count) {
            result.add(left.remove(random.nextInt(left.size())));
        }
        return result;
    }

    <T extends Enum<T>> T any(Class<T> type) {
        return one(List.of(type.getEnumConstants()));
    }

    LocalDate date(LocalDate from, int leastDays, int mostDays) {
        return from.plusDays(between(leastDays, mostDays));
    }
}
