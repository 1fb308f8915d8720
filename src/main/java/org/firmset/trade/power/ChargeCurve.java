package org.firmset.trade.power;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * How the charge of a battery goes over days in a row.
 *
 * @param points the beginning, then the end of each stretch of even flows: of each step, and where work or generator begin or end
 * @param lowest where the least is left above the limit; the first such
 * @param brokenOrNull when the limit is gone under first; null for never
 * @param energy what came from where
 */
public record ChargeCurve(
        List<Point> points, Point lowest, @Nullable LocalDateTime brokenOrNull, EnergyFlow energy) {
    public ChargeCurve {
        points = List.copyOf(points);
    }

    /**
     * A charge at a moment.
     *
     * @param wattHours in the battery
     * @param limitWattHours not to be gone under, by the battery's floor and temperature
     */
    public record Point(LocalDateTime at, double wattHours, double limitWattHours) {
        /** Under 0 where the limit is broken. */
        public double leftWattHours() {
            return wattHours - limitWattHours;
        }
    }

    /**
     * Where energy went, in Wh.
     *
     * @param sunUsed by tools or battery, before the battery's charging loss
     * @param sunWasted since the battery was full or frozen
     * @param generator given by it
     * @param unmet asked of an empty battery, on its side of the inverter
     */
    public record EnergyFlow(double sunUsed, double sunWasted, double generator, double unmet) {}

    /**
     * Goes through the days.
     *
     * @param days one or more, each the day after the one before, all in equal steps
     * @param startPercent charge at the first midnight, 0 to 100 percent of capacity: 100 when it was filled at home
     */
    public static ChargeCurve of(PowerSystem system, List<PowerDay> days, double startPercent) {
        requireInARow(days);
        Recorder recorder = new Recorder(
                days.getFirst().date().atStartOfDay(),
                system.battery().capacityWattHours() * startPercent / 100,
                system.battery().limitWattHours(days.getFirst().batteryCelsius()));
        BatteryRun run = new BatteryRun(system, startPercent);
        run.over(days, recorder);
        return new ChargeCurve(
                recorder.points,
                recorder.lowest,
                recorder.broken,
                new EnergyFlow(run.sunUsed(), run.sunWasted(), run.generator(), run.unmet()));
    }

    /** When the limit is gone under first, if ever; to the second, as even flows have it. */
    public Optional<LocalDateTime> broken() {
        return Optional.ofNullable(brokenOrNull);
    }

    static void requireInARow(List<PowerDay> days) {
        if (days.isEmpty()) {
            throw new IllegalArgumentException("days [] must be one or more");
        }
        for (int i = 1; i < days.size(); i++) {
            PowerDay before = days.get(i - 1);
            PowerDay day = days.get(i);
            if (!day.date().equals(before.date().plusDays(1))
                    || day.sun().stepMinutes() != before.sun().stepMinutes()) {
                throw new IllegalArgumentException(
                        "date [" + day.date() + "] must follow [" + before.date() + "] and have equal steps");
            }
        }
    }

    private static final class Recorder implements Predicate<BatteryRun.Stretch> {
        private final List<Point> points = new ArrayList<>();
        private Point lowest;
        private @Nullable LocalDateTime broken;

        Recorder(LocalDateTime start, double level, double limit) {
            lowest = new Point(start, level, limit);
            points.add(lowest);
        }

        @Override
        public boolean test(BatteryRun.Stretch stretch) {
            LocalDateTime from = stretch.day().date().atStartOfDay().plusMinutes(stretch.fromMinute());
            // a colder day raises the limit at midnight, under a charge that stands still
            note(new Point(from, stretch.before(), stretch.limit()));
            Point end = new Point(from.plusMinutes(stretch.minutes()), stretch.after(), stretch.limit());
            points.add(end);
            note(end);
            if (broken == null && !stretch.holds()) {
                double fall = stretch.before() - stretch.after() + stretch.owed();
                double left = stretch.before() - stretch.limit();
                double share = left <= 0 ? 0 : left / fall;
                broken = from.plusSeconds(Math.round(share * stretch.minutes() * 60));
            }
            return true;
        }

        private void note(Point point) {
            if (point.leftWattHours() < lowest.leftWattHours()) {
                lowest = point;
            }
        }
    }
}
