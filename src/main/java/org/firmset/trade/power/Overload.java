package org.firmset.trade.power;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A moment at which tools together ask more of the inverter than it gives.
 *
 * @param at when the later tool begins
 * @param watts asked for
 * @param ratedWatts given
 * @param starting whether a motor's start is too much, or steady running
 */
public record Overload(LocalTime at, double watts, double ratedWatts, boolean starting) {

    /**
     * All overloads of a day, in order. Tools that overlap are taken as running at once; one of them starts while the others
     * run, whichever asks most.
     */
    public static List<Overload> of(Inverter inverter, PowerDay day) {
        List<Overload> found = new ArrayList<>();
        List<LocalTime> begins = day.blocks().stream()
                .filter(b -> b.minutes() > 0)
                .map(PowerBlock::from)
                .distinct()
                .sorted(Comparator.naturalOrder())
                .toList();
        for (LocalTime at : begins) {
            List<Tool> tools = at(day, at);
            double running =
                    day.baseWatts() + tools.stream().mapToDouble(Tool::watts).sum();
            double start = tools.stream()
                    .mapToDouble(t -> t.peakWatts() - t.watts())
                    .max()
                    .orElse(0);
            if (running > inverter.continuousWatts()) {
                found.add(new Overload(at, running, inverter.continuousWatts(), false));
            }
            if (running + start > inverter.surgeWatts()) {
                found.add(new Overload(at, running + start, inverter.surgeWatts(), true));
            }
        }
        return found;
    }

    private static List<Tool> at(PowerDay day, LocalTime time) {
        int minute = PowerBlock.minute(time);
        return day.blocks().stream()
                .filter(b -> b.holds(minute))
                .map(PowerBlock::tool)
                .toList();
    }
}
