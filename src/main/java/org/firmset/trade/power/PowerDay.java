package org.firmset.trade.power;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * One site day as the battery sees it.
 *
 * @param sun of the day
 * @param batteryCelsius the battery's own temperature, -60 to 60
 * @param baseWatts drawn all day and night through the inverter, 0 to 100,000
 * @param blocks the work
 * @param generatorMinutes how long the generator runs from when it may start; no longer than it may
 */
public record PowerDay(
        LocalDate date,
        SunCurve sun,
        double batteryCelsius,
        double baseWatts,
        List<PowerBlock> blocks,
        int generatorMinutes) {
    public PowerDay {
        blocks = List.copyOf(blocks);
        Must.lieWithin("batteryCelsius", batteryCelsius, -60, 60);
        Must.lieWithin("baseWatts", baseWatts, 0, 1e5);
        Must.lieWithin("generatorMinutes", generatorMinutes, 0, 24 * 60);
    }

    PowerDay with(PowerBlock block) {
        List<PowerBlock> more = new ArrayList<>(blocks);
        more.add(block);
        return new PowerDay(date, sun, batteryCelsius, baseWatts, more, generatorMinutes);
    }

    PowerDay withGeneratorMinutes(int minutes) {
        return new PowerDay(date, sun, batteryCelsius, baseWatts, blocks, minutes);
    }
}
