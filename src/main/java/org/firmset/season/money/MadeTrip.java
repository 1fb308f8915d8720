package org.firmset.season.money;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.Trip;
import org.firmset.plan.WorkBlock;
import org.firmset.season.result.PlannedSeason;

/** A trip that the plan makes, with its work and its runs. */
record MadeTrip(Trip trip, List<WorkBlock> blocks, List<Run> runs) {

    static List<MadeTrip> of(PlannedSeason season) {
        List<MadeTrip> made = new ArrayList<>();
        for (Trip trip : season.problem().trips()) {
            List<WorkBlock> blocks = season.plan().schedule().blocks().stream()
                    .filter(b -> isIn(trip, b.date()))
                    .toList();
            List<Run> runs = season.plan().schedule().runs().stream()
                    .filter(r -> r.trip().equals(trip.id()))
                    .toList();
            if (!blocks.isEmpty() || !runs.isEmpty()) {
                made.add(new MadeTrip(trip, blocks, runs));
            }
        }
        return made;
    }

    private static boolean isIn(Trip trip, LocalDate date) {
        return !date.isBefore(trip.firstDate()) && !date.isAfter(trip.lastDate());
    }

    /** Labour in quarter-hours by stage, in the order in which stages are first worked on. */
    Map<String, Long> quarters(List<WorkBlock> some) {
        Map<String, Long> quarters = new LinkedHashMap<>();
        some.forEach(b -> quarters.merge(b.stage(), (long) b.quarters(), Long::sum));
        return quarters;
    }

    long extraRuns() {
        return runs.stream().filter(r -> r.kind() == RunKind.EXTRA).count();
    }

    /** Days on which one of these stages is worked on. */
    List<LocalDate> daysOf(List<String> stages) {
        TreeSet<LocalDate> days = new TreeSet<>();
        blocks.stream().filter(b -> stages.contains(b.stage())).forEach(b -> days.add(b.date()));
        return List.copyOf(days);
    }
}
