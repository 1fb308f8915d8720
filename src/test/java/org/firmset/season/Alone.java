package org.firmset.season;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.firmset.plan.Layout;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Stage;
import org.firmset.plan.Trip;
import org.firmset.plan.Wait;

/** When each stage could be done if it had every site day to itself; no plan can be sooner. */
final class Alone {
    private final PlanningProblem problem;
    private final List<SiteDay> days;
    private final Map<String, Optional<LocalDate>> finishes = new HashMap<>();

    Alone(PlanningProblem problem) {
        this.problem = problem;
        days = problem.trips().stream().flatMap(t -> t.days().stream()).toList();
    }

    Stage stage(String id) {
        return problem.stages().stream()
                .filter(s -> s.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    boolean mayWork(Stage stage, SiteDay day) {
        return day.people() >= stage.crew()
                && !stage.isShutOn(day.date())
                && problem.pins().stream()
                        .filter(p -> p.stage().equals(stage.id()))
                        .allMatch(p -> p.dates().contains(day.date()));
    }

    /** When all stages before it and their waits could be over; empty when one of them can never be finished. */
    Optional<LocalDate> earliestStart(Stage stage) {
        LocalDate start = problem.statusDate();
        for (Wait wait : problem.waits()) {
            if (wait.to().equals(stage.id())) {
                Optional<LocalDate> ready = possibleFinishes(stage(wait.from()))
                        .map(f -> f.plusDays(wait.least().daysAfter(f)))
                        .min(LocalDate::compareTo);
                if (ready.isEmpty()) {
                    return ready;
                }
                start = ready.get().isAfter(start) ? ready.get() : start;
            }
        }
        return Optional.of(start);
    }

    /** The first date from this one on that the stage may work on. */
    Optional<LocalDate> firstDay(Stage stage, LocalDate from) {
        return days.stream()
                .filter(d -> !d.date().isBefore(from) && takes(stage, d) > 0)
                .map(SiteDay::date)
                .findFirst();
    }

    /** All dates on which it could be finished, and maybe some on which it could not. */
    Stream<LocalDate> possibleFinishes(Stage stage) {
        if (stage.finishedOn() != null) {
            return Stream.of(stage.finishedOn());
        }
        Optional<LocalDate> first = finishes.get(stage.id());
        if (first == null) {
            first = earliestStart(stage).flatMap(from -> earliestFinish(stage, from));
            finishes.put(stage.id(), first);
        }
        LocalDate from = first.orElse(LocalDate.MAX);
        return days.stream().map(SiteDay::date).filter(d -> !d.isBefore(from));
    }

    Optional<LocalDate> earliestFinish(Stage stage, LocalDate from) {
        for (int start = 0; start < days.size(); start++) {
            if (!days.get(start).date().isBefore(from)) {
                Optional<LocalDate> finish = finish(stage, start);
                if (finish.isPresent()) {
                    return finish;
                }
            }
        }
        return Optional.empty();
    }

    private Optional<LocalDate> finish(Stage stage, int start) {
        int done = 0;
        for (int d = start; d < days.size(); d++) {
            int takes = takes(stage, days.get(d));
            boolean gap = d > start
                    && !days.get(d - 1).date().plusDays(1).equals(days.get(d).date());
            if (stage.layout() == Layout.IN_ONE_GO) {
                done = 0;
            } else if (stage.layout() == Layout.UNBROKEN_DAYS && (gap || takes == 0)) {
                return Optional.empty();
            }
            done += takes;
            if (done >= stage.labourQuarters()) {
                return Optional.of(days.get(d).date());
            }
        }
        return Optional.empty();
    }

    private int takes(Stage stage, SiteDay day) {
        int most = Math.min(Math.min(day.quartersFor(stage), stage.mostBlockQuarters()), stage.labourQuarters());
        while (most > 0 && mayWork(stage, day) && !powered(stage, day, most)) {
            most--;
        }
        return mayWork(stage, day) && most >= stage.effectiveLeastBlock() ? most : 0;
    }

    /** Whether a battery that is full in the morning, or as full as the trip begins with, lasts for so much of it. */
    boolean powered(Stage stage, SiteDay day, int quarters) {
        if (stage.wattHoursPerHour() == 0) {
            return true;
        }
        Trip trip = problem.trips().stream()
                .filter(t -> t.days().contains(day))
                .findFirst()
                .orElseThrow();
        boolean first = day.equals(trip.days().getFirst());
        long morning = first ? HourByHour.start(problem, trip) : HourByHour.full(problem);
        return new HourByHour(problem, day, first).after(morning, List.of(stage), new int[] {quarters})
                != HourByHour.BROKEN;
    }
}
