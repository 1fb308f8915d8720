package org.firmset.plan.check;

import java.math.BigInteger;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.firmset.plan.DayPower;
import org.firmset.plan.GeneratorUse;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.PowerSupply;
import org.firmset.plan.Schedule;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Stage;
import org.firmset.plan.Trip;
import org.firmset.plan.WorkBlock;

/**
 * What a plan does to the battery, trip by trip and hour by hour, as the rule of power in the {@linkplain org.firmset.plan
 * package description} has it. Exact; shares no code with the planner.
 */
public final class Charging {
    private static final BigInteger FOUR = BigInteger.valueOf(4);
    private static final BigInteger HUNDRED = BigInteger.valueOf(100);

    private final PowerSupply supply;
    private final BigInteger full;
    private final Map<String, Stage> stages;
    private final Map<LocalDate, List<WorkBlock>> blocks;
    private final Map<LocalDate, BigInteger> generated;

    public Charging(PlanningProblem problem, Schedule schedule) {
        supply = problem.site().power();
        full = quarters(supply.capacityWattHours());
        stages = problem.stages().stream().collect(Collectors.toMap(Stage::id, s -> s));
        blocks = schedule.blocks().stream()
                .filter(b -> b.quarters() > 0 && rate(b).signum() > 0)
                .collect(Collectors.groupingBy(WorkBlock::date));
        generated = schedule.generator().stream()
                .collect(Collectors.toMap(
                        GeneratorUse::date, u -> quarters(Math.max(0, u.wattHours())), BigInteger::add));
    }

    /** Whether any work of the trip draws; the rule is not about others. */
    public boolean draws(Trip trip) {
        return trip.days().stream().anyMatch(d -> blocks.containsKey(d.date()));
    }

    /** The charge on a trip. */
    public TripCharge on(Trip trip) {
        Walk walk = new Walk(trip);
        int judged = 0;
        for (SiteDay day : trip.days()) {
            walk.over(day, day.equals(trip.days().getFirst()) ? day.power().workFromHour() : 0);
            judged = blocks.containsKey(day.date()) ? walk.hours.size() : judged;
        }
        return new TripCharge(walk.hours, judged);
    }

    private List<WorkBlock> thirstiestFirst(SiteDay day) {
        return blocks.getOrDefault(day.date(), List.of()).stream()
                .sorted(Comparator.comparing(this::rate).reversed())
                .toList();
    }

    /** Watt-hours for an hour are quarters of a watt-hour for a quarter of it. */
    private BigInteger rate(WorkBlock block) {
        Stage stage = stages.get(block.stage());
        return stage == null ? BigInteger.ZERO : BigInteger.valueOf(stage.wattHoursPerHour());
    }

    /**
     * All people do one block after the other; each hour holds four quarter-hours of each of them, and the last before midnight
     * all the rest.
     */
    private List<BigInteger> byHour(SiteDay day) {
        List<BigInteger> drawn = new ArrayList<>(Collections.nCopies(DayPower.HOURS, BigInteger.ZERO));
        long inAnHour = 4L * Math.max(1, day.people());
        long begun = 0;
        for (WorkBlock block : thirstiestFirst(day)) {
            long end = begun + block.quarters();
            while (begun < end) {
                long hour = day.power().workFromHour() + begun / inAnHour;
                boolean last = hour >= DayPower.HOURS - 1;
                long now = last ? end - begun : Math.min(end - begun, inAnHour - begun % inAnHour);
                int at = (int) Math.min(hour, DayPower.HOURS - 1L);
                drawn.set(at, drawn.get(at).add(rate(block).multiply(BigInteger.valueOf(now))));
                begun += now;
            }
        }
        return drawn;
    }

    private static BigInteger quarters(long wattHours) {
        return FOUR.multiply(BigInteger.valueOf(wattHours));
    }

    private final class Walk {
        private final List<TripCharge.Hour> hours = new ArrayList<>();
        private BigInteger charge;

        Walk(Trip trip) {
            charge = full.min(quarters(trip.startWattHours()));
        }

        void over(SiteDay day, int from) {
            List<BigInteger> work = byHour(day);
            BigInteger floor = quarters(day.power().floorWattHours());
            BigInteger base = quarters(day.power().baseWatts());
            BigInteger rest = generated.getOrDefault(day.date(), BigInteger.ZERO);
            for (int hour = from; hour < DayPower.HOURS; hour++) {
                BigInteger engine = hour < supply.generator().fromHour()
                        ? BigInteger.ZERO
                        : rest.min(quarters(supply.generator().watts()));
                rest = rest.subtract(engine);
                BigInteger before = charge;
                BigInteger sun = quarters(day.power().sunWatts().get(hour));
                flow(
                        sun.add(engine).subtract(base).subtract(work.get(hour)),
                        day.power().charges());
                hours.add(new TripCharge.Hour(
                        day.date(), hour, before, charge, floor, sun, engine, base, work.get(hour)));
            }
        }

        private void flow(BigInteger net, boolean charges) {
            if (net.signum() < 0) {
                BigInteger percent = BigInteger.valueOf(supply.dischargePercent());
                BigInteger[] out = net.negate().multiply(HUNDRED).divideAndRemainder(percent);
                charge = charge.subtract(out[0]).subtract(out[1].signum() == 0 ? BigInteger.ZERO : BigInteger.ONE);
            } else if (charges) {
                BigInteger percent = BigInteger.valueOf(supply.chargePercent());
                charge = charge.add(net.multiply(percent).divide(HUNDRED)).min(full);
            }
        }
    }
}
