package org.firmset.season.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.Schedule;
import org.firmset.plan.Trip;

/** Puts what a plan brings on the piles as time goes on. The packs that a trip brings in its own vehicle are marked. */
final class Arrivals {
    private final Piles piles;
    private final Trip trip;
    private final List<Run> open;

    Arrivals(Schedule schedule, Trip trip, Piles piles) {
        this.piles = piles;
        this.trip = trip;
        Comparator<Run> byDate = Comparator.comparing(Run::date);
        open = new ArrayList<>(schedule.runs().stream()
                .sorted(byDate.thenComparing(run -> isOwn(run, trip)))
                .toList());
    }

    /** Whether it is made with the trip's own vehicle. */
    static boolean isOwn(Run run, Trip trip) {
        return run.trip().equals(trip.id()) && run.kind() != RunKind.DELIVERY;
    }

    void until(LocalDate date) {
        while (!open.isEmpty() && !open.getFirst().date().isAfter(date)) {
            Run run = open.removeFirst();
            run.loads().forEach(load -> piles.of(load.material()).arrive(run.date(), load.packs(), isOwn(run, trip)));
        }
    }
}
