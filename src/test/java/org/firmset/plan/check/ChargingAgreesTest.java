package org.firmset.plan.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.firmset.plan.DayPower;
import org.firmset.plan.GeneratorUse;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.PowerSupply;
import org.firmset.plan.Problems;
import org.firmset.plan.Schedule;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Trip;
import org.firmset.plan.WorkBlock;
import org.firmset.trade.climate.Coordinates;
import org.firmset.trade.climate.Horizon;
import org.firmset.trade.power.Battery;
import org.firmset.trade.power.ChargeCurve;
import org.firmset.trade.power.ColdShare;
import org.firmset.trade.power.Generator;
import org.firmset.trade.power.Inverter;
import org.firmset.trade.power.Panels;
import org.firmset.trade.power.PowerBlock;
import org.firmset.trade.power.PowerDay;
import org.firmset.trade.power.PowerSystem;
import org.firmset.trade.power.SunCurve;
import org.firmset.trade.power.Tool;
import org.junit.jupiter.api.Test;

/**
 * The checker's whole watt-hours against the battery's own sums in fractions, on 1,000 random days. They may lag behind by
 * what is rounded, an hour's sun to whole watts, but never promise more. Others: -Dfirmset.seed=...
 */
class ChargingAgreesTest {
    private static final long SEED = Long.getLong("firmset.seed", 2027);
    private static final int RUNS = 350;
    private static final int HOURS = DayPower.HOURS;
    private static final double ROUNDED_AN_HOUR = 1.6;

    private static final SunCurve.Site SITE = new SunCurve.Site(
            new Coordinates(45, -120, ZoneId.of("Etc/GMT+8")),
            Horizon.FLAT,
            new Panels(1, 30, 180, 30, 0, 45, Panels.SunKnown.ON_PANELS));

    private int days;
    private int low;
    private int full;
    private int burnt;

    @Test
    void a_thousand_random_days_agree_with_the_battery_in_fractions() {
        for (int number = 0; number < RUNS; number++) {
            compare(
                    new SplittableRandom(SEED * 1_000_003 + number),
                    "-Dfirmset.seed=%d, number %d".formatted(SEED, number));
        }
        // the days must be of all kinds to prove anything
        assertThat(days).as("days").isGreaterThan(1_000);
        assertThat(low).as("trips that come down to their floor").isGreaterThan(RUNS / 10);
        assertThat(full).as("trips that are full at some hour").isGreaterThan(RUNS / 10);
        assertThat(burnt).as("trips with a generator").isGreaterThan(RUNS / 10);
    }

    private void compare(SplittableRandom random, String which) {
        Drawn drawn = new Drawn(random);
        Trip trip = drawn.problem.trips().getFirst();
        TripCharge whole = new Charging(drawn.problem, drawn.schedule).on(trip);
        ChargeCurve exact = ChargeCurve.of(drawn.system(), drawn.powerDays(whole), 100);
        Map<LocalDateTime, Double> at = new HashMap<>();
        exact.points().forEach(p -> at.put(p.at(), p.wattHours()));
        int hours = 0;
        for (TripCharge.Hour hour : whole.hours()) {
            if (hour.after().signum() < 0) {
                break;
            }
            hours++;
            double told = hour.after().doubleValue() / 4;
            double real =
                    Objects.requireNonNull(at.get(hour.date().atStartOfDay().plusHours(hour.hour() + 1L)));
            assertThat(told)
                    .as("after %d:00 on %s, %s", hour.hour(), hour.date(), which)
                    .isBetween(real - ROUNDED_AN_HOUR * hours, real + 1e-6);
        }
        days += trip.days().size();
        low += whole.hours().stream().anyMatch(h -> h.left().signum() <= 0) ? 1 : 0;
        full += whole.hours().stream().anyMatch(h -> h.after().longValue() / 4 == drawn.capacity) ? 1 : 0;
        burnt += whole.hours().stream().anyMatch(h -> h.generator().signum() > 0) ? 1 : 0;
    }

    /** A trip that begins at midnight, with what is done on it. */
    private static final class Drawn {
        private final SplittableRandom random;
        final long capacity;
        private final int charge;
        private final int discharge;
        private final int base;
        private final long panels;
        private final int generatorFrom;
        private final int generatorWatts;
        private final List<SunCurve> suns = new ArrayList<>();
        private final List<Boolean> charges = new ArrayList<>();
        private final List<GeneratorUse> generator = new ArrayList<>();
        final PlanningProblem problem;
        final Schedule schedule;

        Drawn(SplittableRandom random) {
            this.random = random;
            capacity = random.nextLong(600, 6_000);
            charge = random.nextInt(70, 101);
            discharge = random.nextInt(70, 101);
            base = random.nextInt(3) == 0 ? random.nextInt(25) : 0;
            panels = random.nextLong(0, 1_500);
            generatorFrom = random.nextInt(18);
            generatorWatts = random.nextInt(3) == 0 ? 0 : random.nextInt(200, 1_500);
            int count = random.nextInt(1, 6);
            List<SiteDay> made = IntStream.range(0, count)
                    .mapToObj(i -> day(Problems.STATUS_DATE.plusDays(i)))
                    .toList();
            PowerSupply supply = new PowerSupply(
                    capacity,
                    charge,
                    discharge,
                    new PowerSupply.Generator(generatorWatts, generatorWatts * 4L, generatorFrom, 60));
            int rate = random.nextInt(50, 500);
            PlanningProblem plain = Problems.problem()
                    .power(supply)
                    .stage("mix", 400, s -> s.draws(rate))
                    .trip("t", Problems.STATUS_DATE.toString(), count)
                    .build();
            problem = plain.withTrips(List.of(plain.trips().getFirst().withDays(made)));
            List<WorkBlock> blocks = made.stream()
                    .map(d -> new WorkBlock("mix", d.date(), random.nextInt(40)))
                    .toList();
            schedule = new Schedule(blocks, List.of(), generator);
        }

        private SiteDay day(LocalDate date) {
            double hours = random.nextDouble(7);
            SunCurve sun = SunCurve.of(SITE, new SunCurve.Day(date, hours, 15), 60);
            suns.add(sun);
            charges.add(random.nextInt(6) > 0);
            // whole hours, so that the curve in fractions has even flows where the other has
            generator.add(new GeneratorUse(date, (long) generatorWatts * random.nextInt(5)));
            List<Long> watts = IntStream.range(0, HOURS)
                    .mapToObj(h -> (long) Math.floor(sun.wattsPerWatt(h) * panels))
                    .toList();
            int from = date.equals(Problems.STATUS_DATE) ? 0 : random.nextInt(10);
            return new SiteDay(date, 100, 2, new DayPower(watts, base, capacity / 5, charges.getLast(), from));
        }

        PowerSystem system() {
            Battery battery = new Battery(capacity, 20, charge, discharge, ColdShare.ALWAYS_ALL, 0);
            return new PowerSystem(
                    battery,
                    panels,
                    new Inverter(1e6, 1e6, 100),
                    new Generator(generatorWatts, 0.5, 2, LocalTime.of(generatorFrom, 0), 240));
        }

        List<PowerDay> powerDays(TripCharge whole) {
            List<PowerDay> result = new ArrayList<>();
            for (int i = 0; i < suns.size(); i++) {
                LocalDate date = Problems.STATUS_DATE.plusDays(i);
                List<PowerBlock> blocks = whole.hours().stream()
                        .filter(h -> h.date().equals(date) && h.work().signum() > 0)
                        .map(h -> new PowerBlock(
                                new Tool("mixer", h.work().doubleValue() / 4, 100, 1), LocalTime.of(h.hour(), 0), 60))
                        .toList();
                int minutes = generatorWatts == 0 ? 0 : (int) (generator.get(i).wattHours() * 60 / generatorWatts);
                result.add(new PowerDay(date, suns.get(i), charges.get(i) ? 10 : -10, base, blocks, minutes));
            }
            return result;
        }
    }
}
