package org.firmset.season.ask;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.firmset.homestead.Generator;
import org.firmset.homestead.PowerKit;
import org.firmset.measure.Energy;
import org.firmset.measure.Hours;
import org.firmset.measure.Measured;
import org.firmset.measure.Power;

/**
 * Amounts of one kind of power that are tried, from the least: as they are bought.
 *
 * @param first amount of rung 1
 * @param step from rung to rung
 * @param rungs how many there are, at least 1
 * @param kit what a homestead has with an amount
 */
record PowerLadder(MorePower.Kind kind, int first, int step, int rungs, IntFunction<PowerKit> kit) {
    static final int BATTERY_STEP = 100;
    static final int PANEL_STEP = 50;
    /** The highest and seven halvings are eight plans. */
    private static final int MOST_RUNGS = 127;

    /** What a power kit may hold at the most, as its description says. */
    private static final int MOST_WATT_HOURS = 1_000_000;

    private static final int MOST_PANEL_WATTS = 100_000;
    private static final int DAY = 24;

    /** Those there can be more of. */
    static List<PowerLadder> of(PowerKit kit) {
        List<PowerLadder> ladders = new ArrayList<>();
        ladders.add(new PowerLadder(
                MorePower.Kind.BATTERY,
                BATTERY_STEP,
                BATTERY_STEP,
                rungs(kit.capacity(), MOST_WATT_HOURS, BATTERY_STEP),
                more -> kit.withCapacity(new Energy(plus(kit.capacity(), more)))));
        ladders.add(new PowerLadder(
                MorePower.Kind.PANELS,
                PANEL_STEP,
                PANEL_STEP,
                rungs(kit.panels(), MOST_PANEL_WATTS, PANEL_STEP),
                more -> kit.withPanels(new Power(plus(kit.panels(), more)))));
        if (kit.generator() != null) {
            ladders.add(generator(kit, kit.generator()));
        }
        ladders.removeIf(l -> l.rungs() < 1);
        return ladders;
    }

    /** Whole hours over those it runs now, to midnight. */
    private static PowerLadder generator(PowerKit kit, Generator generator) {
        int now = generator.hoursPerDay().quarters() / Hours.ofWhole(1).quarters();
        return new PowerLadder(
                MorePower.Kind.GENERATOR,
                now + 1,
                1,
                DAY - generator.fromHour() - now,
                hours -> kit.withGenerator(generator.withHoursPerDay(Hours.ofWhole(hours))));
    }

    private static int rungs(Measured now, int most, int step) {
        int room = BigDecimal.valueOf(most).subtract(now.value()).intValue();
        return Math.min(MOST_RUNGS, room / step);
    }

    private static BigDecimal plus(Measured now, int more) {
        return now.value().add(BigDecimal.valueOf(more));
    }

    /** @param rung from 1 */
    int amount(int rung) {
        return first + (rung - 1) * step;
    }

    PowerKit kitAt(int rung) {
        return kit.apply(amount(rung));
    }
}
