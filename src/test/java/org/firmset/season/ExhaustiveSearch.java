package org.firmset.season;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.firmset.plan.Layout;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SiteDay;
import org.firmset.plan.SpendingLimit;
import org.firmset.plan.Stage;
import org.firmset.plan.Subproject;
import org.firmset.plan.ToolUse;
import org.firmset.plan.Trip;
import org.firmset.plan.Wait;

/**
 * Says whether a small problem without materials has a plan, by looking at every way to spend every quarter-hour of
 * every site day. It follows the hard rules word for word and shares no code with the planner.
 */
final class ExhaustiveSearch {
    enum Answer {
        POSSIBLE,
        IMPOSSIBLE,
        GAVE_UP
    }

    private static final int MOST_STATES = 200_000;

    private final PlanningProblem problem;
    private final List<Stage> stages;
    private final List<SiteDay> days;
    private final Set<String> hopeless = new HashSet<>();
    private long limit = Long.MAX_VALUE;
    private final int[] left;
    private final LocalDate[] finish;
    private final Set<Trip> made = new LinkedHashSet<>();

    private ExhaustiveSearch(PlanningProblem problem) {
        this.problem = problem;
        stages = problem.stages();
        days = problem.trips().stream().flatMap(t -> t.days().stream()).toList();
        left = stages.stream().mapToInt(Stage::labourQuarters).toArray();
        finish = stages.stream()
                .map(s -> s.finishedOn() == null ? LocalDate.MAX : s.finishedOn())
                .toArray(LocalDate[]::new);
    }

    /**
     * Whether it can look through a problem: nothing is carried, and money goes into trips alone. A limit that is only
     * kept as far as it can be is no rule, yet comes before the finishes.
     */
    static boolean canSearch(PlanningProblem problem) {
        SpendingLimit limit = problem.spending();
        boolean noFuel =
                problem.site().generatorWattHoursPerDay() == 0 || problem.site().generatorCentsPerKilowattHour() == 0;
        return problem.materials().isEmpty() && (limit == null || (limit.hard() && noFuel));
    }

    static Answer search(PlanningProblem problem) {
        ExhaustiveSearch search = new ExhaustiveSearch(problem);
        boolean found = search.from(0, HourByHour.full(problem));
        return found ? Answer.POSSIBLE : search.hopeless.size() >= MOST_STATES ? Answer.GAVE_UP : Answer.IMPOSSIBLE;
    }

    /** Whether there is a plan whose weighted days of the finishes are under a value. */
    static Answer searchUnder(PlanningProblem problem, long weightedDays) {
        ExhaustiveSearch search = new ExhaustiveSearch(problem);
        search.limit = weightedDays;
        boolean found = search.from(0, HourByHour.full(problem));
        return found ? Answer.POSSIBLE : search.hopeless.size() >= MOST_STATES ? Answer.GAVE_UP : Answer.IMPOSSIBLE;
    }

    /** Weight times days to the last finish so far, of every subproject that has work left in this plan. */
    private long weightedDays() {
        long sum = 0;
        for (Subproject subproject : problem.subprojects()) {
            long days = 0;
            for (int s = 0; s < left.length; s++) {
                boolean planned = stages.get(s).subproject().equals(subproject.id())
                        && !stages.get(s).finished()
                        && left[s] == 0;
                if (planned) {
                    days = Math.max(days, problem.statusDate().until(finish[s], ChronoUnit.DAYS) + 1);
                }
            }
            sum += days * subproject.weight();
        }
        return sum;
    }

    private boolean from(int day, long charge) {
        if (weightedDays() >= limit) {
            return false;
        }
        if (Arrays.stream(left).allMatch(l -> l == 0)) {
            return true;
        }
        if (day == days.size() || hopeless.size() >= MOST_STATES) {
            return false;
        }
        long full = startsTrip(day) ? HourByHour.start(problem, tripOf(days.get(day))) : charge;
        String state = day + " " + full + Arrays.toString(left) + Arrays.toString(finish) + spentIn(days.get(day));
        if (hopeless.contains(state)) {
            return false;
        }
        boolean found = choose(day, 0, new int[stages.size()], full);
        if (!found) {
            hopeless.add(state);
        }
        return found;
    }

    /** What the trips of the month cost that were made before the date, and whether this trip is one of them. */
    private String spentIn(SiteDay day) {
        Trip trip = tripOf(day);
        return problem.spending() == null ? "" : " " + cents(trip) + made.contains(trip);
    }

    private Trip tripOf(SiteDay day) {
        return problem.trips().stream()
                .filter(t -> t.days().contains(day))
                .findFirst()
                .orElseThrow();
    }

    /** The cost of all trips made that begin in the month in which a trip begins. */
    private long cents(Trip trip) {
        return made.stream()
                .filter(t -> YearMonth.from(t.firstDate()).equals(YearMonth.from(trip.firstDate())))
                .mapToLong(Trip::cents)
                .sum();
    }

    private boolean moneyHolds(Trip trip) {
        SpendingLimit limit = problem.spending();
        return limit == null || cents(trip) <= limit.centsAMonth();
    }

    private boolean toolsHold(int[] amounts) {
        return problem.tools().stream()
                .allMatch(tool -> IntStream.range(0, amounts.length)
                                .filter(s -> amounts[s] > 0)
                                .flatMap(s -> stages.get(s).tools().stream()
                                        .filter(u -> u.tool().equals(tool.id()))
                                        .mapToInt(ToolUse::count))
                                .sum()
                        <= tool.count());
    }

    private boolean startsTrip(int day) {
        return problem.trips().stream()
                .map(Trip::firstDate)
                .anyMatch(days.get(day).date()::equals);
    }

    /** Tries every amount of the stages from {@code s} on, those before being chosen. */
    private boolean choose(int day, int s, int[] amounts, long charge) {
        if (s == stages.size()) {
            return spend(day, amounts, charge);
        }
        Stage stage = stages.get(s);
        int room = days.get(day).labourQuarters() - Arrays.stream(amounts, 0, s).sum();
        int most = mayWork(stage, days.get(day)) ? Math.min(Math.min(room, left[s]), stage.mostBlockQuarters()) : 0;
        int least = stage.layout() == Layout.IN_ONE_GO ? stage.labourQuarters() : stage.effectiveLeastBlock();
        for (int amount = most; amount >= Math.max(1, least); amount--) {
            amounts[s] = amount;
            if (choose(day, s + 1, amounts, charge)) {
                return true;
            }
        }
        amounts[s] = 0;
        boolean mustGoOn = stage.layout() == Layout.UNBROKEN_DAYS && left[s] > 0 && left[s] < stage.labourQuarters();
        return !mustGoOn && choose(day, s + 1, amounts, charge);
    }

    private boolean mayWork(Stage stage, SiteDay day) {
        return day.people() >= stage.crew()
                && stage.shut().stream().noneMatch(x -> x.covers(day.date()))
                && problem.pins().stream()
                        .filter(p -> p.stage().equals(stage.id()))
                        .allMatch(p -> p.dates().contains(day.date()));
    }

    private boolean spend(int day, int[] amounts, long charge) {
        LocalDate date = days.get(day).date();
        boolean draws = IntStream.range(0, amounts.length)
                .anyMatch(s -> amounts[s] > 0 && stages.get(s).wattHoursPerHour() > 0);
        int inLight = IntStream.range(0, amounts.length)
                .filter(s -> stages.get(s).needsLight())
                .map(s -> amounts[s])
                .sum();
        // a floor that does not hold matters only where work draws on that day or after it
        long evening = charge < 0
                ? charge
                : new HourByHour(problem, days.get(day), startsTrip(day)).after(charge, stages, amounts);
        if ((draws && evening < 0) || inLight > days.get(day).lightQuarters() || !toolsHold(amounts)) {
            return false;
        }
        Trip trip = tripOf(days.get(day));
        boolean makesTrip = Arrays.stream(amounts).anyMatch(a -> a > 0) && made.add(trip);
        int[] leftBefore = left.clone();
        LocalDate[] finishBefore = finish.clone();
        for (int s = 0; s < amounts.length; s++) {
            left[s] -= amounts[s];
            finish[s] = amounts[s] > 0 && left[s] == 0 ? date : finish[s];
        }
        boolean found = moneyHolds(trip)
                && unbrokenHolds(day, amounts)
                && waitsHold(date, amounts, leftBefore)
                && from(day + 1, evening);
        System.arraycopy(leftBefore, 0, left, 0, left.length);
        System.arraycopy(finishBefore, 0, finish, 0, finish.length);
        if (makesTrip) {
            made.remove(trip);
        }
        return found;
    }

    /** What is begun and must go on needs a site day tomorrow. */
    private boolean unbrokenHolds(int day, int[] amounts) {
        for (int s = 0; s < amounts.length; s++) {
            boolean mustGoOn = stages.get(s).layout() == Layout.UNBROKEN_DAYS && amounts[s] > 0 && left[s] > 0;
            boolean goesOn = day + 1 < days.size()
                    && days.get(day + 1).date().equals(days.get(day).date().plusDays(1));
            if (mustGoOn && !goesOn) {
                return false;
            }
        }
        return true;
    }

    private boolean waitsHold(LocalDate date, int[] amounts, int[] leftBefore) {
        for (Wait wait : problem.waits()) {
            int from = indexOf(wait.from());
            int to = indexOf(wait.to());
            if (amounts[to] == 0) {
                continue;
            }
            Stage after = stages.get(to);
            boolean starts = after.startedOn() == null && leftBefore[to] == after.labourQuarters();
            if (left[from] > 0
                    || date.isBefore(finish[from].plusDays(wait.least().daysAfter(finish[from])))
                    || (starts && date.isAfter(finish[from].plusDays(wait.mostDays())))) {
                return false;
            }
        }
        return true;
    }

    private int indexOf(String id) {
        for (int s = 0; s < stages.size(); s++) {
            if (stages.get(s).id().equals(id)) {
                return s;
            }
        }
        throw new IllegalArgumentException("stage [" + id + "] is not known");
    }
}
