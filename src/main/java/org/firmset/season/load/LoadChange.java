package org.firmset.season.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.firmset.homestead.Homestead;
import org.firmset.plan.Load;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Run;
import org.firmset.plan.Schedule;
import org.firmset.plan.Trip;
import org.firmset.season.day.OpenCalendar;
import org.firmset.season.day.OpenDay;
import org.firmset.season.problem.RigWriter;
import org.firmset.season.result.PlannedSeason;
import org.firmset.trade.haul.Rig;
import org.firmset.trade.haul.splitting.Cargo;
import org.firmset.trade.haul.splitting.Filled;
import org.firmset.trade.haul.splitting.Placed;
import org.firmset.trade.haul.splitting.RunLoad;
import org.firmset.trade.haul.splitting.Split;
import org.firmset.trade.haul.splitting.Splitter;
import org.firmset.trade.haul.splitting.Unfit;

/**
 * Splits the loads of a trip anew when something came otherwise on the day, and says what that means for its work. What the
 * plan has delivered comes as planned; the plan itself stays as it is.
 */
public final class LoadChange {
    private final Homestead homestead;
    private final PlanningProblem problem;
    private final Schedule schedule;
    private final Trip trip;
    private final DayChange change;
    private final TripWork work;

    private LoadChange(Homestead homestead, PlannedSeason season, DayChange change) {
        this.homestead = homestead;
        this.change = change;
        problem = season.problem();
        schedule = season.plan().schedule();
        trip = problem.trips().stream()
                .filter(t -> t.id().equals(change.trip()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("trip [" + change.trip() + "] is not in the plan"));
        work = new TripWork(problem, schedule);
    }

    /**
     * @param homestead what {@code season} was planned of
     * @throws IllegalArgumentException when the plan has no such trip
     */
    public static ChangedTrip of(Homestead homestead, PlannedSeason season, DayChange change) {
        return new LoadChange(homestead, season, change).changed();
    }

    private ChangedTrip changed() {
        List<Run> planned = schedule.runs().stream()
                .filter(run -> Arrivals.isOwn(run, trip))
                .sorted(Comparator.comparing(Run::kind))
                .toList();
        List<Cargo> wanted = TripCargo.wanted(problem, schedule, work, trip);
        List<Cargo> cargo = TripCargo.had(wanted, change.had());
        Rig rig = rig();
        Split split = Splitter.again(asSplit(planned), rig, cargo);
        boolean all = split.runs().size() <= planned.size();
        Filled filled =
                all ? new Filled(split.runs(), List.of(), split.unfit()) : Splitter.fill(rig, cargo, planned.size());
        int more = planned.isEmpty() ? 0 : Math.max(0, 1 + trip.mostExtraRuns() - planned.size());
        Filled another = Splitter.fill(rig, filled.left(), more);
        List<List<Load>> runs = loads(filled.runs());
        List<ChangedTrip.Reach> reached = reached(runs);
        ChangedTrip told = new ChangedTrip(
                trip.id(),
                runs,
                loads(another.runs()),
                packs(another.left()),
                packs(TripCargo.missing(wanted, cargo)),
                unfit(filled.unfit()),
                reached,
                List.of());
        List<ChangedTrip.Reach> withMore = another.runs().isEmpty() ? reached : reached(together(runs, another));
        return told.withWords(new LoadChangeWords(homestead, problem, schedule, trip).told(told, withMore));
    }

    private List<List<Load>> together(List<List<Load>> runs, Filled another) {
        List<List<Load>> all = new ArrayList<>(runs);
        all.addAll(loads(another.runs()));
        return all;
    }

    private Rig rig() {
        if (!change.trailerStaysHome() && change.morePeople().value().signum() == 0) {
            return trip.rig();
        }
        List<OpenDay> days = OpenCalendar.tripOf(homestead, problem.statusDate(), trip.firstDate());
        return new RigWriter(homestead).rigFor(days, change.morePeople(), !change.trailerStaysHome());
    }

    private static List<ChangedTrip.Packs> packs(List<Cargo> lines) {
        Map<String, Integer> packs = new LinkedHashMap<>();
        lines.forEach(line -> packs.merge(line.kind(), line.count(), Integer::sum));
        return packs.entrySet().stream()
                .map(e -> new ChangedTrip.Packs(e.getKey(), e.getValue()))
                .toList();
    }

    /** One for each material. */
    private static List<Unfit> unfit(List<Unfit> lines) {
        Map<String, Unfit> unfit = new LinkedHashMap<>();
        lines.forEach(line -> unfit.merge(
                line.cargo().kind(),
                line,
                (a, b) -> new Unfit(
                        a.cargo().withCount(a.cargo().count() + b.cargo().count()), a.why(), a.most())));
        return List.copyOf(unfit.values());
    }

    /** As if somebody had split them so. */
    static Split asSplit(List<Run> planned) {
        return new Split(
                planned.stream()
                        .map(run -> new RunLoad(run.loads().stream()
                                .map(l -> new Placed(l.material(), l.bay(), l.packs()))
                                .toList()))
                        .toList(),
                0,
                List.of(),
                true);
    }

    private static List<List<Load>> loads(List<RunLoad> runs) {
        return runs.stream()
                .map(run -> run.placed().stream()
                        .map(p -> new Load(p.kind(), p.bay(), p.count()))
                        .toList())
                .toList();
    }

    /** How far the work gets with these runs in the place of the planned ones. */
    private List<ChangedTrip.Reach> reached(List<List<Load>> runs) {
        Piles piles = new Piles(problem);
        Arrivals before = new Arrivals(schedule, trip, piles);
        LocalDate eve = trip.firstDate().minusDays(1);
        for (TripWork.Use use : work.uses()) {
            if (!use.block().date().isAfter(eve)) {
                before.until(use.block().date());
                piles.of(use.material()).use(use.block().date(), use.packs());
            }
        }
        before.until(eve);
        return work.reached(trip, piles, date -> arrive(date, runs, piles));
    }

    private void arrive(LocalDate date, List<List<Load>> runs, Piles piles) {
        Stream<Load> delivered = schedule.runs().stream()
                .filter(run -> run.date().equals(date) && !Arrivals.isOwn(run, trip))
                .flatMap(run -> run.loads().stream());
        Stream<Load> own = date.equals(trip.firstDate()) ? runs.stream().flatMap(List::stream) : Stream.of();
        Stream.concat(delivered, own).forEach(load -> piles.of(load.material()).arrive(date, load.packs(), false));
    }
}
