package org.firmset.trade.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * One change that alone makes the battery last over given days.
 *
 * @param amount the least that is enough, in whole units of its kind
 */
public record Remedy(Kind kind, int amount) {
    private static final int MOST_WATT_HOURS = 1_000_000;
    private static final int MOST_PANEL_WATTS = 100_000;

    /** What is changed. */
    public enum Kind {
        /** So many Wh of the same battery more, charged alike at the start. */
        EXTRA_BATTERY_WATT_HOURS,
        /** So many W of panels more that stand like the others. */
        EXTRA_PANEL_WATTS,
        /** The generator runs so many minutes on every day, from when it may start. */
        GENERATOR_MINUTES_A_DAY
    }

    /**
     * The least of each kind that is enough, found by halving; a kind that does not help up to 1,000 kWh, 100 kW or the
     * generator's time is left out. Amounts of 0 mean that the battery lasts as it is.
     *
     * @param days as for {@link ChargeCurve#of}
     */
    public static List<Remedy> of(PowerSystem system, List<PowerDay> days, double startPercent) {
        ChargeCurve.requireInARow(days);
        List<Remedy> remedies = new ArrayList<>();
        double capacity = system.battery().capacityWattHours();
        double panels = system.panelWatts();
        least(
                        room(MOST_WATT_HOURS, Battery.MOST_WATT_HOURS - capacity),
                        more -> BatteryRun.holds(system.withCapacity(capacity + more), days, startPercent))
                .ifPresent(more -> remedies.add(new Remedy(Kind.EXTRA_BATTERY_WATT_HOURS, more)));
        least(
                        room(MOST_PANEL_WATTS, PowerSystem.MOST_PANEL_WATTS - panels),
                        more -> BatteryRun.holds(system.withPanelWatts(panels + more), days, startPercent))
                .ifPresent(more -> remedies.add(new Remedy(Kind.EXTRA_PANEL_WATTS, more)));
        int longest = system.generator().mostMinutes();
        least(longest, minutes -> BatteryRun.holds(system, running(days, minutes), startPercent))
                .ifPresent(minutes -> remedies.add(new Remedy(Kind.GENERATOR_MINUTES_A_DAY, minutes)));
        return remedies;
    }

    private static List<PowerDay> running(List<PowerDay> days, int minutes) {
        return days.stream()
                .map(d -> d.withGeneratorMinutes(Math.max(minutes, d.generatorMinutes())))
                .toList();
    }

    /** No change may go beyond what the records allow. */
    private static int room(int most, double left) {
        return (int) Math.min(most, left);
    }

    /** More never does harm: the least that is enough is found by halving. */
    private static Optional<Integer> least(int most, IntPredicate enough) {
        if (!enough.test(most)) {
            return Optional.empty();
        }
        int low = 0;
        int high = most;
        while (low < high) {
            int middle = low + (high - low) / 2;
            if (enough.test(middle)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return Optional.of(low);
    }
}
