package org.firmset.trade.power;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The charge of a battery over days in a row, stretch by stretch: a stretch is a step of the sun's curve, cut where a tool or
 * the generator begins or ends, so that all flows within it are even. The generator feeds tools first;
 * sun and what is left of the generator charge the battery side by side until it is full; what they cannot cover comes out of it, down
 * to nothing, floor or not, so that the curve shows how far a plan goes wrong.
 */
final class BatteryRun {
    /** Smaller shortfalls are binary fractions. */
    static final double TOLERANCE_WATT_HOURS = 1e-6;

    private final PowerSystem system;
    private double level;
    private double sunUsed;
    private double sunWasted;
    private double generator;
    private double unmet;

    BatteryRun(PowerSystem system, double startPercent) {
        Must.lieWithin("startPercent", startPercent, 0, 100);
        this.system = system;
        level = system.battery().capacityWattHours() * startPercent / 100;
    }

    /**
     * A stretch of time with even flows.
     *
     * @param fromMinute after midnight of the day
     * @param before charge in Wh when it begins
     * @param after charge in Wh when it ends
     * @param owed Wh that an empty battery could not give
     * @param limit charge in Wh not to go under
     */
    record Stretch(PowerDay day, int fromMinute, int minutes, double before, double after, double owed, double limit) {

        boolean holds() {
            return Math.min(before, after) >= limit - TOLERANCE_WATT_HOURS;
        }
    }

    /** Goes through all stretches, or until the watcher has seen enough and returns false. */
    void over(List<PowerDay> days, Predicate<Stretch> watcher) {
        for (PowerDay day : days) {
            double limit = system.battery().limitWattHours(day.batteryCelsius());
            int[] cuts = cuts(day);
            for (int i = 1; i < cuts.length; i++) {
                int minutes = cuts[i] - cuts[i - 1];
                double before = level;
                double owed = unmet;
                go(day, cuts[i - 1], minutes);
                owed = (unmet - owed) * 100 / system.battery().dischargePercent();
                if (!watcher.test(new Stretch(day, cuts[i - 1], minutes, before, level, owed, limit))) {
                    return;
                }
            }
        }
    }

    /** Whether the floor holds throughout. */
    static boolean holds(PowerSystem system, List<PowerDay> days, double startPercent) {
        boolean[] held = {true};
        new BatteryRun(system, startPercent).over(days, stretch -> {
            held[0] = stretch.holds();
            return held[0];
        });
        return held[0];
    }

    /** Minutes after midnight at which flows may change, both midnights included. */
    private int[] cuts(PowerDay day) {
        int length = day.sun().stepMinutes();
        IntStream steps = IntStream.rangeClosed(0, day.sun().steps()).map(step -> step * length);
        IntStream work = day.blocks().stream().flatMapToInt(b -> IntStream.of(b.fromMinute(), b.toMinute()));
        IntStream engine = IntStream.of(engineStart(), engineEnd(day));
        return IntStream.concat(steps, IntStream.concat(work, engine))
                .sorted()
                .distinct()
                .toArray();
    }

    private int engineStart() {
        return PowerBlock.minute(system.generator().from());
    }

    private int engineEnd(PowerDay day) {
        return engineStart()
                + Math.min(day.generatorMinutes(), system.generator().mostMinutes());
    }

    private void go(PowerDay day, int from, int minutes) {
        double hours = minutes / 60.0;
        double draw = day.baseWatts();
        for (PowerBlock block : day.blocks()) {
            draw += block.holds(from) ? block.tool().averageWatts() : 0;
        }
        boolean runs = from >= engineStart() && from < engineEnd(day);
        double engineWatts = runs ? system.generator().ratedWatts() : 0;
        double fromEngine = Math.min(draw, engineWatts);
        double spare = engineWatts - fromEngine;
        double sun = day.sun().wattsPerWatt(from / day.sun().stepMinutes()) * system.panelWatts();
        double net = sun - system.inverter().fromBattery(draw - fromEngine);
        generator += fromEngine * hours;
        if (net >= 0) {
            sunUsed += (sun - net) * hours;
            charge(net * hours, spare * hours, system.battery().charges(day.batteryCelsius()));
        } else {
            sunUsed += sun * hours;
            discharge(-net * hours);
        }
    }

    private void charge(double sun, double spare, boolean charges) {
        double efficiency = system.battery().chargePercent() / 100;
        double room = charges ? system.battery().capacityWattHours() - level : 0;
        double offered = (sun + spare) * efficiency;
        // both flow side by side until the battery is full
        double taken = offered > room ? room / offered : 1;
        level += offered * taken;
        sunUsed += sun * taken;
        sunWasted += sun * (1 - taken);
        generator += spare * taken;
    }

    private void discharge(double wanted) {
        double efficiency = system.battery().dischargePercent() / 100;
        double out = wanted / efficiency;
        if (out > level) {
            unmet += (out - level) * efficiency;
            out = level;
        }
        level -= out;
    }

    double sunUsed() {
        return sunUsed;
    }

    double sunWasted() {
        return sunWasted;
    }

    double generator() {
        return generator;
    }

    /** On the battery's side of the inverter. */
    double unmet() {
        return unmet;
    }
}
