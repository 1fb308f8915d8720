package org.firmset.plan.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.firmset.plan.Problems;
import org.junit.jupiter.api.Test;

/** What is kept from question to question gives the same answers as walking over the whole trip for each. */
class BatteryTest {
    private static final long BASE_SEED = Long.getLong("firmset.seed", 2027);
    private static final int MODELS = 300;
    private static final int STEPS = 200;

    private int yes;
    private int no;
    private int over;

    @Test
    void answers_as_a_walk_over_the_whole_trip_does() {
        for (int i = 0; i < MODELS; i++) {
            long seed = BASE_SEED * 1_000_003 + i;
            compare(new Random(seed), seed);
        }
        assertThat(yes).as("questions answered with yes").isGreaterThan(5_000);
        assertThat(no).as("questions answered with no").isGreaterThan(5_000);
        assertThat(over).as("questions of a trip that takes too much already").isGreaterThan(1_000);
    }

    private void compare(Random random, long seed) {
        Model model = model(random);
        Battery battery = new Battery(model);
        Walk walk = new Walk(model);
        for (int step = 0; step < STEPS; step++) {
            int day = random.nextInt(model.dayCount());
            switch (random.nextInt(40)) {
                case 0 -> {
                    battery.clear();
                    walk.clear();
                }
                case 1, 2, 3, 4, 5, 6, 7, 8 -> change(battery, walk, day, random.nextInt(500));
                case 9, 10, 11, 12, 13, 14, 15 -> change(battery, walk, day, -random.nextLong(walk.use[day] + 1));
                default -> {
                    long more = random.nextInt(5) == 0 ? 0 : random.nextInt(2_500);
                    boolean expected = walk.lasts(day, more);
                    assertThat(battery.lasts(day, more))
                            .as("%d Wh more on day %d, step %d, seed %d", more, day, step, seed)
                            .isEqualTo(expected);
                    count(expected, !walk.lasts(day, 0));
                }
            }
        }
    }

    private static void change(Battery battery, Walk walk, int day, long wattHours) {
        battery.take(day, wattHours);
        walk.use[day] += wattHours;
    }

    private void count(boolean lasts, boolean tooMuchAlready) {
        if (lasts) {
            yes++;
        } else {
            no++;
        }
        if (tooMuchAlready) {
            over++;
        }
    }

    private static Model model(Random random) {
        Problems problem = Problems.problem()
                .battery(random.nextInt(4) == 0 ? 0 : random.nextInt(3_000))
                .generator(random.nextBoolean() ? 0 : random.nextInt(800))
                .stage("weld", 8, s -> s.draws(100));
        int trips = 1 + random.nextInt(3);
        for (int t = 0; t < trips; t++) {
            int days = 1 + random.nextInt(12);
            long[] sun = random.longs(days, 0, 700).toArray();
            problem.trip("t" + t, Problems.STATUS_DATE.plusWeeks(3L * t).toString(), days, d -> d.sun(sun));
        }
        return new Model(problem.build());
    }

    /** The rule as it is written: from the first morning to the last evening, the generator on every day. */
    private static final class Walk {
        private final Model model;
        private final long[] use;

        Walk(Model model) {
            this.model = model;
            use = new long[model.dayCount()];
        }

        void clear() {
            Arrays.fill(use, 0);
        }

        boolean lasts(int day, long more) {
            int trip = model.tripOfDay[day];
            long usable = model.problem.site().usableWattHours();
            long charge = usable;
            for (int d = model.firstDayOfTrip[trip]; d <= model.lastDayOfTrip[trip]; d++) {
                long taken = use[d] + (d == day ? more : 0);
                charge += model.days.get(d).harvestWattHours()
                        + model.problem.site().generatorWattHoursPerDay()
                        - taken;
                if (charge < 0) {
                    return false;
                }
                charge = Math.min(charge, usable);
            }
            return true;
        }
    }
}
