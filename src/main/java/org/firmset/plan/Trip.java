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
 */
public record Trip(
        String id,
        List<SiteDay> days,
        Rig rig,
        long cents,
        int mostExtraRuns,
        int extraRunQuarters,
        long extraRunCents) {
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
    }

    public LocalDate firstDate() {
        return days.getFirst().date();
    }

    public LocalDate lastDate() {
        return days.getLast().date();
    }
}
