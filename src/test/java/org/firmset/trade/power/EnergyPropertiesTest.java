package org.firmset.trade.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.firmset.trade.climate.Horizon;
import org.junit.jupiter.api.Test;

/** The charge of 1,000 random days against a second way of counting. Others: -Dfirmset.seed=... */
class EnergyPropertiesTest {
    private static final long SEED = Long.getLong("firmset.seed", 2027);
    private static final int RUNS = 400;
    private static final int LEAST_DAYS = 1000;

    @Test
    void a_thousand_random_days_agree_with_counting_minute_by_minute() {
        int days = 0;
        int broken = 0;
        int owing = 0;
        int burning = 0;
        for (int number = 0; number < RUNS; number++) {
            String which = "-Dfirmset.seed=%d, number %d".formatted(SEED, number);
            SplittableRandom random = new SplittableRandom(SEED * 1_000_003 + number);
            PowerSystem system = system(random);
            List<PowerDay> plan = days(random);
            double start = random.nextInt(101);
            double[] shares = plan.stream()
                    .mapToDouble(d -> system.battery().cold().at(d.batteryCelsius()))
                    .toArray();
            EnergyByTheMinute second = new EnergyByTheMinute(system, plan, start, shares);
            ChargeCurve first = ChargeCurve.of(system, plan, start);
            compare(which, first, second);
            days += plan.size();
            broken += first.broken().isPresent() ? 1 : 0;
            owing += first.energy().unmet() > 0 ? 1 : 0;
            burning += first.energy().generator() > 0 ? 1 : 0;
        }
        // the days must be of all kinds to prove anything
        assertThat(days).isGreaterThanOrEqualTo(LEAST_DAYS);
        assertThat(broken).isBetween(RUNS / 10, RUNS * 9 / 10);
        assertThat(owing).isGreaterThan(RUNS / 20);
        assertThat(burning).isGreaterThan(RUNS / 10);
    }

    private static void compare(String which, ChargeCurve first, EnergyByTheMinute second) {
        assertThat(first.points().getLast().wattHours())
                .as("charge at the end, %s", which)
                .isCloseTo(second.end, within(1e-5));
        assertThat(first.lowest().leftWattHours())
                .as("least left, %s", which)
                .isCloseTo(second.leastLeft, within(1e-5));
        assertThat(first.energy().generator()).as("generator, %s", which).isCloseTo(second.burnt, within(1e-5));
        assertThat(first.energy().unmet()).as("unmet, %s", which).isCloseTo(second.owed, within(1e-5));
        assertThat(first.energy().sunUsed()).as("sun used, %s", which).isCloseTo(second.sun, within(1e-5));
        assertThat(first.broken().isPresent()).as("broken, %s", which).isEqualTo(second.broken >= 0);
        first.broken().ifPresent(at -> {
            double minutes =
                    Duration.between(first.points().getFirst().at(), at).toSeconds() / 60.0;
            assertThat(minutes).as("broken when, %s", which).isCloseTo(second.broken, within(1.1));
        });
    }

    private static PowerSystem system(SplittableRandom random) {
        Battery battery = new Battery(
                random.nextInt(500, 8000),
                random.nextInt(0, 60),
                random.nextInt(70, 101),
                random.nextInt(70, 101),
                ColdShare.values()[random.nextInt(3)],
                random.nextInt(-5, 6));
        Generator generator = random.nextInt(3) == 0
                ? Generator.NONE
                : new Generator(
                        random.nextInt(200, 3000),
                        0.5,
                        2,
                        LocalTime.of(random.nextInt(20), random.nextInt(60)),
                        random.nextInt(200));
        return new PowerSystem(
                battery, random.nextInt(0, 1500), new Inverter(3000, 6000, random.nextInt(80, 100)), generator);
    }

    private static List<PowerDay> days(SplittableRandom random) {
        List<PowerDay> days = new ArrayList<>();
        LocalDate first = LocalDate.of(2027, 1, 1).plusDays(random.nextInt(365));
        int step = new int[] {15, 30, 60}[random.nextInt(3)];
        int count = random.nextInt(1, 6);
        for (int i = 0; i < count; i++) {
            LocalDate date = first.plusDays(i);
            SunCurve sun = SunCurve.of(
                    new SunCurve.Site(Camp.PLACE, Horizon.FLAT, Camp.PANELS),
                    new SunCurve.Day(date, random.nextDouble(7), 15),
                    step);
            List<PowerBlock> blocks = new ArrayList<>();
            for (int b = random.nextInt(4); b > 0; b--) {
                Tool tool = new Tool("tool", random.nextInt(50, 1800), random.nextInt(10, 101), 2);
                int from = random.nextInt(20 * 60);
                blocks.add(new PowerBlock(tool, LocalTime.MIDNIGHT.plusMinutes(from), random.nextInt(1, 4 * 60)));
            }
            days.add(new PowerDay(date, sun, random.nextInt(-15, 30), random.nextInt(60), blocks, random.nextInt(240)));
        }
        return days;
    }

    @Test
    void a_year_of_hourly_steps_takes_well_under_a_tenth_of_a_second() {
        List<PowerDay> year = new ArrayList<>();
        for (int i = 0; i < 365; i++) {
            LocalDate date = LocalDate.of(2027, 1, 1).plusDays(i);
            SunCurve sun = SunCurve.of(
                    new SunCurve.Site(Camp.PLACE, Horizon.FLAT, Camp.PANELS), new SunCurve.Day(date, 4, 15), 60);
            year.add(new PowerDay(date, sun, 15, 20, List.of(Camp.mixing(9, 120), Camp.mixing(14, 60)), 0));
        }
        PowerSystem system = new PowerSystem(Camp.BATTERY, 400, Camp.INVERTER, Generator.NONE);
        long best = Long.MAX_VALUE;
        for (int i = 0; i < 30; i++) {
            long start = System.nanoTime();
            ChargeCurve curve = ChargeCurve.of(system, year, 100);
            best = Math.min(best, System.nanoTime() - start);
            assertThat(curve.points()).hasSizeGreaterThan(365 * 24);
        }
        System.out.printf("a year of hourly steps: %.2f ms%n", best / 1e6);
        // the aim is 20 ms; a busy machine gets room
        assertThat(best / 1e6).isLessThan(100);
    }
}
