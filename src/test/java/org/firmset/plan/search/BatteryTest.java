package org.firmset.plan.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.firmset.plan.DayPower;
import org.firmset.plan.GeneratorUse;
import org.firmset.plan.PowerSupply;
import org.firmset.plan.Problems;
import org.firmset.plan.Schedule;
import org.firmset.plan.Trip;
import org.firmset.plan.WorkBlock;
import org.firmset.plan.check.Charging;
import org.firmset.plan.check.TripCharge;
import org.junit.jupiter.api.Test;

/** What is kept from question to question gives the same answers as the checker does, which walks hour by hour for each. */
class BatteryTest {
    private static final long BASE_SEED = Long.getLong("firmset.seed", 2027);
    private static final int MODELS = 150;
    private static final int STEPS = 120;
    private static final int STAGES = 3;

    private int yes;
    private int no;
    private int over;
    private int generated;

    @Test
    void answers_as_the_checker_does() {
        for (int i = 0; i < MODELS; i++) {
            long seed = BASE_SEED * 1_000_003 + i;
            compare(new Random(seed), seed);
        }
        assertThat(yes).as("questions answered with yes").isGreaterThan(2_000);
        assertThat(no).as("questions answered with no").isGreaterThan(2_000);
        assertThat(over).as("questions of a trip that takes too much already").isGreaterThan(500);
        assertThat(generated).as("days on which the generator runs").isGreaterThan(30);
    }

    private void compare(Random random, long seed) {
        Model model = model(random);
        Battery battery = new Battery(model);
        int[][] done = new int[STAGES][model.dayCount()];
        for (int step = 0; step < STEPS; step++) {
            String which = "step %d, seed %d".formatted(step, seed);
            int day = random.nextInt(model.dayCount());
            int s = random.nextInt(STAGES);
            int kind = random.nextInt(40);
            if (kind == 0) {
                battery.clear();
                done = new int[STAGES][model.dayCount()];
            } else if (kind < 9) {
                change(battery, done, s, day, random.nextInt(8));
            } else if (kind < 16) {
                change(battery, done, s, day, -random.nextInt(done[s][day] + 1));
            } else if (kind < 18) {
                runsAsLittleAsItCan(battery, model, done, which);
            } else {
                int more = 1 + random.nextInt(15);
                boolean before = holds(model, done, day);
                done[s][day] += more;
                boolean expected = holds(model, done, day);
                done[s][day] -= more;
                assertThat(battery.lasts(s, day, more))
                        .as("%d more of %d on day %d, %s", more, s, day, which)
                        .isEqualTo(expected);
                assertThat(battery.lasts(day))
                        .as("day %d, %s", day, which)
                        .isEqualTo(before || !draws(model, done, day));
                yes += expected ? 1 : 0;
                no += expected ? 0 : 1;
                over += before ? 0 : 1;
            }
        }
    }

    /** Whether work draws on the day or after it on its trip. */
    private static boolean draws(Model model, int[][] done, int day) {
        return IntStream.rangeClosed(day, model.lastDayOfTrip[model.tripOfDay[day]])
                .anyMatch(d -> IntStream.range(0, STAGES).anyMatch(s -> done[s][d] > 0));
    }

    private static void change(Battery battery, int[][] done, int s, int day, int quarters) {
        battery.take(s, day, quarters);
        done[s][day] += quarters;
    }

    /** With what it gives the floor holds; with a Wh less on a day, and all it has on later ones, it does not. */
    private void runsAsLittleAsItCan(Battery battery, Model model, int[][] done, String which) {
        boolean possible =
                IntStream.range(0, model.tripCount()).allMatch(t -> holds(model, done, model.firstDayOfTrip[t]));
        if (!possible) {
            return;
        }
        long[] use = battery.generatorUse();
        long most = model.problem.site().generatorWattHoursPerDay();
        assertThat(broken(model, done, use)).as("with %s, %s", use, which).isFalse();
        for (int d = 0; d < use.length; d++) {
            if (use[d] > 0) {
                generated++;
                long[] less = use.clone();
                less[d]--;
                for (int later = d + 1; later <= model.lastDayOfTrip[model.tripOfDay[d]]; later++) {
                    less[later] = most;
                }
                assertThat(broken(model, done, less))
                        .as("less on day %d, %s", d, which)
                        .isTrue();
            }
        }
    }

    private static boolean broken(Model model, int[][] done, long[] use) {
        return model.problem.trips().stream()
                .anyMatch(t -> charge(model, t, done, use).broken().isPresent());
    }

    private static boolean holds(Model model, int[][] done, int day) {
        long[] all = new long[model.dayCount()];
        Arrays.fill(all, model.problem.site().generatorWattHoursPerDay());
        Trip trip = model.trip(model.tripOfDay[day]);
        return charge(model, trip, done, all).broken().isEmpty();
    }

    private static TripCharge charge(Model model, Trip trip, int[][] done, long[] use) {
        List<WorkBlock> blocks = new ArrayList<>();
        List<GeneratorUse> generator = new ArrayList<>();
        for (int d = 0; d < model.dayCount(); d++) {
            for (int s = 0; s < STAGES; s++) {
                if (done[s][d] > 0) {
                    blocks.add(
                            new WorkBlock(model.stage(s).id(), model.days.get(d).date(), done[s][d]));
                }
            }
            generator.add(new GeneratorUse(model.days.get(d).date(), use[d]));
        }
        return new Charging(model.problem, new Schedule(blocks, List.of(), generator)).on(trip);
    }

    private static Model model(Random random) {
        int from = random.nextInt(24);
        int watts = random.nextInt(700);
        Problems problem = Problems.problem()
                .power(new PowerSupply(
                        random.nextInt(4) == 0 ? 0 : random.nextInt(2_500),
                        80 + random.nextInt(21),
                        80 + random.nextInt(21),
                        random.nextBoolean()
                                ? PowerSupply.Generator.NONE
                                : new PowerSupply.Generator(
                                        watts, Math.min(watts * (24L - from), random.nextInt(2_000)), from, 60)));
        for (int s = 0; s < STAGES; s++) {
            int rate = 20 + random.nextInt(300);
            problem.stage("s" + s, 400, stage -> stage.draws(rate));
        }
        int trips = 1 + random.nextInt(3);
        for (int t = 0; t < trips; t++) {
            int days = 1 + random.nextInt(6);
            String date = Problems.STATUS_DATE.plusWeeks(3L * t).toString();
            long start = random.nextBoolean() ? Trip.FULL : random.nextInt(2_500);
            problem.trip(
                    "t" + t,
                    date,
                    days,
                    d -> d.people(1 + random.nextInt(3)).startsWith(start).power(p -> power(random)));
        }
        return new Model(problem.build());
    }

    private static DayPower power(Random random) {
        int noon = random.nextInt(300);
        List<Long> sun = IntStream.range(0, DayPower.HOURS)
                .mapToObj(h -> (long) Math.max(0, noon - 40 * Math.abs(h - 12)))
                .toList();
        long base = random.nextInt(3) == 0 ? random.nextInt(30) : 0;
        long floor = random.nextInt(3) == 0 ? random.nextInt(300) : 0;
        return new DayPower(sun, base, floor, random.nextInt(6) > 0, random.nextInt(24));
    }
}
