package org.firmset.season.day;

import java.time.Duration;
import java.time.LocalTime;
import java.util.Optional;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.PowerKit;
import org.firmset.measure.Cash;
import org.firmset.measure.Measured;
import org.firmset.trade.power.Battery;
import org.firmset.trade.power.ColdShare;
import org.firmset.trade.power.Generator;
import org.firmset.trade.power.Inverter;
import org.firmset.trade.power.PowerSystem;
import org.jspecify.annotations.Nullable;

/**
 * Battery, panels, inverter and generator of a homestead, for the sums of the battery.
 *
 * @param baseWatts drawn all day and night
 */
public record SitePower(PowerSystem system, double baseWatts) {
    /** Tools run on the battery itself: nothing is lost and nothing is too much. */
    private static final Inverter NO_INVERTER = new Inverter(1e6, 1e7, 100);

    private static final double COLDEST = -60;
    private static final int ALL = 100;
    private static final long DAY_MINUTES = Duration.ofDays(1).toMinutes();

    /** Empty when the homestead has no power. */
    public static Optional<SitePower> of(Homestead homestead) {
        return Optional.ofNullable(homestead.power())
                .map(kit -> new SitePower(
                        new PowerSystem(
                                battery(kit),
                                kit.panels().value().doubleValue(),
                                inverter(kit.inverter()),
                                generator(kit.generator())),
                        number(kit.baseLoad(), 0)));
    }

    private static Battery battery(PowerKit kit) {
        return new Battery(
                kit.capacity().value().doubleValue(),
                kit.floorPercent(),
                kit.chargePercent() == null ? ALL : kit.chargePercent(),
                kit.dischargePercent() == null ? ALL : kit.dischargePercent(),
                kit.kind() == null ? ColdShare.ALWAYS_ALL : kit.kind().coldShare(),
                number(kit.leastChargeTemperature(), COLDEST));
    }

    private static Inverter inverter(org.firmset.homestead.@Nullable Inverter inverter) {
        return inverter == null
                ? NO_INVERTER
                : new Inverter(
                        inverter.continuous().value().doubleValue(),
                        inverter.surge().value().doubleValue(),
                        inverter.efficiencyPercent());
    }

    /** It stops at midnight, however many hours it may run. */
    private static Generator generator(org.firmset.homestead.@Nullable Generator generator) {
        if (generator == null) {
            return Generator.NONE;
        }
        LocalTime from = LocalTime.of(generator.fromHour(), 0);
        long left = DAY_MINUTES - from.toSecondOfDay() / 60;
        double litres = generator.litresPerKilowattHour() == null
                ? 0
                : generator.litresPerKilowattHour().doubleValue();
        double price = Cash.amountOf(generator.costPerKilowattHour()).doubleValue();
        return new Generator(
                generator.power().value().doubleValue(), litres, litres > 0 ? price / litres : 0, from, (int)
                        Math.min(left, generator.hoursPerDay().quarters() * 15L));
    }

    private static double number(@Nullable Measured measured, double otherwise) {
        return measured == null ? otherwise : measured.value().doubleValue();
    }
}
