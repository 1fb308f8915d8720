package org.firmset.plan;

import java.time.LocalDate;
import java.util.List;
import org.firmset.trade.haul.Rig;

/**
 * Consecutive days on site, the drive there and back included.
 *
 * @param days at least one, dates ascending without a gap
 * @param rig what the people drive on this trip, its limits already less people and standing kit
 * @param cents what the trip costs when it is made
 * @param mostExtraRuns how many runs from site to yard and back the trip may add
 * @param extraRunQuarters labour one extra run takes from the first day, in quarter-hours
 * @param extraRunCents what one extra run costs
 * @param startWattHours what is in the battery when work may begin on the first day; as much as it holds when this is more
 */
public record Trip(
        String id,
        List<SiteDay> days,
        Rig rig,
        long cents,
        int mostExtraRuns,
        int extraRunQuarters,
        long extraRunCents,
        long startWattHours) {
    /** In place of a charge: the battery is full. */
    public static final long FULL = Long.MAX_VALUE;

    public Trip {
        days = List.copyOf(days);
        Require.that(!days.isEmpty(), "days [] of trip [%s] must hold at least one site day", id);
        for (int i = 1; i < days.size(); i++) {
            Require.that(
                    days.get(i).date().equals(days.get(i - 1).date().plusDays(1)),
                    "days of trip [%s] must follow each other without a gap; [%s] comes after [%s]",
                    id,
                    days.get(i).date(),
                    days.get(i - 1).date());
        }
        Require.notNegative(cents, "cents", "trip", id);
        Require.notNegative(mostExtraRuns, "mostExtraRuns", "trip", id);
        Require.notNegative(extraRunQuarters, "extraRunQuarters", "trip", id);
        Require.notNegative(extraRunCents, "extraRunCents", "trip", id);
        Require.notNegative(startWattHours, "startWattHours", "trip", id);
    }

    /** A trip that begins with a full battery. */
    public Trip(
            String id,
            List<SiteDay> days,
            Rig rig,
            long cents,
            int mostExtraRuns,
            int extraRunQuarters,
            long extraRunCents) {
        this(id, days, rig, cents, mostExtraRuns, extraRunQuarters, extraRunCents, FULL);
    }

    public LocalDate firstDate() {
        return days.getFirst().date();
    }

    public LocalDate lastDate() {
        return days.getLast().date();
    }

    /** The same with other days. */
    public Trip withDays(List<SiteDay> changed) {
        return new Trip(id, changed, rig, cents, mostExtraRuns, extraRunQuarters, extraRunCents, startWattHours);
    }

    /** The same with another rig. */
    public Trip withRig(Rig changed) {
        return new Trip(id, days, changed, cents, mostExtraRuns, extraRunQuarters, extraRunCents, startWattHours);
    }

    /** The same with another number of extra runs. */
    public Trip withMostExtraRuns(int changed) {
        return new Trip(id, days, rig, cents, changed, extraRunQuarters, extraRunCents, startWattHours);
    }
}
