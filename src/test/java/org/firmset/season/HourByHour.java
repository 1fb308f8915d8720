package org.firmset.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.firmset.plan.DayPower;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.PowerSupply;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Stage;
import org.firmset.plan.Trip;

/**
 * The battery on one day with all that the generator gives, for tests: every quarter-hour of labour is laid into its hour by
 * itself. In quarters of a watt-hour.
 */
final class HourByHour {
    /** In place of a charge: the floor did not hold. */
    static final long BROKEN = -1;

    private final PowerSupply supply;
    private final SiteDay day;
    private final int from;

    HourByHour(PlanningProblem problem, SiteDay day, boolean first) {
        supply = problem.site().power();
        this.day = day;
        from = first ? day.power().workFromHour() : 0;
    }

    static long full(PlanningProblem problem) {
        return 4 * problem.site().power().capacityWattHours();
    }

    static long start(PlanningProblem problem, Trip trip) {
        long full = full(problem);
        return trip.startWattHours() > full / 4 ? full : 4 * trip.startWattHours();
    }

    long after(long morning, List<Stage> stages, int[] quarters) {
        List<Long> rates = new ArrayList<>();
        for (int s = 0; s < quarters.length; s++) {
            for (int q = 0; q < quarters[s]; q++) {
                rates.add(stages.get(s).wattHoursPerHour());
            }
        }
        rates.removeIf(r -> r == 0);
        rates.sort(Comparator.reverseOrder());
        long charge = morning;
        long floor = 4 * day.power().floorWattHours();
        int done = 0;
        for (int h = from; h < DayPower.HOURS; h++) {
            int inHour = 4 * Math.max(1, day.people());
            long drawn = 0;
            while (h >= day.power().workFromHour() && done < rates.size() && (inHour > 0 || h == 23)) {
                drawn += rates.get(done);
                done++;
                inHour--;
            }
            double after = charge
                    + gain(4 * (day.power().sunWatts().get(h) - day.power().baseWatts() + engine(h)) - drawn);
            if (Math.min(charge, after) < floor) {
                return BROKEN;
            }
            charge = (long) Math.min(4 * supply.capacityWattHours(), after);
            if (charge < floor) {
                return BROKEN;
            }
        }
        return charge;
    }

    private long engine(int hour) {
        PowerSupply.Generator g = supply.generator();
        long before = Math.max(0, hour - Math.max(from, g.fromHour())) * g.watts();
        return hour < g.fromHour() ? 0 : Math.max(0, Math.min(g.watts(), g.wattHoursPerDay() - before));
    }

    private double gain(long net) {
        if (net >= 0) {
            return day.power().charges() ? Math.floor(net * supply.chargePercent() / 100.0) : 0;
        }
        return -Math.ceil(-net * 100.0 / supply.dischargePercent());
    }
}
