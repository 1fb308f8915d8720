package org.firmset.trade.power;

import java.util.List;

/**
 * A second way to the charge of a battery, for tests: minute by minute, with its own arithmetic. It takes only numbers out of the
 * records and calls nothing of the room but the sun's curve.
 */
final class EnergyByTheMinute {
    double end;
    double leastLeft = Double.POSITIVE_INFINITY;
    double burnt;
    double owed;
    double sun;
    /** Minutes after the first midnight; -1 for never. */
    int broken = -1;

    EnergyByTheMinute(PowerSystem s, List<PowerDay> days, double startPercent, double[] shareByDay) {
        double full = s.battery().capacityWattHours();
        double charge = full * startPercent / 100;
        for (int d = 0; d < days.size(); d++) {
            PowerDay day = days.get(d);
            double usable = full * shareByDay[d];
            double limit = full - usable + usable * s.battery().floorPercent() / 100;
            leastLeft = Math.min(leastLeft, charge - limit);
            if (charge < limit - 1e-6 && broken < 0) {
                broken = d * 1440;
            }
            for (int minute = 0; minute < 1440; minute++) {
                charge = minute(s, day, minute, charge, full);
                leastLeft = Math.min(leastLeft, charge - limit);
                if (charge < limit - 1e-6 && broken < 0) {
                    broken = d * 1440 + minute;
                }
            }
        }
        end = charge;
    }

    private double minute(PowerSystem s, PowerDay day, int minute, double charge, double full) {
        double tools = day.baseWatts() / 60;
        for (PowerBlock block : day.blocks()) {
            int from = block.from().getHour() * 60 + block.from().getMinute();
            if (minute >= from && minute < from + block.minutes()) {
                tools += block.tool().watts() * block.tool().dutyPercent() / 6000;
            }
        }
        Generator g = s.generator();
        int start = g.from().getHour() * 60 + g.from().getMinute();
        boolean runs = minute >= start && minute < start + Math.min(day.generatorMinutes(), g.mostMinutes());
        double engine = runs ? g.ratedWatts() / 60 : 0;
        double shine = day.sun().wattsPerWatt(minute / day.sun().stepMinutes()) * s.panelWatts() / 60;
        double byEngine = Math.min(engine, tools);
        burnt += byEngine;
        double asked = (tools - byEngine) / (s.inverter().efficiencyPercent() / 100);
        if (asked > shine) {
            sun += shine;
            double taken = (asked - shine) / (s.battery().dischargePercent() / 100);
            if (taken > charge) {
                owed += (taken - charge) * s.battery().dischargePercent() / 100;
                return 0;
            }
            return charge - taken;
        }
        sun += asked;
        if (day.batteryCelsius() < s.battery().leastChargeCelsius()) {
            return charge;
        }
        double kept = s.battery().chargePercent() / 100;
        double surplus = shine - asked;
        double extra = engine - byEngine;
        double rise = (surplus + extra) * kept;
        if (charge + rise <= full) {
            sun += surplus;
            burnt += extra;
            return charge + rise;
        }
        double untilFull = (full - charge) / rise;
        sun += surplus * untilFull;
        burnt += extra * untilFull;
        return full;
    }
}
