package org.firmset.season.day;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firmset.homestead.BetweenTrips;
import org.firmset.homestead.Homestead;
import org.firmset.measure.Cash;
import org.firmset.plan.DayPower;
import org.firmset.plan.PowerSupply;
import org.firmset.plan.Trip;
import org.firmset.trade.power.Battery;
import org.firmset.trade.power.Generator;
import org.firmset.trade.power.PowerSystem;
import org.firmset.trade.power.SunCurve;

/** Writes a homestead's power for the planner: whole watts and watt-hours, rounded against the battery. */
public final class PlannedPowerWriter {
    private static final int HOUR = 60;

    private final SiteSky sky;
    private final Optional<SitePower> power;
    private final long baseWatts;
    private final boolean leftOut;
    /** As written: litres need not be known for it. */
    private final long fuelCents;

    public PlannedPowerWriter(Homestead homestead, SiteSky sky) {
        this.sky = sky;
        power = SitePower.of(homestead);
        baseWatts = power.map(p -> up(p.system().inverter().fromBattery(p.baseWatts())))
                .orElse(0L);
        fuelCents = homestead.power() == null || homestead.power().generator() == null
                ? 0
                : Cash.cents(homestead.power().generator().costPerKilowattHour());
        leftOut = homestead.power() != null && homestead.power().betweenTrips() == BetweenTrips.PANELS_LEFT_OUT;
    }

    public PowerSupply supply() {
        return power.map(SitePower::system).map(this::supply).orElse(PowerSupply.NONE);
    }

    private PowerSupply supply(PowerSystem system) {
        Battery battery = system.battery();
        return new PowerSupply(
                down(battery.capacityWattHours()),
                (int) battery.chargePercent(),
                (int) battery.dischargePercent(),
                generator(system.generator()));
    }

    private PowerSupply.Generator generator(Generator generator) {
        long watts = down(generator.ratedWatts());
        return new PowerSupply.Generator(
                watts, watts * generator.mostMinutes() / HOUR, generator.from().getHour(), fuelCents);
    }

    /** @param lostHours site hours that the drive takes of the morning */
    public DayPower day(LocalDate date, int lostHours) {
        LocalTime begins = sky.usable(date).from();
        int full = begins.getHour() + (begins.getMinute() > 0 ? 1 : 0) + lostHours;
        int from = Math.min(full, DayPower.HOURS - 1);
        return power.map(p -> day(p.system(), date, from))
                .orElse(new DayPower(DayPower.DARK.sunWatts(), 0, 0, true, from));
    }

    private DayPower day(PowerSystem system, LocalDate date, int from) {
        SunCurve curve = sky.curve(date, HOUR);
        List<Long> sun = new ArrayList<>();
        for (int hour = 0; hour < DayPower.HOURS; hour++) {
            sun.add(down(curve.wattsPerWatt(hour) * system.panelWatts()));
        }
        double celsius = sky.airCelsius(date);
        Battery battery = system.battery();
        return new DayPower(sun, baseWatts, up(battery.limitWattHours(celsius)), battery.charges(celsius), from);
    }

    /**
     * What is in the battery when a trip begins. Left out on site it is taken as empty to its floor after the trip before, or
     * today, and as charged on every day since.
     *
     * @param since the first date on which it was left alone
     */
    public long start(LocalDate since, LocalDate first) {
        if (!leftOut || power.isEmpty()) {
            return Trip.FULL;
        }
        PowerSystem system = power.get().system();
        long charge = up(system.battery().limitWattHours(sky.airCelsius(first)));
        long full = down(system.battery().capacityWattHours());
        for (LocalDate date = since; date.isBefore(first) && charge < full; date = date.plusDays(1)) {
            DayPower day = day(system, date, 0);
            long net =
                    day.harvestWattHours() * (long) system.battery().chargePercent() / 100 - DayPower.HOURS * baseWatts;
            charge = day.charges() ? Math.clamp(charge + net, 0, full) : charge;
        }
        return charge;
    }

    private static long up(double value) {
        return (long) Math.ceil(value - 1e-6);
    }

    private static long down(double value) {
        return (long) Math.floor(value + 1e-6);
    }
}
